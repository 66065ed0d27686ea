/** The dose that gives a color, and how well it is known. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import { drawn, STEPS, spread } from "./doseband";
import { InputError, percent } from "./errors";
import { type Fit, fitted, fittedColor, type Swatch } from "./swatches";

/** Half of people do not accept a larger difference (Paravina et al. 2015; basis of ISO/TR 28642). */
const ACCEPTED = 1.8;
/** Half of people do not see a smaller one (the same). */
const SEEN = 0.8;

export interface DoseForColor {
	dose: number;
	/** CIEDE2000 between the color wanted and what the dose gives. */
	leftover: number;
	/** One standard uncertainty below and above. */
	low: number;
	high: number;
}

/**
 * What finds doses of one pigment from its swatches, weakest first, of at least two doses.
 *
 * The dose of least CIEDE2000; its band from 200 draws of what the readings may be off by (fixed seed). With two doses
 * saturation is unknown: the band then also spans σ from 0 to 4.
 *
 * @throws InputError when the swatches look alike, or when a color is stronger than the strongest.
 */
export function doseFinder(
	swatches: readonly Swatch[],
): (color: Lab) => DoseForColor {
	const fit = fitted(swatches);
	const seen = colorDifference(fittedColor(fit, 0), fittedColor(fit, 1));
	if (seen < SEEN)
		throw new InputError(
			`doses: the weakest and the strongest swatch look alike (CIEDE2000 ${seen.toFixed(1)}), so that no dose can be told from a color`,
		);
	const bandOf = bands(swatches);
	const doseAt = (u: number) => fit.weakest + u * (fit.strongest - fit.weakest);
	return (color) => {
		const { u, leftover } = nearestU(fit, color);
		if (u > 1 - 1e-6 && leftover > ACCEPTED)
			throw new InputError(
				`color is stronger than the strongest swatch, ${percent(fit.strongest)} (left over: CIEDE2000 ${leftover.toFixed(1)}): make a stronger one`,
			);
		const [low, high] = bandOf(color, u);
		return { dose: doseAt(u), leftover, low: doseAt(low), high: doseAt(high) };
	};
}

/** What tells how far around a share of the range the dose may be, inside the range. */
function bands(
	swatches: readonly Swatch[],
): (color: Lab, u: number) => [low: number, high: number] {
	const draws = drawn(swatches);
	const guesses =
		swatches.length === 2 ? [0, 4].map((guess) => fitted(swatches, guess)) : [];
	return (color, u) => {
		const [below, above] = spread(draws, color);
		const others = guesses.map((guess) => nearestU(guess, color).u);
		const low = Math.min(u, ...others) - Math.max(0, u - below);
		const high = Math.max(u, ...others) + Math.max(0, above - u);
		return [Math.max(0, low), Math.min(1, high)];
	};
}

/** Where the fit comes nearest to a color, as a share of its range: a grid, then golden section around its best. */
export function nearestU(
	fit: Fit,
	color: Lab,
): { u: number; leftover: number } {
	const off = (u: number) => colorDifference(fittedColor(fit, u), color);
	const grid = Array.from({ length: STEPS + 1 }, (_, i) => off(i / STEPS));
	const best = grid.indexOf(Math.min(...grid));
	const golden = (Math.sqrt(5) - 1) / 2;
	let low = Math.max(0, best - 1) / STEPS;
	let high = Math.min(STEPS, best + 1) / STEPS;
	while (high - low > 1e-9) {
		const left = high - golden * (high - low);
		const right = low + golden * (high - low);
		if (off(left) <= off(right)) high = right;
		else low = left;
	}
	const ends = [low, high].filter((u) => u === 0 || u === 1);
	const u = [(low + high) / 2, ...ends].reduce((a, b) =>
		off(b) <= off(a) ? b : a,
	);
	return { u, leftover: off(u) };
}
