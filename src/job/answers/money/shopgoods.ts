/** Sealer and whatever else is bought by the piece: packs and prices that are typed, or those of the lot in Stock. */
import { GOODS, type GoodsRow } from "../../fields/cost";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import { inUnit, setting } from "../given";
import { from, fromBoth, isKnown, readRow } from "../known";
import type { MoldGood } from "../mold/mold";
import { knownOr, type Material, priced } from "./pricing";
import { packedLot } from "./shelf";

const SEALER = "Sealer";

/** By a priced pack of it in Stock, or else by the unit and the studio's price. */
export function sealerMaterial(
	{ given }: Basis,
	{ finishing }: Pick<CureAnswer, "finishing">,
): Material {
	const lot = packedLot(given, SEALER);
	const isPriced =
		isKnown(lot) && (lot.is.pack ?? 0) * (lot.is.packPrice ?? 0) > 0;
	return priced({
		name: SEALER,
		unit: unitName("coating", given.units),
		needed: from(finishing.sealerM3, (m3) => inUnit(given, "coating", m3)),
		pack: from(lot, ({ pack = 1 }) => (isPriced ? pack : 1)),
		packPrice: isPriced
			? from(lot, ({ packPrice = 0 }) => packPrice)
			: "look" in lot
				? lot
				: setting(given, "sealer_price"),
	});
}

/** Its pack and price are typed, or those of the lot in Stock; a price alone is for one. */
export function goodsMaterial(
	{ given }: Basis,
	row: GoodsRow,
	number: number,
): Material {
	const name = String(row.what ?? "").trim() || `row ${number} of the goods`;
	const read = readRow(GOODS, row, given.units);
	const lot = packedLot(given, name);
	const pack = fromBoth(
		read,
		lot,
		(typed, stocked) =>
			typed.pack ??
			stocked.pack ??
			(typed.packPrice === undefined ? undefined : 1),
	);
	const price = fromBoth(
		read,
		lot,
		(typed, stocked) => typed.packPrice ?? stocked.packPrice,
	);
	return priced({
		name,
		unit: String(row.unit ?? "").trim(),
		needed: isKnown(read)
			? knownOr(read.is.quantity, `how many of ${name}`)
			: read,
		pack: isKnown(pack) ? knownOr(pack.is, `the pack of ${name}`) : pack,
		packPrice: isKnown(price)
			? knownOr(price.is, `the price of ${name}`)
			: price,
	});
}

/** Goods for the molds, as many as these take. */
export const countedGood = (
	basis: Basis,
	{ name, unit, amount }: MoldGood,
	row: GoodsRow,
): Material => {
	const typed = goodsMaterial(basis, { ...row, what: name, unit }, 0);
	return { ...priced({ ...typed, needed: amount }), isCounted: true };
};
