/** What the demo job costs, by hand: plain arithmetic, nothing of `src/`. */
import {
	ALL_PARTS,
	BINDER,
	BLACK,
	FINISH_AREA,
	MIX,
	PARTS,
	PASTE_KG,
	SEALER_L,
	UMBER,
} from "./worked";

// The starter's packs and prices: kg and money of cement, pozzolan, sand, water, reducer, long and short fiber.
export const PACKS = [25, 20, 25, 0, 10, 5, 5];
const PRICES = [16, 22, 5, 0, 62, 58, 55];
/** kg of each for pieces, waste and paste. */
export const NEEDED = PARTS.map(
	(part) => ((MIX + PASTE_KG) * part) / ALL_PARTS,
);
export const MIX_MONEY = NEEDED.reduce(
	(sum, kg, row) =>
		PACKS[row] ? sum + (kg / PACKS[row]) * (PRICES[row] ?? 0) : sum,
	0,
);
/** g for pieces and paste; a pack of 1000 g is 24 and 21. */
export const grams = (dose: number) => (MIX + PASTE_KG) * BINDER * dose * 1000;
export const PIGMENT_MONEY =
	(grams(UMBER) / 1000) * 24 + (grams(BLACK) / 1000) * 21;
export const SEALER_MONEY = SEALER_L * 48;
export const MATERIALS = MIX_MONEY + PIGMENT_MONEY + SEALER_MONEY;
// Hours for each of 5 castings: 0.75 + 2 + 0.5; of 2 loads: 2.5; of each m²: 1.5 + 0.4; and 4 to deliver. 42 an hour.
export const HOURS = 5 * 3.25 + 2 * 2.5 + FINISH_AREA * 1.9 + 4;
export const LABOR = HOURS * 42;
/** Overhead 18% on both, 5% set aside for a remake. */
export const made = (materials: number, labor: number) =>
	(materials + labor) * 1.18 * 1.05;
/** The card company keeps 2% of price and 20% tax. */
export const FEE = 0.02 * 1.2;
export const cents = (money: number) => Math.round(money * 100) / 100;
