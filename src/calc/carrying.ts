/** Bending of a piece that is held by two of its ends, by its true weight, where its section is weakest. */
import { InputError } from "./errors";
import { G_M_PER_S2 } from "./handling";
import type { Hole, Part } from "./places";
import { breaksOf, type Slab, type Strip, stripsAt, weightAt } from "./slab";
import { sum } from "./sum";
import type { Piece } from "./takeoff";

export const CARRIED = ["flat", "on edge"] as const;
export type Carried = (typeof CARRIED)[number];

/** A piece with its openings in their places. */
export interface Laid {
	piece: Piece;
	notch?: Part;
	holes: readonly Hole[];
	/** Drop edges that run along the whole span; undefined where that is not known. */
	lips?: number;
	/** How far from each end it is held; by the ends where nothing is said. */
	insetM?: number;
}

export interface Bending {
	/** Greatest bending stress, without a factor. */
	stressPa: number;
	/** Concrete left across that section, all strips together. */
	netM: number;
	/** Its distance from the end where the span begins: left, or front. */
	atM: number;
}

/** The piece as it is carried by the ends of B: left and front change places. */
export const turned = ({ piece, notch, holes }: Laid): Laid => ({
	piece: { ...piece, aM: piece.bM ?? piece.aM, bM: piece.aM },
	notch: notch && {
		left: notch.front,
		right: notch.back,
		front: notch.left,
		back: notch.right,
	},
	holes: holes.map((hole) => ({
		...hole,
		xM: hole.yM,
		yM: hole.xM,
		aM: hole.bM,
		bM: hole.aM,
	})),
});

/**
 * Greatest bending stress of a slab held by the ends of A, Pa. Torsion, stress at sharp inside corners and fibers after
 * cracking are not in it.
 *
 * Flat: M / S, S = b t²/6 of the concrete that is left across. Where a drop edge runs along the span, S is that of the slab
 * with its lip by parallel axes, at the lip or the face, whichever is less; where it is not known to, also that of the slab
 * alone.
 *
 * On edge: M / S at the lower fiber of all strips together, the wider strip down, and beside an opening what each strip
 * carries of the shear as a frame: M = |V| (s³ / Σ s³) a/2 + w a²/12, S = t s²/6.
 *
 * `fine` looks closely for the place of the greatest stress.
 *
 * @throws InputError where the cutouts leave nothing across the piece.
 * @source Statics of a beam on two supports; fixed-ended strips as in a Vierendeel girder.
 */
export function bending(
	laid: Laid,
	densityKgPerM3: number,
	carried: Carried,
	fine = true,
): Bending {
	const slab = slabOf(laid);
	const weight = weightAt(slab);
	const gravity = densityKgPerM3 * G_M_PER_S2;
	const stressAt =
		carried === "flat"
			? flatStress(laid, weight)
			: edgeStress(laid, slab, weight);
	const worst = greatest(
		breaksOf(slab),
		(x, inside) => stressAt(x, inside, across(slab, inside)),
		fine ? (x) => weight(x).shearM3 : undefined,
	);
	return {
		stressPa: gravity * worst.value,
		netM: sum(across(slab, worst.inside).map(widthOf)),
		atM: worst.x,
	};
}

function slabOf({ piece, notch, holes, insetM = 0 }: Laid): Slab {
	const { shape, aM = 0, bM = aM, thicknessM } = piece;
	const { dropHeightM = 0, dropRunM = 0 } = piece;
	const { dropThicknessM = thicknessM } = piece;
	return {
		lengthM: aM,
		heldM: [insetM, aM - insetM],
		widthM: bM,
		thicknessM,
		oval: shape === "round" || shape === "oval",
		notch,
		holes,
		dropM3: dropHeightM * dropRunM * dropThicknessM,
	};
}

const widthOf = ([from, to]: Strip): number => to - from;

function across(slab: Slab, x: number): Strip[] {
	const strips = stripsAt(slab, x);
	if (strips.length === 0)
		throw new InputError("the cutouts leave nothing across the piece");
	return strips;
}

type Weight = ReturnType<typeof weightAt>;
/** Stress at x by the strips at `inside`, m: times density and gravity it is Pa. */
type StressAt = (x: number, inside: number, strips: readonly Strip[]) => number;

function flatStress({ piece, lips }: Laid, weight: Weight): StressAt {
	const { thicknessM: t, dropHeightM: h = 0 } = piece;
	const { dropThicknessM: d = t } = piece;
	return (x, _, strips) => {
		const net = sum(strips.map(widthOf));
		const plain = (net * t ** 2) / 6;
		const lipped = (count: number) =>
			lippedModulusM3({ net, t, h, d: count * d });
		const modulus =
			h === 0 || lips === 0
				? plain
				: lips === undefined
					? Math.min(plain, lipped(1))
					: lipped(lips);
		return Math.abs(weight(x).momentM4) / modulus;
	};
}

/** Section modulus of a slab with lips that are d thick together and hang h below it, at the lip or the face, whichever is less. */
export function lippedModulusM3({
	net,
	t,
	h,
	d,
}: Record<"net" | "t" | "h" | "d", number>): number {
	const slabM2 = net * t;
	const lipM2 = d * h;
	const center = (slabM2 * (h + t / 2) + (lipM2 * h) / 2) / (slabM2 + lipM2);
	const inertia =
		(net * t ** 3) / 12 +
		slabM2 * (h + t / 2 - center) ** 2 +
		(d * h ** 3) / 12 +
		lipM2 * (center - h / 2) ** 2;
	return inertia / Math.max(center, h + t - center);
}

