/** What is left out of a piece: cutouts of the finished piece, and formers that keep mix out of the mold. */
import { CUTOUT_SHAPES } from "../../calc/cutouts";
import { length, number, type Row, text, whole, word } from "./field";

export const CUTOUT = {
	piece: text("In piece", { required: true, from: "pieces", also: ["piece"] }),
	count: whole(
		"Each",
		{ required: true, start: 1, help: "How many in each piece." },
		{ min: 1 },
	),
	shape: word("Shape", CUTOUT_SHAPES, { required: true, start: "rectangle" }),
	a: length("A", { required: true, also: ["length", "diameter"] }),
	b: length("B", { also: ["width", "depth"] }),
	left: length("Left side to center", {
		also: ["left", "from left", "left to center", "center from left"],
		help: "From the piece's left side to the cutout's center, seen from above; of a row, to the middle of the row.",
	}),
	front: length(
		"Strip before it",
		{
			also: ["front", "strip", "from front", "front strip"],
			help: "Strip of concrete between the piece's front and the cutout.",
		},
		{ min: 0 },
	),
	radius: length("Corner radius", {
		also: ["radius", "corners"],
		help: "Of a rectangle's corners.",
	}),
	spacing: length("Spacing", {
		also: ["spread", "on center"],
		help: "Of several in a row, such as faucet holes: from center to center.",
	}),
};

/** Its size is typed as a volume, or as A × B × depth below the mix. */
export const KNOCKOUT = {
	piece: text("In piece", { required: true, from: "pieces", also: ["piece"] }),
	what: text("What", { required: true }),
	volume: number("Volume, {volume}", { unit: "volume" }),
	a: length("A"),
	b: length("B"),
	depth: length("Depth", { help: "Below the mix." }),
	mass: number("Own mass, {mass}", { unit: "mass" }),
	count: whole("Each", { help: "How many in each piece." }, { min: 1 }),
	held: number("Held with, {mass}", {
		unit: "mass",
		help: "What screws, weights or bars hold down, for each.",
	}),
};

export type CutoutRow = Row<typeof CUTOUT>;
export type KnockoutRow = Row<typeof KNOCKOUT>;
