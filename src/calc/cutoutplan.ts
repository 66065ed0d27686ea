/** Where cutouts are drawn: at their place, or evenly along the middle of the piece where it is not typed. */

import type { Box } from "./box";
import type { PieceCutout } from "./cutouts";
import { holesOf } from "./places";
import { sum } from "./sum";

export type PlanCutout = Omit<PieceCutout, "row" | "piece">;

interface Hole {
	straight: boolean;
	widthM: number;
	heightM: number;
	/** Of its corners. */
	radiusM?: number;
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
	const { left, bottom } = whole;
	const placed = cutouts.flatMap((cutout) =>
		(holesAt(cutout) ?? []).map(({ straight, xM, yM, aM, bM }) =>
			outline(
				{ straight, widthM: aM, heightM: bM, radiusM: cutout.radiusM },
				left + xM,
				bottom - yM,
			),
		),
	);
	const others = cutouts.filter((cutout) => !isPlaced(cutout));
	return [...placed, ...inRow(others, parts)];
}

const holesAt = (cutout: PlanCutout) =>
	holesOf({ ...cutout, row: 0, piece: "" });

/** Whether it is known where a cutout lies, of several where each does. */
export const isPlaced = (cutout: PlanCutout): boolean =>
	holesAt(cutout) !== undefined;

function inRow(
	cutouts: readonly PlanCutout[],
	parts: readonly Box[],
): Within[] {
	const holes = cutouts.flatMap(({ count, shape, aM, bM = aM, radiusM }) =>
		Array<Hole>(Math.min(count, MOST)).fill({
			straight: shape === "rectangle",
			widthM: aM,
			heightM: bM,
			radiusM,
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
	const turned = { ...hole, widthM: hole.heightM, heightM: hole.widthM };
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

function outline(
	{ straight, widthM, heightM, radiusM = 0 }: Hole,
	xM: number,
	yM: number,
): Within {
	return (x, y) => {
		const across = Math.abs(x - xM);
		const along = Math.abs(y - yM);
		if (!straight)
			return ((2 * across) / widthM) ** 2 + ((2 * along) / heightM) ** 2 <= 1;
		const u = across - (widthM / 2 - radiusM);
		const v = along - (heightM / 2 - radiusM);
		return u > 0 && v > 0
			? Math.hypot(u, v) <= radiusM
			: u <= radiusM && v <= radiusM;
	};
}
