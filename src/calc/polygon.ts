/** Area inside a closed outline of straight sides. */
import { InputError } from "./errors";

export interface Corner {
	/** Place in the table, for errors. */
	row: number;
	xM: number;
	yM: number;
}

interface Side {
	from: Corner;
	to: Corner;
}

/** More corners than these no person types, and each side is compared with every other. */
const MOST_CORNERS = 2000;

/** Points nearer than this share of the outline's size are one point: corners come from tapes and unit conversions. */
const TOUCHING = 1e-9;

/**
 * Area of a closed outline, m²; its corners in either direction.
 *
 * Shoelace formula: |Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)| / 2. The first corner may be repeated as the last.
 *
 * @throws InputError when there are fewer than 3 corners or more than 2000, the area is zero, or sides cross or touch.
 */
export function polygonAreaM2(corners: readonly Corner[]): number {
	if (corners.length > MOST_CORNERS)
		throw new InputError(
			`points must be at most ${MOST_CORNERS} corners, got ${corners.length}`,
		);
	const size = extentM(corners);
	const near = TOUCHING * size;
	const open = withoutRepeatedEnd(corners, near);
	if (open.length < 3)
		throw new InputError(
			`points must be at least 3 different corners, got ${open.length}`,
		);
	const sides = open.map((from, index) => ({
		from,
		to: open[(index + 1) % open.length] ?? from,
	}));
	const areaM2 = Math.abs(shoelaceM2(sides));
	if (areaM2 <= near * size)
		throw new InputError(
			"points must enclose an area: these lie on a line or cross themselves",
		);
	checkApart(sides, near);
	return areaM2;
}

function extentM(corners: readonly Corner[]): number {
	const xs = corners.map(({ xM }) => xM);
	const ys = corners.map(({ yM }) => yM);
	const span = (values: number[]) =>
		values.reduce((most, value) => Math.max(most, value), -Infinity) -
		values.reduce((least, value) => Math.min(least, value), Infinity);
	return Math.max(span(xs), span(ys), 0);
}

const distanceM = (a: Corner, b: Corner): number =>
	Math.hypot(a.xM - b.xM, a.yM - b.yM);

function withoutRepeatedEnd(
	corners: readonly Corner[],
	near: number,
): readonly Corner[] {
	const first = corners[0];
	const last = corners[corners.length - 1];
	return first && last && first !== last && distanceM(first, last) <= near
		? corners.slice(0, -1)
		: corners;
}

/** Measured from the first corner, so that an outline far from zero loses no digits. */
function shoelaceM2(sides: readonly Side[]): number {
	const { xM = 0, yM = 0 } = sides[0]?.from ?? {};
	return sides.reduce(
		(sum, { from, to }) =>
			sum + ((from.xM - xM) * (to.yM - yM) - (to.xM - xM) * (from.yM - yM)) / 2,
		0,
	);
}

function checkApart(sides: readonly Side[], near: number): void {
	sides.forEach((one, i) => {
		for (let j = i + 1; j < sides.length; j += 1) {
			const other = sides[j];
			if (!other) continue;
			const apart =
				j === i + 1
					? turnsApart(one, other, near)
					: i === 0 && j === sides.length - 1
						? turnsApart(other, one, near)
						: !meet(one, other, near);
			if (!apart)
				throw new InputError(
					`points: the side of rows ${span(one)} and the side of rows ${span(other)} cross or touch`,
				);
		}
	});
}

const span = ({ from, to }: Side): string => `${from.row}–${to.row}`;

/** Whether two sides that share a corner share nothing else. */
const turnsApart = (before: Side, after: Side, near: number): boolean =>
	distanceM(before.from, before.to) > near &&
	distanceM(after.from, after.to) > near &&
	distanceToM(before.from, after) > near &&
	distanceToM(after.to, before) > near;

function meet(one: Side, other: Side, near: number): boolean {
	if (
		Math.max(one.from.xM, one.to.xM) + near <
			Math.min(other.from.xM, other.to.xM) ||
		Math.max(other.from.xM, other.to.xM) + near <
			Math.min(one.from.xM, one.to.xM)
	)
		return false;
	return (
		cross(one, other) ||
		distanceToM(one.from, other) <= near ||
		distanceToM(one.to, other) <= near ||
		distanceToM(other.from, one) <= near ||
		distanceToM(other.to, one) <= near
	);
}

/** Which way a point lies from a side: the sign is positive to the left. */
const turn = ({ from, to }: Side, point: Corner): number =>
	(to.xM - from.xM) * (point.yM - from.yM) -
	(to.yM - from.yM) * (point.xM - from.xM);

const cross = (one: Side, other: Side): boolean =>
	turn(one, other.from) * turn(one, other.to) < 0 &&
	turn(other, one.from) * turn(other, one.to) < 0;

function distanceToM(point: Corner, { from, to }: Side): number {
	const dx = to.xM - from.xM;
	const dy = to.yM - from.yM;
	const along =
		((point.xM - from.xM) * dx + (point.yM - from.yM) * dy) /
		(dx * dx + dy * dy);
	const place = Math.min(1, Math.max(0, along));
	return Math.hypot(
		point.xM - from.xM - place * dx,
		point.yM - from.yM - place * dy,
	);
}
