/** A photo of samples beside a reference card: which patches count, whether it can be read, and what it says. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import {
	conditionOf,
	leftOutPatches,
	linearOf,
	type Patch,
	type PhotoFit,
	photoReader,
	type Triple,
} from "./photofit";
import { sum } from "./sum";
import { type Curve, grayCurves } from "./tonecurve";

/** An area of the photo: the median of its pixels, and how far they spread, a share. */
export interface Area {
	rgb8: Triple;
	spread: number;
	/** Its place, as shares of the photo's width; light that falls off is then taken out. */
	at?: { x: number; y: number };
}

export interface CardPatch extends Area {
	name: string;
	/** As the card's maker states it, D65. */
	lab: Lab;
}

export interface PhotoColor {
	lab: Lab;
	/** CIEDE2000 within which such readings usually are. */
	within: number;
}

export interface CardReading {
	/** Of a sample in the same photo. */
	read(area: Area): PhotoColor | { refused: string };
	/** Mean CIEDE2000 of the patches, each left out in turn. */
	check: number;
	used: number;
	/** One sentence for each patch that does not count. */
	leftOut: readonly string[];
}

/** A channel at its end says nothing. From memory. */
const [DARK, BRIGHT] = [2, 253];
/** A patch that spreads more has an edge, a shadow or a highlight in it. No source. */
const MOST_SPREAD = 0.04;
const FEWEST = 6;
const LEAST_CONDITION = 0.03;
/** From so many patches on, the constant of an affine fit is known. */
const AFFINE_FROM = 8;
/** A patch off by so much, and by so many times as much as most, is not where the marks are: common practice, no source. */
const [MOVED, MOVED_TIMES] = [12, 4];
/** A card that is off by more on the whole is another card, or lies under other marks: common practice, no source. */
const NOT_THE_CARD = 8;
/** Of 12 patches or more, and of fewer: simulated over daylight, tungsten and white LED; twice as far in fluorescent light. */
const WITHIN = { many: 3, few: 4, manyFrom: 12 };

/**
 * What reads samples by the card, or why none can be read.
 *
 * Left out are patches that are clipped, uneven, or not where they are marked. The fit counts patches near the sample most.
 */
export function readPhoto(
	card: readonly CardPatch[],
): CardReading | { refused: string } {
	const leftOut: string[] = [];
	let patches = card.filter((patch) => {
		const why = unusable(patch);
		if (why) leftOut.push(`${patch.name} is ${why}`);
		return !why;
	});
	const refusal = (): string | undefined =>
		patches.length < FEWEST
			? `only ${patches.length} patches can be used, and it takes ${FEWEST}${leftOut.length > 0 ? ` (${leftOut.join("; ")})` : ""}`
			: conditionOf(linear(patches)) < LEAST_CONDITION
				? "the patches are grays, or nearly: use a card with red, yellow and brown"
				: undefined;
	const early = refusal();
	if (early) return { refused: early };
	const moved = movedPatch(patches);
	if (moved) {
		leftOut.push(`${moved.name} is not where it is marked, or not that color`);
		patches = patches.filter((patch) => patch !== moved);
	}
	const late = refusal();
	if (late) return { refused: late };
	const plane = lightPlane(patches);
	if (Math.hypot(plane.x, plane.y) * extentOf(patches) > MOST_FALL)
		return {
			refused:
				"the light falls off by more than a third over the card: photograph it in even light",
		};
	const flat = patches.map((patch) => patchOf(patch, plane));
	const curves = grayCurves(flat);
	const straightened = flat.map((patch) => straight(patch, curves));
	const fit = fitOf(straightened);
	const check = meanOf(leftOutPatches(straightened, fit));
	if (!(check <= NOT_THE_CARD))
		return {
			refused: `the patches do not fit the card's colors (${check.toFixed(0)} off): look whether the corners are on the card, the right way round`,
		};
	const reader = photoReader(straightened, fit);
	if (!reader)
		return {
			refused: "the patches do not tell colors apart: use another card",
		};
	const usual = patches.length >= WITHIN.manyFrom ? WITHIN.many : WITHIN.few;
	return {
		check,
		used: patches.length,
		leftOut,
		read(area) {
			const why = unusable(area);
			return why
				? { refused: `the sample is ${why}` }
				: {
						lab: reader(curved(lightOf(area, plane), curves)),
						within: Math.max(usual, check),
					};
		},
	};
}

function unusable({ rgb8, spread }: Area): string | undefined {
	if (rgb8.some((code) => code >= BRIGHT)) return "too bright";
	if (rgb8.some((code) => code <= DARK)) return "too dark";
	return spread > MOST_SPREAD ? "uneven" : undefined;
}

/** How ln light rises over the photo's width. */
interface Plane {
	x: number;
	y: number;
}

