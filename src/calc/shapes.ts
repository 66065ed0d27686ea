/** What each shape of a piece needs, and its areas, edges and volume without cutouts and drop edges. */
import { InputError } from "./errors";
import { ovalAreaM2, ovalEdgeM } from "./oval";
import { withRounding } from "./rounding";

/** How a length is told to the person who typed it. */
export type LengthText = (lengthM: number) => string;

export type Shape = keyof typeof DIMENSIONS;
type Dimension = "A" | "B" | "C" | "D";

const DIMENSIONS = {
	rectangle: ["A", "B"],
	round: ["A"],
	oval: ["A", "B"],
	L: ["A", "B", "C", "D"],
	U: ["A", "B", "C", "D"],
	basin: ["A", "B", "C"],
	tube: ["A", "C"],
	area: ["A", "B"],
} as const satisfies Record<string, readonly Dimension[]>;

export const SHAPES = Object.keys(DIMENSIONS) as Shape[];

/** A shape with its dimensions, as the columns A to D hold them; A of `area` is an area. */
export interface Dimensions {
	shape: Shape;
	aM?: number;
	areaM2?: number;
	bM?: number;
	cM?: number;
	dM?: number;
	/** Of the outside corners of a rectangle, L or U, seen from above. */
	radiusM?: number;
	thicknessM: number;
}

/** What a shape comes to without cutouts and drop edges. */
export interface Outline {
	faceM2: number;
	edgeM: number;
	volumeM3: number;
	finishM2: number;
	/** What cutouts may take away: the face, of a basin the floor between its walls. */
	cuttableM2: number;
	/** What a cutout must fit in, either way round; a free outline has none, a tube takes no cutouts. */
	fits?: readonly [number, number];
	takesCutouts: boolean;
}

/**
 * Sizes of a piece's shape without cutouts and drop edges.
 *
 * @throws InputError when a dimension of the shape is missing or out of its limits, or one that it does not use is given.
 */
export function outlineOf(piece: Dimensions, lengthText: LengthText): Outline {
	checkDimensions(piece);
	const { shape, thicknessM: t } = piece;
	const a = piece.aM ?? 0;
	const b = piece.bM ?? 0;
	const c = piece.cM ?? 0;
	const d = piece.dM ?? 0;
	const r = piece.radiusM ?? 0;
	const below = limitsCheck(lengthText);
	/** With so many outside corners rounded, of which the nearest two are at the ends of the shortest of `ends`. */
	const rounded = (
		sharp: Outline,
		corners: number,
		ends: readonly number[],
	): Outline => {
		if (r === 0) return sharp;
		const most = Math.min(...ends) / 2;
		if (r > withRounding(most))
			throw new InputError(
				`corner radius must be at most half of the shortest end (${lengthText(most)}), got ${lengthText(r)}`,
			);
		return slab(
			t,
			sharp.faceM2 - corners * (1 - Math.PI / 4) * r ** 2,
			sharp.edgeM - corners * (2 - Math.PI / 2) * r,
			sharp.fits,
		);
	};
	switch (shape) {
		case "rectangle":
			return rounded(slab(t, a * b, 2 * (a + b), [a, b]), 4, [a, b]);
		case "round":
			return slab(t, ovalAreaM2(a, a), Math.PI * a, [a, a]);
		case "oval":
			return slab(t, ovalAreaM2(a, b), ovalEdgeM(a, b), [a, b]);
		case "L":
			below("C", c, "A", a);
			below("D", d, "B", b);
			return rounded(slab(t, a * b - c * d, 2 * (a + b), [a, b]), 5, [
				a - c,
				b - d,
			]);
		case "U":
			below("C", c, "the longer of A and B", Math.max(a, b));
			below("D", d, "the shorter of A and B", Math.min(a, b));
			return rounded(slab(t, a * b - c * d, 2 * (a + b) + 2 * d, [a, b]), 6, [
				(Math.max(a, b) - c) / 2,
				Math.min(a, b),
			]);
		case "basin":
			below("thickness", t, "half of A", a / 2);
			below("thickness", t, "half of B", b / 2);
			below("thickness", t, "C", c);
			return basin(a, b, c, t);
		case "tube":
			below("thickness", t, "half of A", a / 2);
			return tube(a, c, t);
		case "area":
			return slab(t, piece.areaM2 ?? 0, b);
	}
}

function checkDimensions(piece: Dimensions): void {
	const [first] = dimensionMistakes(piece);
	if (first) throw new InputError(first);
}

/** A sentence for each dimension that the shape needs and the piece has not, or the other way round. */
export function dimensionMistakes(piece: Dimensions): string[] {
	const given: Record<Dimension, number | undefined> = {
		A: piece.shape === "area" ? piece.areaM2 : piece.aM,
		B: piece.bM,
		C: piece.cM,
		D: piece.dM,
	};
	const used: readonly Dimension[] = DIMENSIONS[piece.shape];
	return Object.entries(given).flatMap(([name, value]) => {
		const uses = used.includes(name as Dimension);
		if (uses && value === undefined)
			return [`${name} is blank, and ${piece.shape} needs it`];
		if (!uses && value !== undefined)
			return [`${name} must be blank: ${piece.shape} has no ${name}`];
		return [];
	});
}

const limitsCheck =
	(lengthText: LengthText) =>
	(name: string, lengthM: number, limit: string, limitM: number): void => {
		if (lengthM < limitM) return;
		throw new InputError(
			`${name} must be below ${limit} (${lengthText(limitM)}), got ${lengthText(lengthM)}`,
		);
	};

const slab = (
	thicknessM: number,
	faceM2: number,
	edgeM: number,
	fits?: readonly [number, number],
): Outline => ({
	faceM2,
	edgeM,
	volumeM3: faceM2 * thicknessM,
	finishM2: faceM2 + edgeM * thicknessM,
	cuttableM2: faceM2,
	fits,
	takesCutouts: true,
});

/** An open box: a × b outside, c high outside, walls and floor t. */
function basin(a: number, b: number, c: number, t: number): Outline {
	const insideA = a - 2 * t;
	const insideB = b - 2 * t;
	const floorM2 = insideA * insideB;
	const wallsM2 = 2 * (a + b) * c + 2 * (insideA + insideB) * (c - t);
	return {
		faceM2: a * b,
		edgeM: 2 * (a + b),
		volumeM3: a * b * c - floorM2 * (c - t),
		finishM2: wallsM2 + (a * b - floorM2) + floorM2,
		cuttableM2: floorM2,
		fits: [insideA, insideB],
		takesCutouts: true,
	};
}

/** Open both ends: diameter a outside, c high, wall t. */
function tube(a: number, c: number, t: number): Outline {
	const inside = a - 2 * t;
	const rimM2 = ovalAreaM2(a, a) - ovalAreaM2(inside, inside);
	return {
		faceM2: Math.PI * a * c,
		edgeM: 2 * Math.PI * (a + inside),
		volumeM3: rimM2 * c,
		finishM2: Math.PI * (a + inside) * c + 2 * rimM2,
		cuttableM2: 0,
		takesCutouts: false,
	};
}
