/** The doses of some pigments that come nearest to a color. */
import { type Bounds, boundedLeast } from "./bounded";
import { colorDifference, differenceParts } from "./ciede2000";
import type { Lab } from "./color";
import { highestTotal } from "./headroom";
import { absorptions, reflectanceOf } from "./kubelka";
import { type Palette, type PalettePigment, paletteColor } from "./palette";
import { sum } from "./sum";

/** Pigments of a palette, each as a share of its strongest swatch, and how near they come. */
export interface Found {
	pigments: readonly PalettePigment[];
	shares: readonly number[];
	difference: number;
}

/** What a search is held to. */
export interface Limits {
	/** By column, of cement; undefined where the maker states none. */
	maxima: readonly (number | undefined)[];
	cementShare: number;
	/** A dose below this cannot be weighed and counts as none. */
	leastDose: number;
}

/** Steps on the way to the strongest swatch that are tried, by how many pigments there are. */
const GRID = [1, 16, 8, 4];
const MOST_STEPS = 15;
/** A step that gains less is the last. */
const GAIN = 1e-4;

export function boundsOf(
	pigments: readonly PalettePigment[],
	{ maxima, cementShare }: Limits,
): Bounds {
	const limit =
		cementShare * highestTotal(pigments.map(({ column }) => maxima[column]));
	return {
		low: pigments.map(() => 0),
		high: pigments.map(({ strongest }) => Math.min(1, limit / strongest)),
		weights: pigments.map(({ strongest }) => strongest),
		limit,
	};
}

/**
 * Where the search for a color begins: the linear solution, and the best of a grid; the nearer first.
 *
 * The linear one alone stays where the difference in hue jumps.
 */
export function startsOf(
	palette: Palette,
	pigments: readonly PalettePigment[],
	wanted: Lab,
	bounds: Bounds,
): Found[] {
	const found = (shares: readonly number[]): Found => ({
		pigments,
		shares,
		difference: colorDifference(
			paletteColor(palette, pigments, shares),
			wanted,
		),
	});
	const linear = found(linearShares(palette, pigments, wanted, bounds));
	let best = linear;
	const place = pigments.map(() => 0);
	const steps = GRID[pigments.length] ?? 4;
	const tried = (column: number): void => {
		if (column === pigments.length) {
			const shares = place.map(
				(k, i) => (k / steps) ** 2 * (bounds.high[i] ?? 0),
			);
			const total = sum(shares.map((u, i) => u * (bounds.weights[i] ?? 0)));
			if (total > bounds.limit) return;
			const own = found(shares);
			if (own.difference < best.difference) best = own;
			return;
		}
		for (let k = 0; k <= steps; k += 1) {
			place[column] = k;
			tried(column + 1);
		}
	};
	tried(0);
	return best === linear ? [linear] : [best, linear];
}

/**
 * Shares that give the wanted absorption in each channel: Σᵢ (κᵢⱼ − qⱼσᵢⱼ) uᵢ = qⱼ − q₀ⱼ, which is linear.
 *
 * Each channel counts as it is seen, by the slope of L* against its absorption.
 */
export function linearShares(
	{ base }: Pick<Palette, "base">,
	pigments: readonly Pick<PalettePigment, "strengths">[],
	wanted: Lab,
	bounds: Bounds,
): number[] {
	const aims = absorptions(wanted);
	const weights = aims.map((q) => {
		const r = reflectanceOf(q);
		return ((116 / 3) * r ** (-2 / 3) * 2 * r * r) / (1 - r * r);
	});
	const rows = aims.map((q, j) =>
		pigments.map(
			({ strengths }) =>
				(weights[j] ?? 0) *
				((strengths[j]?.kappa ?? 0) - q * (strengths[j]?.sigma ?? 0)),
		),
	);
	return boundedLeast(
		rows,
		aims.map((q, j) => (weights[j] ?? 0) * (q - (base[j] ?? 0))),
		bounds,
	);
}

/** The nearest place downhill from a start: damped Gauss–Newton within the bounds. */
export function refined(
	palette: Palette,
	{ pigments, shares }: Found,
	wanted: Lab,
	bounds: Bounds,
): Found {
	const parts = (u: readonly number[]) =>
		differenceParts(wanted, paletteColor(palette, pigments, u));
	let at = { shares, parts: parts(shares), difference: 0 };
	at.difference = Math.hypot(...at.parts);
	let damping = 1e-3;
	for (let step = 0; step < MOST_STEPS; step += 1) {
		const slopes = slopesAt(parts, at);
		const size = sum(slopes.flat().map((each) => each * each)) || 1;
		const move = boundedLeast(
			slopes,
			at.parts.map((each) => -each),
			around(bounds, at.shares),
			damping * size,
		);
		const moved = at.shares.map((u, i) => u + (move[i] ?? 0));
		const there = parts(moved);
		const difference = Math.hypot(...there);
		if (difference < at.difference) {
			const gain = at.difference - difference;
			at = { shares: moved, parts: there, difference };
			damping /= 8;
			if (gain < GAIN) break;
		} else damping *= 8;
	}
	return { pigments, shares: at.shares, difference: at.difference };
}

const STRIDE = 1e-6;

/** How each part of the difference changes with each share. */
function slopesAt(
	parts: (u: readonly number[]) => readonly number[],
	at: { shares: readonly number[]; parts: readonly number[] },
): number[][] {
	const columns = at.shares.map((_, i) =>
		parts(at.shares.map((u, k) => (k === i ? u + STRIDE : u))),
	);
	return at.parts.map((own, j) =>
		columns.map((column) => ((column[j] ?? 0) - own) / STRIDE),
	);
}

/** The bounds of a step away from some shares. */
const around = (
	{ low, high, weights, limit }: Bounds,
	shares: readonly number[],
): Bounds => ({
	low: low.map((each, i) => each - (shares[i] ?? 0)),
	high: high.map((each, i) => each - (shares[i] ?? 0)),
	weights,
	limit: limit - sum(shares.map((u, i) => u * (weights[i] ?? 0))),
});
