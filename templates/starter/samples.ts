/** The pigments and swatches that a new studio begins with. */
import type { PigmentRow } from "../../src/job/fields/pigment";
import type { SwatchInput } from "../../src/job/studiofile";
import { WHITE_MIX } from "./recipes";

const powder = (
	name: string,
	maximum: number,
	packPrice: number,
): PigmentRow => ({
	name,
	form: "powder",
	basis: "binder",
	maximum,
	water: 0.5,
	pack: 1000,
	packPrice,
});

// Invented pigments. A maker's data sheet gives the real maximum; 6% is a usual one for iron oxides (trade pages).
export const PIGMENTS: readonly PigmentRow[] = [
	powder("Umber", 0.06, 24),
	powder("Black", 0.06, 21),
	powder("Ocher", 0.06, 23),
	powder("White", 0.1, 19),
];

const swatch = (pigment: string, dose: number, color: string): SwatchInput => ({
	mix: WHITE_MIX,
	finish: "cast",
	sealed: "bare",
	state: "dry",
	doses: { [pigment]: dose },
	color,
	ageDays: 28,
	remark: "invented for the demo",
});

// Invented: bare cast samples at 0, 1, 2 and 4% of binder, from pale to deep as iron oxides do in a white mix.
export const SWATCHES: readonly SwatchInput[] = [
	swatch("Umber", 0, "#e3dfd5"),
	swatch("Umber", 0.01, "#b8a591"),
	swatch("Umber", 0.02, "#9f8a74"),
	swatch("Umber", 0.04, "#84705c"),
	swatch("Black", 0.01, "#a9a7a2"),
	swatch("Black", 0.02, "#8b8986"),
	swatch("Black", 0.04, "#6d6c6a"),
	swatch("Ocher", 0.01, "#d9c193"),
	swatch("Ocher", 0.02, "#d0b077"),
	swatch("Ocher", 0.04, "#c59c58"),
	swatch("White", 0.02, "#e9e6de"),
	swatch("White", 0.04, "#eeece6"),
];
