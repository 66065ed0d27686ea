/** The demo job in metric by hand: its dimensions, the mix's parts, the starter's prices; nothing of `src/`. */

import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";

export async function openDemo(units: "metric" | "us"): Promise<Desk> {
	const desk = await openHeadlessDesk("dist");
	await desk.choose("Use in this workbook");
	await desk.call("createDemoJob", [units]);
	return desk;
}

/** Parts by mass of the demo's mix over their specific gravities, 2% air (ACI 211.1). kg/m³ */
export const PARTS = [46, 8, 46, 15.5, 0.9, 0.7, 0.35] as const;
const GRAVITIES = [3.1, 2.4, 2.65, 1, 1.07, 1.3, 1.3];
export const ALL_PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 0.7 + 0.35;
export const DENSITY =
	(ALL_PARTS /
		PARTS.reduce(
			(sum, part, row) => sum + part / (GRAVITIES[row] ?? 0) / 1000,
			0,
		)) *
	0.98;
export const BINDER = (46 + 8) / ALL_PARTS;

const BAR_FACE = 2.15 * 1.48 - 1.5 * 0.83 - 0.48 * 0.39;
const VANITY_FACE = 0.98 * 0.52 - (Math.PI * 0.36 ** 2) / 4;
const TABLE_FACE = (Math.PI * 0.9 ** 2) / 4;
const DRAIN = (Math.PI * 0.045 ** 2) / 4;
// Walls and floor of 22 mm: inside 416 × 296 × 108.
const HOLLOW = 0.416 * 0.296;
/** Fresh mix for all pieces with 8% waste, kg. */
export const MIX =
	(BAR_FACE * 0.03 +
		0.06 * 3.6 * 0.03 +
		2 * VANITY_FACE * 0.03 +
		TABLE_FACE * 0.028 +
		(0.46 * 0.34 * 0.13 - HOLLOW * 0.108 - DRAIN * 0.022)) *
	DENSITY *
	1.08;

/** Face, edges (outline and rims of cutouts × thickness) and drop of each piece; the basin's walls, rim, floor and drain. m² */
export const FINISH_AREA =
	BAR_FACE +
	(2 * (2.15 + 1.48) + 2 * (0.48 + 0.39)) * 0.03 +
	0.06 * 3.6 +
	2 * (VANITY_FACE + (2 * (0.98 + 0.52) + Math.PI * 0.36) * 0.03) +
	TABLE_FACE +
	Math.PI * 0.9 * 0.028 +
	(2 * (0.46 + 0.34) * 0.13 +
		(0.46 * 0.34 - HOLLOW) +
		2 * (0.416 + 0.296) * 0.108 +
		(HOLLOW - DRAIN) +
		Math.PI * 0.045 * 0.022);

/** 6% voids 1.5 mm deep and a skim of 0.2 mm, 30% more wiped off. L */
export const PASTE_L = FINISH_AREA * (0.06 * 1.5 + 0.2) * 1.3;
export const PASTE_KG = (PASTE_L * DENSITY) / 1000;
/** 12 m²/L a coat, two coats, 10% left in pots. L */
export const SEALER_L = (FINISH_AREA / 12) * 2 * 1.1;

/** Share-weighted mean doses: Sand 25% of 1.5%, Bark 15% of 4%; Bark 15% of 0.5%, Slate 20% of 2%. */
export const UMBER = 0.25 * 0.015 + 0.15 * 0.04;
export const BLACK = 0.15 * 0.005 + 0.2 * 0.02;
