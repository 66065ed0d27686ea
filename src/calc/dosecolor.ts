/** The dose that gives a color, and how well it is known. */
import { colorDifference, type Lab } from "./color";
import { InputError } from "./errors";
import { normal } from "./noise";
import { type Fit, fitted, fittedColor, type Swatch } from "./swatches";

/** Half of people do not accept a larger difference (Paravina et al. 2015; basis of ISO/TR 28642). */
const ACCEPTED = 1.8;
/** Half of people do not see a smaller one (the same). */
const SEEN = 0.8;
/** Standard uncertainty of a color measured on a few spots, in L*, a* and b*. */
const READING: Lab = { l: 0.4, a: 0.28, b: 0.28 };
const DRAWS = 200;
/** Doses looked at for one draw; a power of two. */
const STEPS = 64;

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
	const guesses =
		swatches.length === 2 ? [0, 4].map((guess) => fitted(swatches, guess)) : [];
	const draws = drawn(swatches);
	const doseAt = (u: number) => fit.weakest + u * (fit.strongest - fit.weakest);
	return (color) => {
		const { u, leftover } = nearestU(fit, color);
		if (u > 1 - 1e-6 && leftover > ACCEPTED)
			throw new InputError(
				`color is stronger than the strongest swatch, ${percent(fit.strongest)} (left over: CIEDE2000 ${leftover.toFixed(1)}): make a stronger one`,
			);
		const [below, above] = spread(draws, color);
		const others = guesses.map((guess) => nearestU(guess, color).u);
		const low = Math.min(u, ...others) - Math.max(0, u - below);
		const high = Math.max(u, ...others) + Math.max(0, above - u);
		return {
			dose: doseAt(u),
			leftover,
			low: doseAt(Math.max(0, low)),
			high: doseAt(Math.min(1, high)),
		};
	};
}

const percent = (dose: number): string =>
	`${Number((dose * 100).toPrecision(6))}%`;

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

interface Draw {
	/** Color of a step between the weakest dose and the strongest. */
	colorOf(step: number): Lab;
	/** What the color asked for is off by. */
	target: Lab;
}

/** What the swatches may really be, and the fits that follow. */
function drawn(swatches: readonly Swatch[]): Draw[] {
	const next = normal(1);
	const moved = ({ l, a, b }: Lab, count: number): Lab => ({
		l: l + (READING.l * next()) / Math.sqrt(count),
		a: a + (READING.a * next()) / Math.sqrt(count),
		b: b + (READING.b * next()) / Math.sqrt(count),
	});
	return Array.from({ length: DRAWS }, () => {
		const fit = fitted(
			swatches.map((swatch) => ({
				...swatch,
				lab: moved(swatch.lab, swatch.count),
			})),
		);
		return {
			colorOf: ladder(fit),
			target: moved({ l: 0, a: 0, b: 0 }, 1),
		};
	});
}

/** Colors of the steps, each worked out once. */
function ladder(fit: Fit): (step: number) => Lab {
	const known: Lab[] = [];
	return (step) => {
		const lab = known[step] ?? fittedColor(fit, step / STEPS);
		known[step] = lab;
		return lab;
	};
}

/** The middle 68% of the draws, as the share of the range that each comes nearest at. */
function spread(draws: readonly Draw[], color: Lab): [number, number] {
	const found = draws
		.map(({ colorOf, target }) =>
			nearestStep(colorOf, {
				l: color.l + target.l,
				a: color.a + target.a,
				b: color.b + target.b,
			}),
		)
		.sort((a, b) => a - b);
	const at = (share: number) =>
		(found[Math.round(share * (found.length - 1))] ?? 0) / STEPS;
	return [at(0.1587), at(0.8413)];
}

/** The step of least difference, by ever smaller strides, and a parabola through its neighbors. */
function nearestStep(colorOf: (step: number) => Lab, color: Lab): number {
	const known: number[] = [];
	const off = (step: number): number => {
		if (step < 0 || step > STEPS) return Number.POSITIVE_INFINITY;
		const found = known[step] ?? colorDifference(colorOf(step), color) ** 2;
		known[step] = found;
		return found;
	};
	let best = 0;
	for (let step = 0; step <= STEPS; step += 8)
		if (off(step) < off(best)) best = step;
	for (let stride = 4; stride >= 1; stride /= 2)
		for (const step of [best - stride, best + stride])
			if (off(step) < off(best)) best = step;
	if (best === 0 || best === STEPS) return best;
	const [before, here, after] = [off(best - 1), off(best), off(best + 1)];
	const bend = before - 2 * here + after;
	return bend > 0 ? best + (before - after) / (2 * bend) : best;
}
