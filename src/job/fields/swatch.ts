import { color, day, number, type Row, text, word } from "./field";
import { FINISHES, SEALINGS, STATES } from "./tone";

/** A sample of the studio's own with its measured color; its doses stand beside it, under the names of pigments. */
export const SWATCH = {
	mix: text("Mix", { from: "mixes" }),
	finish: word("Finish", FINISHES),
	sealed: word("Sealed", SEALINGS),
	state: word("State", STATES),
	color: color("Color"),
	ageDays: number("Age, days"),
	lot: text("Lot"),
	date: day("Date"),
	remark: text("Remark"),
};

export type SwatchRow = Row<typeof SWATCH>;
