/** A slab on two supports: what is left of it across each place, and what its own weight does there. In m. */
import type { Hole, Part } from "./places";

export interface Slab {
	/** Of the whole slab; x runs along it. */
	lengthM: number;
	/** Where it is held. */
	heldM: readonly [from: number, to: number];
	/** Across it, along y. */
	widthM: number;
	thicknessM: number;
	/** Round or oval: its outline is the ellipse in length × width. */
	oval: boolean;
	/** What its notch takes out; left and right are along x, front and back along y. */
	notch?: Part;
	holes: readonly Hole[];
	/** Of its drop edges, spread over the length: right for one along it, and on the safe side for one at an end. */
	dropM3: number;
}

/** A stretch of concrete across the slab. */
export type Strip = readonly [from: number, to: number];

interface Shape {
	sign: 1 | -1;
	straight: boolean;
	left: number;
	right: number;
	across: number;
}

/** What weighs: the outline with the drop edges, less the notch and the openings. */
function shapesOf(slab: Slab): Shape[] {
	const { lengthM, widthM, thicknessM, oval, notch, holes, dropM3 } = slab;
	return [
		{
			sign: 1,
			straight: true,
			left: 0,
			right: lengthM,
			across: dropM3 / (lengthM * thicknessM),
		},
		{ sign: 1, straight: !oval, left: 0, right: lengthM, across: widthM },
		...(notch
			? [
					{
						sign: -1,
						straight: true,
						left: notch.left,
						right: notch.right,
						across: notch.back - notch.front,
					} as const,
				]
			: []),
		...holes.map(
			({ straight, xM, aM, bM }): Shape => ({
				sign: -1,
				straight,
				left: xM - aM / 2,
				right: xM + aM / 2,
				across: bM,
			}),
		),
	];
}

/**
 * Of what lies left of x: its area, m², and the area's moment about x, m³.
 *
 * Of an ellipse with half axes a and b, u = (x − middle) / a: area ab F, moment a²b (u F + 2/3 (1 − u²)^(3/2)), where
 * F = u √(1 − u²) + asin u + π/2.
 */
function leftOf({ straight, left, right, across }: Shape, x: number) {
	if (x <= left) return { areaM2: 0, momentM3: 0 };
	const end = Math.min(x, right);
	if (straight) {
		const areaM2 = (end - left) * across;
		return { areaM2, momentM3: areaM2 * (x - (left + end) / 2) };
	}
	const a = (right - left) / 2;
	const u = (end - left - a) / a;
	const root = Math.sqrt(Math.max(0, 1 - u * u));
	const f = u * root + Math.asin(u) + Math.PI / 2;
	const areaM2 = (a * across * f) / 2;
	const momentM3 = ((a * a * across) / 2) * (u * f + (2 / 3) * root ** 3);
	return { areaM2, momentM3: momentM3 + areaM2 * (x - end) };
}

/** Shear and bending moment, as volume and volume × m: times density and gravity they are N and N·m. */
export function weightAt(slab: Slab): (x: number) => {
	shearM3: number;
	momentM4: number;
} {
	const { lengthM, thicknessM: t, heldM } = slab;
	const [first, second] = heldM;
	const shapes = shapesOf(slab);
	const leftOfAll = (x: number) =>
		shapes.reduce(
			(all, shape) => {
				const { areaM2, momentM3 } = leftOf(shape, x);
				return {
					areaM2: all.areaM2 + shape.sign * areaM2,
					momentM3: all.momentM3 + shape.sign * momentM3,
				};
			},
			{ areaM2: 0, momentM3: 0 },
		);
	const whole = leftOfAll(lengthM);
	const atFirst =
		(whole.momentM3 - whole.areaM2 * (lengthM - second)) / (second - first);
	const atSecond = whole.areaM2 - atFirst;
	return (x) => {
		const { areaM2, momentM3 } = leftOfAll(x);
		return {
			shearM3:
				t * ((x > first ? atFirst : 0) + (x > second ? atSecond : 0) - areaM2),
			momentM4:
				t *
				(atFirst * Math.max(0, x - first) +
					atSecond * Math.max(0, x - second) -
					momentM3),
		};
	};
}

/** The concrete across the slab at x, from front to back. */
export function stripsAt(slab: Slab, x: number): Strip[] {
	const { lengthM, widthM, oval, notch, holes } = slab;
	const reach = oval ? half(widthM, (2 * x) / lengthM - 1) : widthM / 2;
	const gaps: Strip[] = [
		...(notch && x > notch.left && x < notch.right
			? [[notch.front, notch.back] as const]
			: []),
		...holes.flatMap(({ straight, xM, yM, aM, bM }): Strip[] => {
			const u = (2 * (x - xM)) / aM;
			if (Math.abs(u) >= 1) return [];
			const out = straight ? bM / 2 : half(bM, u);
			return [[yM - out, yM + out]];
		}),
	];
	return gaps
		.sort(([one], [other]) => one - other)
		.reduce((strips, gap) => strips.flatMap((strip) => without(strip, gap)), [
			[widthM / 2 - reach, widthM / 2 + reach],
		] as Strip[]);
}

/** Half the chord of an ellipse, at u of its half axis. */
const half = (acrossM: number, u: number): number =>
	(acrossM / 2) * Math.sqrt(Math.max(0, 1 - u * u));

const without = ([from, to]: Strip, [low, high]: Strip): Strip[] =>
	(
		[
			[from, Math.min(to, low)],
			[Math.max(from, high), to],
		] as const
	).filter(([start, end]) => end - start > 1e-9);

/** Places where the section changes, the ends with them. */
export const breaksOf = ({ lengthM, heldM, notch, holes }: Slab): number[] =>
	[
		0,
		lengthM,
		...heldM,
		...(notch ? [notch.left, notch.right] : []),
		...holes.flatMap(({ xM, aM }) => [xM - aM / 2, xM + aM / 2]),
	]
		.filter((x) => x >= 0 && x <= lengthM)
		.sort((one, other) => one - other);
