/** The planned masses of a load: damp solids, and water less what comes with them, with pigment and as ice. */
import { dampMass } from "../../../calc/mix";
import { sum } from "../../../calc/sum";
import { from, fromBoth, is, isKnown, type Known, look } from "../known";
import type { Ingredient } from "../mix";

/** Masses of a load before pigment's water, damp material and ice are taken off its water. */
export interface Bare {
	rows: readonly Ingredient[];
	dryKg: readonly number[];
	toWeighKg: readonly number[];
	freeWaterKg: number;
	/** Of what is all water. */
	allWaterKg: number;
}

export function bareMasses(rows: readonly Ingredient[], massKg: number): Bare {
	const factor = massKg / sum(rows.map(({ parts }) => parts));
	const dryKg = rows.map(({ parts }) => parts * factor);
	const damp = rows.map(({ moisture = 0, absorption = 0 }, i) =>
		dampMass({ dryMass: dryKg[i] ?? 0, moisture, absorption }),
	);
	return {
		rows,
		dryKg,
		toWeighKg: damp.map(([toWeigh]) => toWeigh),
		freeWaterKg: sum(damp.map(([, free]) => free)),
		allWaterKg: sum(rows.map((row, i) => (isWater(row) ? (dryKg[i] ?? 0) : 0))),
	};
}

const isWater = ({ waterShare }: Ingredient): boolean => waterShare === 1;

export const plannedOf = (
	bare: Known<Bare>,
	offKg: Known<number>,
): Known<readonly number[]> => {
	const check = waterLeft(bare, offKg);
	return isKnown(check)
		? fromBoth(bare, offKg, ({ rows, dryKg, toWeighKg, allWaterKg }, off) =>
				rows.map((row, i) =>
					isWater(row)
						? (dryKg[i] ?? 0) * (1 - off / allWaterKg)
						: (toWeighKg[i] ?? 0),
				),
			)
		: check;
};

/** Known while the water of the mix is enough to take off what comes otherwise. */
function waterLeft(bare: Known<Bare>, offKg: Known<number>): Known<true> {
	const left = fromBoth(
		bare,
		offKg,
		({ allWaterKg }, off) => allWaterKg === 0 || off <= allWaterKg,
	);
	if (!isKnown(left)) return left;
	return left.is
		? is(true)
		: look("pigment, damp material and ice bring more water than the mix has");
}

export function waterCheck(
	bare: Known<Bare>,
	offKg: Known<number>,
): Known<string> {
	const none = fromBoth(
		bare,
		offKg,
		({ allWaterKg }, off) => allWaterKg === 0 && off > 0,
	);
	if (isKnown(none) && none.is)
		return look("no ingredient is all water: take it off by hand");
	return from(waterLeft(bare, offKg), () => "");
}
