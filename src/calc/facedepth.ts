/** How much of a piece lies within a depth of what is seen of it. */
import { cutoutTotals, type PieceCutout } from "./cutouts";
import { ovalAreaM2 } from "./oval";
import { type LengthText, type Outline, outlineOf, type Shape } from "./shapes";
import { dropEdge, type Piece } from "./takeoff";

/** Corners of an outline: those that stick out, and those that go in. */
const CORNERS: Readonly<Partial<Record<Shape, readonly [number, number]>>> = {
	rectangle: [4, 0],
	L: [5, 1],
	U: [6, 2],
};

/**
 * Volume within a depth of the face, the edges, the rims of cutouts and the front of a drop edge, m³.
 *
 * The slab less its core, so that what lies near two surfaces counts once. Of a basin the outside, the rim, the inside and
 * the floor; of a tube both walls and both rims. Cutouts nearer to each other or to an edge than twice the depth are
 * counted a little too high.
 */
export function facedVolumeM3(
	piece: Piece,
	cutouts: readonly PieceCutout[],
	depthM: number,
	lengthText: LengthText,
): number {
	const outline = outlineOf(piece, lengthText);
	const cut = cutoutTotals(cutouts, outline, lengthText);
	const holes = cutouts.reduce((all, { count }) => all + count, 0);
	/** Of the cutouts and what lies within the depth of their rims. */
	const cutM2 =
		holes > 0
			? cut.areaM2 + cut.rimM * depthM + holes * Math.PI * depthM ** 2
			: 0;
	const drop = dropEdge(piece);
	const slabM3 = outline.volumeM3 - cut.areaM2 * piece.thicknessM;
	return (
		slabM3 -
		Math.min(slabM3, coreM3(piece, outline, cutM2, depthM)) +
		drop.areaM2 * Math.min(depthM, drop.thicknessM)
	);
}

const positive = (value: number): number => Math.max(0, value);

/** What lies deeper, m³. */
function coreM3(
	piece: Piece,
	outline: Outline,
	cutM2: number,
	d: number,
): number {
	const { shape, thicknessM: t, aM: a = 0, bM: b = 0, cM: c = 0 } = piece;
	const floor = positive(t - d);
	if (shape === "tube") {
		const inside = a - 2 * t + 2 * d;
		const outside = positive(a - 2 * d);
		const ring = ovalAreaM2(outside, outside) - ovalAreaM2(inside, inside);
		return positive(ring) * positive(c - 2 * d);
	}
	if (shape === "basin") {
		const within = positive(a - 2 * d) * positive(b - 2 * d);
		const [insideA, insideB] = [a - 2 * t, b - 2 * t];
		const inside =
			insideA * insideB + 2 * (insideA + insideB) * d + Math.PI * d ** 2;
		return (
			positive(within - cutM2) * floor + positive(within - inside) * (c - t)
		);
	}
	if (2 * d >= narrowestM(piece)) return 0;
	return positive(setBackM2(piece, outline, d) - cutM2) * floor;
}

/** Area of the outline set back by a depth. Around a corner that goes in, the depth is a quarter circle. */
function setBackM2(
	{ shape, radiusM: r = 0 }: Piece,
	{ faceM2, edgeM }: Outline,
	d: number,
): number {
	const quarter = Math.PI / 4;
	const corners = CORNERS[shape];
	// A smooth outline turns once around, as four quarter circles do.
	if (!corners) return faceM2 - edgeM * d + 4 * quarter * d ** 2;
	const [out, inward] = corners;
	const each =
		r < d
			? d ** 2 + (1 - quarter) * r ** 2 - (2 - 2 * quarter) * r * d
			: quarter * d ** 2;
	return faceM2 - edgeM * d + out * each - inward * quarter * d ** 2;
}

/** Of which the depth from both sides takes all. */
function narrowestM({
	shape,
	aM: a = 0,
	bM: b = a,
	cM: c = 0,
	dM: d = 0,
}: Piece) {
	if (shape === "area") return Number.POSITIVE_INFINITY;
	if (shape === "round") return a;
	if (shape === "L") return Math.min(a - c, b - d);
	if (shape === "U")
		return Math.min((Math.max(a, b) - c) / 2, Math.min(a, b) - d);
	return Math.min(a, b);
}
