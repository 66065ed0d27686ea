/** What to buy for the job: what it takes of each material less what is on the shelf, in whole packs. */
import { packsToBuy } from "../../../calc/money";
import { sum } from "../../../calc/sum";
import type { Basis } from "../basis";
import type { Given } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	orNull,
	type Said,
	saidOf,
} from "../known";
import type { CostAnswer } from "./cost";
import type { Material } from "./pricing";
import { onHandOf } from "./shelf";

/** Amounts in the unit in which the material is bought. */
export interface BuyRow extends Material {
	onHand: Known<number>;
	/** What other jobs take of it; null while that is not worked out. */
	reserved: number | null;
	packs: Known<number>;
	toPay: Known<number>;
	/** Whether all that is on the shelf was counted. */
	counted: Said;
}

/** In the order of the cost: ingredients, pigments, sealer, goods. */
export function buyAnswer(
	{ given }: Basis,
	{ materials }: CostAnswer,
): readonly BuyRow[] {
	const { mix, pigments, sealer, goods } = materials;
	return [...(isKnown(mix) ? mix.is : []), ...pigments, sealer, ...goods].map(
		(material) => buyRow(given, material),
	);
}

/** Cost and purchase of all rows together; those of which it is not known are left out, as in the cost. */
export const buyTotals = (
	rows: readonly BuyRow[],
): { cost: number; toPay: number } => {
	const total = (of: (row: BuyRow) => Known<number>) =>
		sum(rows.map((row) => orNull(of(row)) ?? 0));
	return {
		cost: total(({ cost }) => cost),
		toPay: total(({ toPay }) => toPay),
	};
};

function buyRow(given: Given, material: Material): BuyRow {
	const { name, unit, needed, pack, packPrice } = material;
	const shelf = onHandOf(given, name, unit);
	const onHand = from(shelf, ({ amount }) => amount);
	const packs = material.isFree
		? is(0)
		: from(
				all<[number, number, number]>([needed, onHand, pack]),
				([takes, has, size]) =>
					packsToBuy({ needed: takes, onHand: has, pack: size }),
			);
	return {
		...material,
		onHand,
		reserved: null,
		packs,
		toPay: material.isFree
			? is(0)
			: fromBoth(packs, packPrice, (many, price) => many * price),
		counted:
			isKnown(shelf) && shelf.is.leftOut
				? {
						state: "look",
						say: "Look: Stock has some in another unit, left out",
					}
				: saidOf(from(shelf, () => "fine")),
	};
}
