import { color, day, number, type Row, text, word } from "./field";
import { FINISHES, SEALINGS, STATES } from "./tone";

const READ_FROM = ["meter", "photo"] as const;

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
	read: word("Read from", READ_FROM, {
		help: "Blank: a meter. A photo counts little, and decides no match under 3.",
	}),
	recipe: text("Recipe", {
		help: "A name for casts of one wanted color: each row corrects the one above it.",
	}),
	wanted: color("Color wanted", {
		help: "Of a cast: the color that its recipe was for.",
	}),
};

export type SwatchRow = Row<typeof SWATCH>;