function edgeStress(
	{ piece, notch, holes }: Laid,
	slab: Slab,
	weight: Weight,
): StressAt {
	const { thicknessM: t } = piece;
	const frames = holes.map((hole) => ({
		from: hole.xM - hole.aM / 2,
		to: hole.xM + hole.aM / 2,
		stress: frameStress(hole, slab, weight),
	}));
	// It stands on a straight side: not on the one that the notch is in.
	const onFront = notch === undefined || notch.front > 0;
	const onBack = notch === undefined || notch.back < slab.widthM;
	return (x, inside, strips) => {
		const { momentM4 } = weight(x);
		const { front, back } = edgeModuliM3(strips, t);
		// Sagging it is the lower fiber that cracks, hogging the upper.
		const modulus =
			momentM4 >= 0
				? Math.max(onFront ? front : 0, onBack ? back : 0)
				: Math.min(front, back);
		const frame = frames
			.filter(({ from, to }) => inside > from && inside < to)
			.map(({ stress }) => stress);
		return Math.abs(momentM4) / modulus + Math.max(0, ...frame);
	};
}

/** Section moduli on edge of strips in one plane, at the front and the back fiber, by parallel axes. */
export function edgeModuliM3(
	strips: readonly Strip[],
	thicknessM: number,
): { front: number; back: number } {
	const area = sum(strips.map(widthOf));
	const center =
		sum(strips.map(([from, to]) => ((to - from) * (from + to)) / 2)) / area;
	const inertia =
		thicknessM *
		sum(
			strips.map(
				([from, to]) =>
					(to - from) ** 3 / 12 + (to - from) * ((from + to) / 2 - center) ** 2,
			),
		);
	const first = strips[0]?.[0] ?? 0;
	const last = strips[strips.length - 1]?.[1] ?? 0;
	return { front: inertia / (center - first), back: inertia / (last - center) };
}

/** Greatest stress of the strips beside an opening as they carry the shear past it; none where it leaves a single strip. */
function frameStress(hole: Hole, slab: Slab, weight: Weight): number {
	const widths = across(slab, hole.xM).map(widthOf);
	if (widths.length < 2) return 0;
	const { shearM3 } = weight(hole.xM);
	const t = slab.thicknessM;
	const cubes = sum(widths.map((s) => s ** 3));
	return Math.max(
		...widths.map(
			(s) =>
				((Math.abs(shearM3) * (s ** 3 / cubes) * hole.aM) / 2 +
					(t * s * hole.aM ** 2) / 12) /
				((t * s ** 2) / 6),
		),
	);
}

/**
 * The greatest value over all places between the breaks. `inside` is the place, or a hair beside it where it is a break: there
 * the section is that of the one side or of the other. With the shear it looks closely: where there is none, and, since a
 * round section may be weaker beside that, ever closer around the greatest value.
 */
function greatest(
	breaks: readonly number[],
	valueAt: (x: number, inside: number) => number,
	shearAt?: (x: number) => number,
) {
	const count = shearAt ? 48 : 12;
	let best = { x: 0, inside: 0, value: -1 };
	for (let i = 1; i < breaks.length; i++) {
		const low = breaks[i - 1] as number;
		const high = breaks[i] as number;
		const hair = (high - low) * 1e-9;
		if (hair === 0) continue;
		const tried = (x: number) => {
			const inside = Math.min(Math.max(x, low + hair), high - hair);
			const value = valueAt(x, inside);
			if (value > best.value * (1 + 1e-12)) best = { x, inside, value };
			return value;
		};
		const place = (k: number) =>
			low + ((high - low) * Math.min(Math.max(k, 0), count)) / count;
		const still = shearAt && zeroBetween(low + hair, high - hair, shearAt);
		if (still !== undefined) tried(still);
		let top = 0;
		let topValue = -1;
		for (let k = 0; k <= count; k++) {
			const value = tried(place(k));
			if (value > topValue) [top, topValue] = [k, value];
		}
		if (shearAt) narrow(place(top - 1), place(top + 1), tried);
	}
	return best;
}

/** Where a value that falls or rises all along is zero, by halving; undefined where it is not. */
function zeroBetween(
	low: number,
	high: number,
	valueAt: (x: number) => number,
): number | undefined {
	const rises = valueAt(high) > valueAt(low);
	if (valueAt(low) * valueAt(high) > 0) return undefined;
	let [from, to] = [low, high];
	for (let i = 0; i < 60; i++) {
		const middle = (from + to) / 2;
		if (valueAt(middle) > 0 === rises) to = middle;
		else from = middle;
	}
	return (from + to) / 2;
}

/** Tries ever closer places around the top between two places, by golden section. */
function narrow(low: number, high: number, tried: (x: number) => number) {
	const golden = (Math.sqrt(5) - 1) / 2;
	let [from, to] = [low, high];
	for (let i = 0; i < 40; i++) {
		const left = to - golden * (to - from);
		const right = from + golden * (to - from);
		if (tried(left) < tried(right)) from = left;
		else to = right;
	}
}
