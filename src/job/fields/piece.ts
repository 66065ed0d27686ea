import { FACES } from "../../calc/mold";
import { SHAPES } from "../../calc/shapes";
import { length, type Row, text, whole, word } from "./field";

const SLABS = ["rectangle", "round", "oval", "L", "U", "area"] as const;

/** A piece of a job. A goes from left to right, B from front to back, seen from above. */
export const PIECE = {
	name: text("Piece", { required: true, also: ["name", "item", "part"] }),
	quantity: whole("Qty", {
		required: true,
		start: 1,
		also: ["quantity", "count", "pcs", "pieces", "number"],
	}),
	shape: word("Shape", SHAPES, {
		required: true,
		start: "rectangle",
		help: "L: A × B less a corner notch C × D. U: notch C wide, D deep in the longer side. Basin: A × B outside, C high. Tube: A outside, C high.",
	}),
	a: length("A", { required: true, also: ["length", "diameter"] }),
	b: length("B", {
		shapes: ["rectangle", "oval", "L", "U", "basin", "area"],
		also: ["width", "depth", "wide"],
	}),
	c: length("C", {
		shapes: ["L", "U", "basin", "tube"],
		also: ["height", "high"],
	}),
	d: length("D", { shapes: ["L", "U"] }),
	thickness: length("Thickness", { required: true, also: ["thick"] }),
	dropHeight: length("Drop height", {
		shapes: SLABS,
		help: "Of the drop edge, below the slab.",
	}),
	dropRun: length("Drop run", {
		shapes: SLABS,
		help: "Length of the drop edge along the outline.",
	}),
	dropThickness: length("Drop thickness", {
		shapes: SLABS,
		help: "Blank: as thick as the piece.",
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
};

export type PieceRow = Row<typeof PIECE>;