const EVEN: Plane = { x: 0, y: 0 };

const lightOf = ({ rgb8, at }: Area, plane: Plane): Triple => {
	const fall = at ? Math.exp(plane.x * at.x + plane.y * at.y) : 1;
	return rgb8.map((code) => linearOf(code) / fall) as unknown as Triple;
};

const curved = (light: Triple, curves?: readonly Curve[]): Triple =>
	light.map(
		(each, channel) => curves?.[channel]?.(each) ?? each,
	) as unknown as Triple;

const patchOf = (patch: CardPatch, plane: Plane): Patch => ({
	lab: patch.lab,
	rgb: lightOf(patch, plane),
});

const straight = (
	{ lab, rgb }: Patch,
	curves: readonly Curve[] | undefined,
): Patch => ({ lab, rgb: curved(rgb, curves) });

const linear = (patches: readonly CardPatch[]): Patch[] =>
	patches.map((patch) => patchOf(patch, EVEN));

/** From so many patches on, in places that are known, a fall of light can be told from their colors. */
const PLANE_FROM = 12;
/** The patches must fit so much better with it: common practice, no source. */
const WORTH_A_PLANE = 0.85;
/** Over the card, of ln light; corrected, 30% leave an error of 1.3 in simulated photos. */
const MOST_FALL = 0.4;

/**
 * The fall of light with which the patches fit best, all of them and their curve: a row of grays alone would take a
 * tone curve for it. Looked for by ever smaller steps.
 */
function lightPlane(patches: readonly CardPatch[]): Plane {
	if (patches.length < PLANE_FROM || patches.some(({ at }) => !at)) return EVEN;
	const misfit = (plane: Plane): number => {
		const flat = patches.map((patch) => patchOf(patch, plane));
		const curves = grayCurves(flat);
		return meanOf(
			leftOutPatches(
				flat.map((patch) => straight(patch, curves)),
				{ affine: false, weighed: true, close: false },
			),
		);
	};
	const even = misfit(EVEN);
	let best = { plane: EVEN, misfit: even };
	for (let step = 0.4; step > 0.005; step /= 2)
		for (let moved = true; moved; ) {
			moved = false;
			const { x, y } = best.plane;
			for (const plane of [
				{ x: x + step, y },
				{ x: x - step, y },
				{ x, y: y + step },
				{ x, y: y - step },
			]) {
				const own = misfit(plane);
				if (own < best.misfit - 1e-9) {
					best = { plane, misfit: own };
					moved = true;
				}
			}
		}
	return best.misfit < WORTH_A_PLANE * even ? best.plane : EVEN;
}

/** The longest way over the card, as a share of the photo's width. */
const extentOf = (patches: readonly CardPatch[]): number => {
	const along = (key: "x" | "y") => {
		const all = patches.map(({ at }) => at?.[key] ?? 0);
		return Math.max(...all) - Math.min(...all);
	};
	return Math.hypot(along("x"), along("y"));
};

const fitOf = (patches: readonly Patch[]): PhotoFit => ({
	affine: patches.length >= AFFINE_FROM,
	weighed: true,
	close: true,
});

const meanOf = (numbers: readonly number[]): number =>
	sum(numbers) / numbers.length;

/** The patch that the others disagree with by far; at most one: more are a card under other marks. */
function movedPatch(patches: readonly CardPatch[]): CardPatch | undefined {
	if (patches.length <= FEWEST) return undefined;
	const off = leftOutPatches(linear(patches), {
		affine: false,
		weighed: true,
		close: false,
	});
	const sorted = [...off].sort((a, b) => a - b);
	const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
	const worst = sorted[sorted.length - 1] ?? 0;
	return worst > Math.max(MOVED, MOVED_TIMES * middle)
		? patches[off.indexOf(worst)]
		: undefined;
}

/** The mean of readings of one sample in several photos: what each camera does to colors stays in it. */
export function meanReading(readings: readonly PhotoColor[]): PhotoColor {
	const of = (key: keyof Lab) => meanOf(readings.map(({ lab }) => lab[key]));
	return {
		lab: { l: of("l"), a: of("a"), b: of("b") },
		within: Math.min(...readings.map(({ within }) => within)),
	};
}

/** Two like samples side by side in one photo: what the photo does to both goes out of their difference. */
export const SIDE_BY_SIDE_WITHIN = 1.5;
/** Above this a difference in one photo is known no better than each color. */
const LIKE = 8;

export const comparedInPhoto = (
	one: PhotoColor,
	other: PhotoColor,
): { difference: number; within: number } => {
	const difference = colorDifference(one.lab, other.lab);
	return {
		difference,
		within:
			difference < LIKE
				? SIDE_BY_SIDE_WITHIN
				: Math.max(one.within, other.within),
	};
};
