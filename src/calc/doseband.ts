/** How far off a dose read from a color may be, by draws of what the readings may be off by. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import { normal } from "./noise";
import { type Fit, fitted, fittedColor, type Swatch } from "./swatches";

/** Standard uncertainty of a color measured on a few spots, in L*, a* and b*: assumed, no source; the help names it. */
const READING: Lab = { l: 0.4, a: 0.28, b: 0.28 };
const DRAWS = 200;
/** Doses looked at for one draw; a power of two. */
export const STEPS = 64;

/** A color as it may have been read, the mean of so many readings. */
export const misread = (
	{ l, a, b }: Lab,
	count: number,
	next: () => number,
): Lab => ({
	l: l + (READING.l * next()) / Math.sqrt(count),
	a: a + (READING.a * next()) / Math.sqrt(count),
	b: b + (READING.b * next()) / Math.sqrt(count),
});

interface Draw {
	/** Color of a step between the weakest dose and the strongest. */
	colorOf(step: number): Lab;
	/** What the color asked for is off by. */
	target: Lab;
}

/** What the swatches may really be, and the fits that follow. */
export function drawn(swatches: readonly Swatch[]): Draw[] {
	const next = normal(1);
	const moved = (lab: Lab, count: number) => misread(lab, count, next);
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
export function spread(draws: readonly Draw[], color: Lab): [number, number] {
	const found = draws
		.map(({ colorOf, target }) =>
			nearestStep(colorOf, {
				l: color.l + target.l,
				a: color.a + target.a,
				b: color.b + target.b,
			}),
		)
		.sort((a, b) => a - b);
	// One standard deviation of a normal distribution leaves 15.87% on each side.
	const at = (share: number) =>
		(found[Math.round(share * (found.length - 1))] ?? 0) / STEPS;
	return [at(0.1587), at(0.8413)];
}

/** Square of the plain distance: a quick guess at which of some colors is nearest. */
const distance2 = (one: Lab, other: Lab): number =>
	(one.l - other.l) ** 2 + (one.a - other.a) ** 2 + (one.b - other.b) ** 2;

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
	let least = Number.POSITIVE_INFINITY;
	for (let step = 0; step <= STEPS; step += 8) {
		const distance = distance2(colorOf(step), color);
		if (distance < least) [least, best] = [distance, step];
	}
	for (let stride = 4; stride >= 1; stride /= 2)
		for (const step of [best - stride, best + stride])
			if (off(step) < off(best)) best = step;
	if (best === 0 || best === STEPS) return best;
	const [before, here, after] = [off(best - 1), off(best), off(best + 1)];
	const bend = before - 2 * here + after;
	return bend > 0 ? best + (before - after) / (2 * bend) : best;
}
