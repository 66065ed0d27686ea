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
/** Screws of a side: from 50 mm in from each end, every 200 mm. */
const screws = (lengths: readonly number[]) =>
	lengths.reduce((sum, mm) => sum + Math.ceil((mm - 100) / 200) + 1, 0);
/**
 * Sides of the molds, boards of 18 mm: front and back outside of the others, the notch's corner taken off; the bar's drop edge on front
 * and left has inner walls one thickness of 30 mm shorter where the other begins. mm
 */
const BAR_SIDES = [2150 + 36, 1480, 1500, 830, 650 + 36, 650, 2120, 1450];
const VANITY_SIDES = [980 + 36, 980 + 36, 520, 520];
const BASIN_SIDES = [460 + 36, 460 + 36, 340, 340];
const SCREWS =
	screws(BAR_SIDES) + 2 * screws(VANITY_SIDES) + screws(BASIN_SIDES);
/** Outlines and rims, and the upright corners: 5 of the bar, 4 of each top and the basin, whose core has a foot. mm */
const SEALANT_MM =
	2 * (2150 + 1480) +
	2 * (480 + 390) +
	5 * 30 +
	2 * (2 * (980 + 520) + Math.PI * 360 + 4 * 30) +
	Math.PI * 900 +
	(2 * (460 + 340) + Math.PI * 45 + 2 * (416 + 296) + 4 * 130);
// Fillets of 6 mm, 10% wasted, tubes of 300 mL.
const TUBES = Math.ceil(
	(SEALANT_MM * 36 * (1 - Math.PI / 4) * 1.1) / 1000 / 300,
);
// What is finished, and the inner wall of the drop; 30 m²/L from cans of 5 L.
const CANS = (FINISH_AREA + 0.06 * 3.6) / 30 / 5;
/**
 * Bases and sides have 6.8 m², a board of 2790 × 2060 has 5.7: two hold them, by the list of cuts. Strips of 2440: one for both rings
 * of 1112, two for the table's 2846.
 */
export const GOODS_MONEY =
	2 * 38 + 3 * 3 + TUBES * 7 + CANS * 19 + (SCREWS / 200) * 9;
export const MATERIALS = MIX_MONEY + PIGMENT_MONEY + SEALER_MONEY + GOODS_MONEY;
// Hours for each of 5 castings: 0.75 + 2 + 0.5; of 2 loads: 2.5; of each m²: 1.5 + 0.4; and 4 to deliver. 42 an hour.
export const HOURS = 5 * 3.25 + 2 * 2.5 + FINISH_AREA * 1.9 + 4;
export const LABOR = HOURS * 42;
/** Overhead 18% on both, 5% set aside for a remake. */
export const made = (materials: number, labor: number) =>
	(materials + labor) * 1.18 * 1.05;
/** The card company keeps 2% of price and 20% tax. */
export const FEE = 0.02 * 1.2;
export const cents = (money: number) => Math.round(money * 100) / 100;
