/** Places for cutouts whose place nobody typed: in the middle, or where they weaken the piece most. */
import type { Laid } from "./carrying";
import { type PieceCutout, sides } from "./cutouts";
import { InputError } from "./errors";
import { type Hole, holesOf, overlap, type Part, stripM } from "./places";
import type { Piece } from "./takeoff";

/** The largest boxes that a piece's A × B is without its notch, the largest first. */
function partsOf({ aM = 0, bM = aM }: Piece, notch: Part | undefined): Part[] {
	const whole = { left: 0, right: aM, front: 0, back: bM };
	if (notch === undefined) return [whole];
	return [
		{ ...whole, right: notch.left },
		{ ...whole, left: notch.right },
		{ ...whole, back: notch.front },
		{ ...whole, front: notch.back },
	]
		.filter(({ left, right, front, back }) => right > left && back > front)
		.sort((one, other) => areaM2(other) - areaM2(one));
}

const areaM2 = ({ left, right, front, back }: Part): number =>
	(right - left) * (back - front);

/** Parts that a cutout goes into, or all where it goes into none; the largest first. */
function roomsFor(
	piece: Piece,
	notch: Part | undefined,
	cutout: PieceCutout,
): Part[] {
	const { leftM, frontM, count } = cutout;
	const { aM, bM } = sides(cutout);
	const parts = partsOf(piece, notch).filter(
		({ left, right, front, back }) =>
			(leftM === undefined || (leftM >= left && leftM <= right)) &&
			(frontM === undefined || (frontM >= front && frontM <= back)),
	);
	const holding = parts.filter(
		({ left, right, front, back }) =>
			right - left >= count * aM && back - front >= bM,
	);
	return holding.length > 0
		? holding
		: parts.length > 0
			? parts
			: partsOf(piece, notch);
}

/**
 * The openings of cutouts, those without a place in the middle of the largest part of the piece that they go into; several
 * of one row with equal gaps along it.
 *
 * @throws InputError for several at one typed place.
 */
export const inTheMiddle = (
	piece: Piece,
	notch: Part | undefined,
	cutouts: readonly PieceCutout[],
): Hole[] =>
	cutouts.flatMap((cutout) => {
		const { row, shape, count, leftM, frontM } = cutout;
		if (count > 1 && leftM !== undefined)
			throw new InputError(
				`cutouts row ${row}: count must be 1 where the left is typed: give each a row`,
			);
		const { aM, bM } = sides(cutout);
		const [{ left, right, front, back } = whole(piece)] = roomsFor(
			piece,
			notch,
			cutout,
		);
		const gap = (right - left - count * aM) / (count + 1);
		return Array.from({ length: count }, (_, i) => ({
			row,
			straight: shape === "rectangle",
			xM: leftM ?? left + (i + 1) * gap + (i + 1 / 2) * aM,
			yM: frontM === undefined ? (front + back) / 2 : frontM + bM / 2,
			aM,
			bM,
		}));
	});

const whole = ({ aM = 0, bM = aM }: Piece): Part => ({
	left: 0,
	right: aM,
	front: 0,
	back: bM,
});

/** Places tried along a part. */
const TRIED = 24;

/**
 * The piece with all its openings, those without a place where the stress is greatest, one after the other, the widest
 * first: anywhere that leaves the least strip to the edges and overlaps none that is there.
 */
export function worstPlaced(
	piece: Piece,
	notch: Part | undefined,
	cutouts: readonly PieceCutout[],
	leastM: number,
	stressPa: (laid: Pick<Laid, "piece" | "notch" | "holes">) => number,
): Hole[] {
	const placed = cutouts.flatMap((cutout) => holesOf(cutout) ?? []);
	const free = cutouts
		.filter((cutout) => holesOf(cutout) === undefined)
		.flatMap((cutout) =>
			Array<PieceCutout>(cutout.count).fill({ ...cutout, count: 1 }),
		)
		.sort((one, other) => sides(other).bM - sides(one).bM);
	for (const cutout of free) {
		const worst = placesFor(piece, notch, cutout, leastM)
			.filter((hole) => !placed.some((other) => overlap(hole, other)))
			.map((hole) => ({
				hole,
				stress: stressPa({ piece, notch, holes: [...placed, hole] }),
			}))
			.reduce<{ hole: Hole; stress: number } | undefined>(
				(most, one) => (most && most.stress >= one.stress ? most : one),
				undefined,
			);
		placed.push(
			...(worst ? [worst.hole] : inTheMiddle(piece, notch, [cutout])),
		);
	}
	return placed;
}

function placesFor(
	piece: Piece,
	notch: Part | undefined,
	cutout: PieceCutout,
	leastM: number,
): Hole[] {
	const { row, shape, leftM, frontM } = cutout;
	const { aM, bM } = sides(cutout);
	/** From end to end of a stretch, as far as the strip allows. */
	const along = (low: number, high: number, size: number, count: number) => {
		const from = low + leastM + size / 2;
		const to = high - leastM - size / 2;
		return to <= from
			? [(low + high) / 2]
			: Array.from(
					{ length: count + 1 },
					(_, i) => from + ((to - from) * i) / count,
				);
	};
	return roomsFor(piece, notch, { ...cutout, count: 1 })
		.flatMap(({ left, right, front, back }) => {
			const xs = leftM === undefined ? along(left, right, aM, TRIED) : [leftM];
			const ys =
				frontM === undefined ? along(front, back, bM, 2) : [frontM + bM / 2];
			return xs.flatMap((xM) =>
				ys.map((yM) => ({
					row,
					straight: shape === "rectangle",
					xM,
					yM,
					aM,
					bM,
				})),
			);
		})
		.filter((hole) => stripM(piece, notch, hole) >= 0);
}
