import { money, number, type Row, share, text, word } from "./field";

const BASES = ["binder", "cement", "dry mix"] as const;

/** A pigment of the studio. */
export const PIGMENT = {
	name: text("Pigment", { required: true }),
	form: word("Form", ["powder", "liquid"]),
	solids: share(
		"Pigment in it",
		{ help: "Of a liquid: the share of it that is pigment." },
		{ above: 0, max: 1 },
	),
	basis: word("Its doses are of", BASES, {
		help: "In what its maker states doses; blank is binder.",
	}),
	maximum: share("Maximum dose, of cement", {
		help: "From its maker; blank counts as 10%, the most ASTM C979 allows.",
	}),
	water: number("Water to wet it, g per g"),
	pack: number("Pack, g", { unit: "pigment" }, { above: 0 }),
	packPrice: money("Pack price"),
};

export type PigmentRow = Row<typeof PIGMENT>;
