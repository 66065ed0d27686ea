/** The hours of each operation: worked out or typed, and what they cost. */
import { sum } from "../../../calc/sum";
import { WORK } from "../../fields/cost";
import {
	type CountedBy,
	OPERATION_KEYS,
	OPERATIONS,
	type OperationKey,
} from "../../fields/operations";
import { fromSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import { type Given, setting } from "../given";
import { all, from, fromBoth, is, type Known, look, readRow } from "../known";
import { overPieces } from "../loads";

interface WorkRowAnswer {
	key: OperationKey;
	label: string;
	/** In words, such as casting, load, m² or job. */
	forEach: string;
	count: Known<number>;
	hoursEach: Known<number>;
	workedOut: Known<number>;
	/** Typed, or else worked out. */
	hours: Known<number>;
	amount: Known<number>;
	/** Hours it took; undefined where none were typed. */
	took: Known<number | undefined>;
}

export interface WorkAnswer {
	rows: readonly WorkRowAnswer[];
	hours: Known<number>;
	amount: Known<number>;
}

export function workAnswer(basis: Basis, cure: CureAnswer): WorkAnswer {
	const rows = OPERATION_KEYS.map((key) => workRow(basis, cure, key));
	const stray = Object.keys(basis.given.job.work ?? {}).find(
		(key) => !(key in OPERATIONS),
	);
	const total = (of: (row: WorkRowAnswer) => Known<number>): Known<number> =>
		stray === undefined
			? from(all(rows.map(of)), sum)
			: look(
					stray === ""
						? "hours are typed beside no operation"
						: `there is no operation ${stray}`,
				);
	return {
		rows,
		hours: total(({ hours }) => hours),
		amount: total(({ amount }) => amount),
	};
}

function workRow(
	basis: Basis,
	cure: CureAnswer,
	key: OperationKey,
): WorkRowAnswer {
	const { given } = basis;
	const { label, forEach, hoursEach: start } = OPERATIONS[key];
	const read = readRow(WORK, given.job.work?.[key] ?? {}, given.units);
	const count = countOf(basis, cure, forEach);
	const hoursEach = from(read, (typed) => typed.hoursEach ?? start);
	const workedOut = fromBoth(count, hoursEach, (many, each) => many * each);
	const typed = from(read, ({ hours }) => hours);
	const hours =
		"is" in typed && typed.is !== undefined
			? is(typed.is)
			: "is" in typed
				? workedOut
				: typed;
	return {
		key,
		label,
		forEach: eachWords(given, forEach),
		count,
		hoursEach,
		workedOut,
		hours,
		amount: fromBoth(
			hours,
			setting(given, "labor_rate"),
			(many, rate) => many * rate,
		),
		took: from(read, ({ worked }) => worked),
	};
}

/** Faces are counted in whole m², or in 10 ft². */
const FT2_A_FACE = 10;

const eachWords = ({ units }: Given, forEach: CountedBy): string =>
	forEach !== "face"
		? forEach
		: units === "us"
			? `${FT2_A_FACE} ${unitName("area", units)}`
			: unitName("area", units);

function countOf(
	{ given, pieces, loads }: Basis,
	{ finishing }: CureAnswer,
	forEach: CountedBy,
): Known<number> {
	const { units } = given;
	return {
		casting: () =>
			from(
				overPieces(given, pieces, (one) => one.quantity),
				sum,
			),
		load: () => loads.count,
		face: () =>
			from(
				finishing.finishM2,
				(m2) => fromSi(m2, "area", units) / (units === "us" ? FT2_A_FACE : 1),
			),
		job: () => is(1),
	}[forEach]();
}
