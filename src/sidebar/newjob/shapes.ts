/** Which dimensions a shape has, by the words a studio uses. */

export type Dimension = "a" | "b" | "c" | "d";

export interface Shape {
	name: string;
	/** What each dimension is, in order of A, B, C, D. */
	dimensions: Readonly<Partial<Record<Dimension, string>>>;
	/** False where a drop edge makes no sense. */
	drop: boolean;
}

export const SHAPES: readonly Shape[] = [
	{ name: "rectangle", dimensions: { a: "length", b: "width" }, drop: true },
	{ name: "round", dimensions: { a: "diameter" }, drop: true },
	{
		name: "oval",
		dimensions: { a: "diameter", b: "other diameter" },
		drop: true,
	},
	{
		name: "L",
		dimensions: {
			a: "length",
			b: "width",
			c: "notch length",
			d: "notch width",
		},
		drop: true,
	},
	{
		name: "U",
		dimensions: { a: "length", b: "width", c: "notch width", d: "notch depth" },
		drop: true,
	},
	{
		name: "basin",
		dimensions: {
			a: "outside length",
			b: "outside width",
			c: "outside height",
		},
		drop: false,
	},
	{
		name: "tube",
		dimensions: { a: "outside diameter", c: "height" },
		drop: false,
	},
	{
		name: "area",
		dimensions: { a: "face area", b: "outline length" },
		drop: true,
	},
];

export const CUTOUT_SHAPES: readonly Shape[] = SHAPES.slice(0, 3);

const OTHER_WORDS: Readonly<Record<string, string>> = {
	rect: "rectangle",
	rectangular: "rectangle",
	slab: "rectangle",
	circle: "round",
	circular: "round",
	ellipse: "oval",
	"l-shape": "L",
	"l shape": "L",
	"u-shape": "U",
	"u shape": "U",
};

export const shapeNamed = (typed: string): Shape | undefined => {
	const word = typed.trim().toLowerCase();
	const name = (OTHER_WORDS[word] ?? word).toLowerCase();
	return SHAPES.find((shape) => shape.name.toLowerCase() === name);
};
