/** What the studio has of a material, by its Stock tab. */
import { sameName } from "../../../calc/names";
import { sum } from "../../../calc/sum";
import type { Read } from "../../fields/field";
import { STOCK } from "../../fields/stock";
import { type Given, ownRows } from "../given";
import { all, from, type Known, readRow } from "../known";

type Lot = Read<typeof STOCK>;

/** Lots with the name of a material, in the order of the tab. */
const lotsOf = (given: Given, name: string): Known<readonly Lot[]> =>
	all(
		ownRows(given, given.studio.stock)
			.filter(({ material }) => sameName(String(material ?? ""), name))
			.map((row) => readRow(STOCK, row, given.units)),
	);

/** Pack and price of a material; the lot that states both comes first. */
export const packedLot = (
	given: Given,
	name: string,
): Known<Partial<Pick<Lot, "pack" | "packPrice">>> =>
	from(
		lotsOf(given, name),
		(lots) =>
			lots.find(
				({ pack, packPrice }) => pack !== undefined && packPrice !== undefined,
			) ??
			lots[0] ??
			{},
	);

/** Pigment is counted in g and may lie there in other units. 1 lb is 0.45359237 kg, exactly. */
const GRAMS: Readonly<Record<string, number>> = { kg: 1000, lb: 453.59237 };

/** What one of the lot's unit is in the unit of a material; undefined where they do not compare. */
function factorOf(lotUnit: string, unit: string): number | undefined {
	if (lotUnit === "" || sameName(lotUnit, unit)) return 1;
	return unit === "g" ? GRAMS[lotUnit.toLowerCase()] : undefined;
}

/** In the unit of the material; lots in units that do not compare are left out. */
export const onHandOf = (
	given: Given,
	name: string,
	unit: string,
): Known<{ amount: number; leftOut: boolean }> =>
	from(lotsOf(given, name), (lots) => {
		const counted = lots.flatMap(({ onHand, unit: lotUnit = "" }) =>
			onHand === undefined
				? []
				: [{ onHand, factor: factorOf(lotUnit.trim(), unit) }],
		);
		return {
			amount: sum(counted.map(({ onHand, factor = 0 }) => onHand * factor)),
			leftOut: counted.some(({ factor }) => factor === undefined),
		};
	});
