import { FACES } from "../../calc/mold";
import { SHAPES, type Shape } from "../../calc/shapes";
import { numberIn } from "../reading/cells";
import { limited } from "../reading/limits";
import { checkComma } from "../reading/typed";
import { toSi } from "../reading/units";
import {
	type Field,
	length,
	number,
	type Row,
	text,
	whole,
	word,
} from "./field";

export type Dimension = "a" | "b" | "c" | "d";

/** What A to D are of each shape; a shape has no others. */
export const DIMENSIONS: Readonly<
	Record<Shape, Readonly<Partial<Record<Dimension, string>>>>
> = {
	rectangle: { a: "length", b: "width" },
	round: { a: "diameter" },
	oval: { a: "diameter", b: "other diameter" },
	L: { a: "length", b: "width", c: "notch length", d: "notch width" },
	U: { a: "length", b: "width", c: "notch width", d: "notch depth" },
	basin: { a: "outside length", b: "outside width", c: "outside height" },
	tube: { a: "outside diameter", c: "height" },
	area: { a: "face area", b: "outline length" },
};

/** The shapes that have it. */
const having = (dimension: Dimension): Shape[] =>
	SHAPES.filter((shape) => DIMENSIONS[shape][dimension] !== undefined);

const SLABS = ["rectangle", "round", "oval", "L", "U", "area"] as const;

/** A piece of a job. A goes from left to right, B from front to back, seen from above. */
export const PIECE = {
	name: text("Piece", {
		required: true,
		asks: "Name",
		also: ["name", "part", "item", "description"],
	}),
	quantity: whole("Qty", {
		required: true,
		asks: "Quantity",
		start: 1,
		also: ["quantity", "count", "pcs", "no", "number", "how many"],
	}),
	shape: word("Shape", SHAPES, {
		required: true,
		start: "rectangle",
		also: ["form", "type"],
		help: "L: A × B less a corner notch C × D. U: notch C wide, D deep in the longer side. Basin: A × B outside, C high. Tube: A outside, C high.",
	}),
	a: length("A", {
		required: true,
		also: ["length", "diameter", "dia", "face area", "outside length"],
	}),
	// "depth" may be the width or the thickness
	b: length("B", {
		shapes: having("b"),
		also: [
			"width",
			"wide",
			"other diameter",
			"outline length",
			"outside width",
		],
	}),
	c: length("C", {
		shapes: having("c"),
		also: ["notch length", "notch width", "height", "high", "outside height"],
	}),
	d: length("D", { shapes: having("d"), also: ["notch depth"] }),
	thickness: length("Thickness", { required: true, also: ["thick", "t"] }),
	dropHeight: length("Drop height", {
		shapes: SLABS,
		also: ["drop", "drop edge"],
		help: "Of the drop edge, below the slab.",
	}),
	dropRun: length("Drop run", {
		shapes: SLABS,
		also: ["drop length"],
		help: "Length of the drop edge along the outline.",
	}),
	dropThickness: length("Drop thickness", {
		shapes: SLABS,
		help: "Blank: as thick as the piece.",
	}),
	radius: length("Corner radius", {
		shapes: ["rectangle", "L", "U"],
		also: ["radius", "corners"],
		help: "Of the outside corners, seen from above.",
	}),
	face: word("Cast", FACES, {
		help: "How it lies in the mold; it says which hand the mold is.",
	}),
	notch: text("Notch at", {
		shapes: ["L", "U"],
		help: "Of the finished piece, in place, seen from above: the corner of an L's notch, the side of a U's. A goes from left to right, B from front to back.",
	}),
	dropOn: text("Drop edge on", {
		shapes: SLABS,
		help: "Sides with a drop edge, such as front and left, or all around.",
	}),
	moldMass: number(
		"Mold weighs, {mass}",
		{
			unit: "mass",
			also: ["mold weighs", "mold weight", "mold mass"],
			help: "What is turned over with a piece that is cast face down.",
		},
		{ above: 0 },
	),
};

/** A of a piece given by its area; in a cell kept as text its number is a text. */
const FACE_AREA: Field<number> = {
	...PIECE.a,
	unit: "area",
	read(name, typed, units) {
		const area = numberIn(
			name,
			typeof typed === "string" ? unquoted(typed) : typed,
		);
		return limited(
			name,
			toSi(area, "area", units),
			typed,
			{ above: 0 },
			"area",
			units,
		);
	},
};

function unquoted(text: string): number | string {
	checkComma(text);
	const number = Number(text.trim().replace(",", "."));
	return Number.isNaN(number) || text.trim() === "" ? text : number;
}

/** The fields of a piece of this shape. */
export const pieceFields = (shape: unknown): typeof PIECE =>
	String(shape ?? "")
		.trim()
		.toLowerCase() === "area"
		? { ...PIECE, a: FACE_AREA }
		: PIECE;

export type PieceRow = Row<typeof PIECE>;
