/** Where cutouts are drawn: at their place, or evenly along the middle of the piece where it is not typed. */

import type { Box } from "./box";
import type { PieceCutout } from "./cutouts";
import { sum } from "./sum";

export type PlanCutout = Pick<PieceCutout, "count" | "shape" | "aM" | "bM"> & {
	/** From the piece's left side to the cutout's center. */
	leftM?: number;
	/** Concrete before it. */
	frontM?: number;
};

interface Hole {
	straight: boolean;
	widthM: number;
	heightM: number;
}

/** More than this cannot be told apart in a picture. */
const MOST = 100;

type Within = (x: number, y: number) => boolean;

/**
 * Whether a place is in a cutout, one test a cutout. Those without a place stand in a row along the largest part that
 * holds them all.
 */
export function cutoutOutlines(
	cutouts: readonly PlanCutout[],
	parts: readonly Box[],
	whole: Box,
): Within[] {
	return [
		...cutouts.filter(isPlaced).map((cutout) => placed(cutout, whole)),
		...inRow(
			cutouts.filter((cutout) => !isPlaced(cutout)),
			parts,
		),
	];
}

type Placed = PlanCutout & { leftM: number; frontM: number };

const isPlaced = (cutout: PlanCutout): cutout is Placed =>
	cutout.leftM !== undefined && cutout.frontM !== undefined;

function placed(
	{ shape, aM, bM = aM, leftM, frontM }: Placed,
	{ left, bottom }: Box,
): Within {
	const hole = { straight: shape === "rectangle", widthM: aM, heightM: bM };
	return outline(hole, left + leftM, bottom - frontM - bM / 2);
}

function inRow(
	cutouts: readonly PlanCutout[],
	parts: readonly Box[],
): Within[] {
	const holes = cutouts.flatMap(({ count, shape, aM, bM = aM }) =>
		Array<Hole>(Math.min(count, MOST)).fill({
			straight: shape === "rectangle",
			widthM: aM,
			heightM: bM,
		}),
	);
	const rows = [...parts]
		.sort((one, other) => areaM2(other) - areaM2(one))
		.map((part) => rowIn(part, holes));
	return (rows.find(({ fits }) => fits) ?? rows[0])?.outlines ?? [];
}

const width = ({ left, right }: Box): number => right - left;
const height = ({ top, bottom }: Box): number => bottom - top;
const areaM2 = (box: Box): number => width(box) * height(box);

const goesIn = (box: Box, { widthM, heightM }: Hole): boolean =>
	widthM <= width(box) && heightM <= height(box);

/** Turned by a right angle where it only goes in like that. */
function laid(box: Box, hole: Hole): Hole {
	const { straight, widthM, heightM } = hole;
	const turned = { straight, widthM: heightM, heightM: widthM };
	return !goesIn(box, hole) && goesIn(box, turned) ? turned : hole;
}

/** Equal gaps along the longer side of the part. */
function rowIn(box: Box, holes: readonly Hole[]) {
	const lying = width(box) >= height(box);
	const row = holes.map((hole) => laid(box, hole));
	const lengthOf = (hole: Hole) => (lying ? hole.widthM : hole.heightM);
	const taken = sum(row.map(lengthOf));
	const free = (lying ? width(box) : height(box)) - taken;
	const gap = free / (row.length + 1);
	let end = lying ? box.left : box.top;
	const outlines = row.map((hole) => {
		const middle = end + gap + lengthOf(hole) / 2;
		end += gap + lengthOf(hole);
		return lying
			? outline(hole, middle, (box.top + box.bottom) / 2)
			: outline(hole, (box.left + box.right) / 2, middle);
	});
	return {
		fits: free >= 0 && row.every((hole) => goesIn(box, hole)),
		outlines,
	};
}

function outline({ straight, widthM, heightM }: Hole, xM: number, yM: number) {
	return (x: number, y: number): boolean => {
		const u = (2 * (x - xM)) / widthM;
		const v = (2 * (y - yM)) / heightM;
		return straight ? Math.abs(u) <= 1 && Math.abs(v) <= 1 : u * u + v * v <= 1;
	};
}
