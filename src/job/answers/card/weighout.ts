/** What to weigh of each ingredient of a load, and what was weighed. */
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import { type Batched, raisedBy } from "../../../calc/tolerance";
import type { PourInput } from "../../jobfile";
import { isBlank } from "../../reading/cells";
import type { Basis } from "../basis";
import { inUnit, setting } from "../given";
import { all, from, is, isKnown, type Known, look, orNull } from "../known";
import type { Ingredient } from "../mix";
import { ICE } from "./loadpour";
import type { MixWaterAnswer } from "./mixwater";
import {
	type Line,
	lineOf,
	offAsked,
	type Planned,
	type Raised,
	type WeighOutLine,
	withAmounts,
} from "./weighline";

export interface WeighOutAnswer {
	lines: Known<readonly WeighOutLine[]>;
	/** All that is in the mixer, once what is asked for is in, too. */
	total: Known<number>;
	/** Binder in all of it. */
	binderShare: Known<number>;
	/** What was weighed, once nothing of it is wrong. */
	weights: Known<true>;
}

export function weighOut(
	basis: Basis,
	pour: PourInput,
	water: MixWaterAnswer,
): WeighOutAnswer {
	const { given, mix } = basis;
	const planned = from(
		all([
			mix.ingredients,
			water.plannedKg,
			water.iceKg,
			setting(given, "mix_division"),
		] as [
			typeof mix.ingredients,
			typeof water.plannedKg,
			Known<number>,
			Known<number>,
		]),
		([rows, masses, ice, divisionKg]) =>
			[
				...rows.map(
					(row, i): Planned => ({
						name: row.ingredient,
						kg: masses[i] ?? 0,
						pack: row.pack,
						kind: batchedAs(row),
					}),
				),
				{ name: ICE, kg: ice, pack: undefined, kind: "water" } as const,
			].map((row, _, every) =>
				lineOf(given, pour, row, {
					divisionKg,
					isAlone: isOnlyOne(row.name, every),
				}),
			),
	);
	const every = from(planned, (rows) => {
		const raised = raisedOf(basis, rows);
		return rows.map((row) => withAmounts(given, row, raised));
	});
	const total = from(every, (rows) => sum(rows.map(({ inMixer }) => inMixer)));
	return {
		lines: from(every, (rows) =>
			rows.filter(
				({ name, planned: mass, weighed, say }) =>
					name !== ICE || mass > 0 || weighed !== null || say.state === "look",
			),
		),
		total,
		binderShare: from(
			all([mix.binderShare, mix.ingredients, every, total] as [
				Known<number>,
				typeof mix.ingredients,
				typeof every,
				Known<number>,
			]),
			([, rows, lines, whole]) =>
				sum(
					rows.map(
						({ binderShare = 0, moisture = 0 }, i) =>
							((lines[i]?.inMixer ?? 0) / (1 + moisture)) * binderShare,
					),
				) / whole,
		),
		weights: isKnown(planned) ? weightsOf(planned.is, pour) : planned,
	};
}

/** Which tolerance holds for it. */
const batchedAs = ({
	binderShare = 0,
	waterShare = 0,
	group,
}: Ingredient): Batched => {
	if (binderShare > 0) return "cementitious";
	if (waterShare === 1) return "water";
	return waterShare > 0 || group === "water" ? "admixture" : "aggregate";
};

/** What was weighed too much raises all others; what cannot be does not count. */
function raisedOf({ given }: Basis, rows: readonly Line[]): Raised {
	const counted = rows.map((row) => ({
		...row,
		weighed: isKnown(row.weighed) ? row.weighed.is : undefined,
	}));
	const factor = raisedBy(counted);
	const at = counted.findIndex(
		({ weighed = 0, planned }) => factor > 1 && weighed / planned === factor,
	);
	const total = sum(rows.map(({ planned }) => planned * factor));
	const own = sum(rows.map(({ planned }) => planned));
	const capacity = from(setting(given, "mixer_capacity"), (kg) =>
		inUnit(given, "mass", kg),
	);
	return {
		factor,
		culprit: rows[at],
		total,
		// A load that was planned for more is not what was raised.
		capacity:
			own > (orNull(capacity) ?? own)
				? undefined
				: (orNull(capacity) ?? undefined),
		matched: rows.every(
			(row) =>
				row.planned === 0 ||
				(isKnown(row.weighed) && offAsked(row, factor) >= 0),
		),
	};
}

const isOnlyOne = (name: string, rows: readonly { name: string }[]): boolean =>
	rows.filter((row) => sameName(row.name, name)).length === 1;

/** Whether every weight is one that can be, of an ingredient that there is. */
function weightsOf(
	rows: readonly Line[],
	{ weighed = {} }: PourInput,
): Known<true> {
	const stray = Object.entries(weighed).find(
		([name, typed]) =>
			!isBlank(typed) && !rows.some((row) => sameName(row.name, name)),
	);
	if (stray)
		return look(
			`a weight is typed for ${stray[0]}, which the mix does not have`,
		);
	const wrong = rows.find((row) => "look" in row.weighed)?.weighed;
	return wrong && "look" in wrong ? wrong : is(true);
}
