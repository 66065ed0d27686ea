/** How strong a pigment is, from a studio's own swatches. */
import type { Channels, Lab } from "./color";
import {
	absorptions,
	mixedColor,
	reflectanceOf,
	type Strength,
} from "./kubelka";

/** One dose of one pigment, its color the mean of its swatches. */
export interface Swatch {
	dose: number;
	lab: Lab;
	/** How many readings of a meter it is the mean of; below 1 for one from a photo. */
	count: number;
}

export interface Fit {
	weakest: number;
	strongest: number;
	/** K/S of the weakest swatch, a channel each. */
	base: Channels;
	/** A channel each. */
	strengths: readonly Strength[];
}

export const shareOfRange = (
	{ weakest, strongest }: Fit,
	dose: number,
): number => (dose - weakest) / (strongest - weakest);

export const fittedColor = (fit: Fit, u: number): Lab =>
	mixedColor(fit.base, [{ strengths: fit.strengths, u }]);

/** Two doses do not show saturation: the guess between none and σ = 4. */
export const GUESSED_SIGMA = 2;

/**
 * The fit through swatches of at least two doses, weakest first; exact at the weakest.
 *
 * With two doses σ is a guess, which can be given.
 */
export function fitted(
	swatches: readonly Swatch[],
	guess = GUESSED_SIGMA,
): Fit {
	const weakest = swatches[0] as Swatch;
	const strongest = swatches[swatches.length - 1] as Swatch;
	const base = absorptions(weakest.lab);
	const range = strongest.dose - weakest.dose;
	const readings = swatches.slice(1).map(({ dose, lab, count }) => ({
		u: (dose - weakest.dose) / range,
		count,
		absorptions: absorptions(lab),
	}));
	const channels = base.map((q0, j) => ({
		q0,
		points: readings.map(({ u, count, absorptions }) =>
			pointOf(u, absorptions[j] ?? 0, count),
		),
	}));
	return {
		weakest: weakest.dose,
		strongest: strongest.dose,
		base,
		strengths:
			readings.length === 1
				? channels.map((channel) => guessed(channel, guess))
				: tied(channels),
	};
}

interface Point {
	u: number;
	q: number;
	/** Weight²: q is compared as lightness is seen, in units of the reading's noise. */
	w2: number;
}

interface Channel {
	q0: number;
	points: readonly Point[];
}

/** Of a reading, in L*: no source. */
const NOISE = 0.5;
/** How strongly the channels' saturation is tied together: tried on the ladders of tests/calc, no source. */
const TIE = 0.3;
const LN_SIGMAS = Array.from(
	{ length: 60 },
	(_, step) => Math.log(0.02) + (step / 59) * Math.log(50 / 0.02),
);
const SIGMAS = LN_SIGMAS.map(Math.exp);
/** What it costs that a channel has one σ of the grid and the common value is another. */
const TIES = LN_SIGMAS.map((common) =>
	LN_SIGMAS.map((ln) => TIE * (ln - common) ** 2),
);

function pointOf(u: number, q: number, count: number): Point {
	const r = reflectanceOf(q);
	const w = ((116 / NOISE) * r ** (-2 / 3) * 2 * r * r) / (3 * (1 - r * r));
	return { u, q, w2: w * w * Math.min(1, count) };
}

/** Passes through the one swatch; more σ where pigment of no absorption alone is lighter than the guess allows. */
function guessed({ q0, points }: Channel, guess: number): Strength {
	const q = points[0]?.q ?? q0;
	const sigma = Math.max(guess, q0 / q - 1);
	return { sigma, kappa: Math.max(0, q * (1 + sigma) - q0) };
}

/** The best κ for a σ. */
function kappaOf({ q0, points }: Channel, sigma: number): number {
	let top = 0;
	let bottom = 0;
	for (const { u, q, w2 } of points) {
		const x = u / (1 + sigma * u);
		top += w2 * x * (q - q0 / (1 + sigma * u));
		bottom += w2 * x * x;
	}
	return top > 0 ? top / bottom : 0;
}

/** How far the channel is from its readings at best, for a σ. */
function missOf(channel: Channel, sigma: number): number {
	const kappa = kappaOf(channel, sigma);
	let miss = 0;
	for (const { u, q, w2 } of channel.points)
		miss += w2 * ((channel.q0 + kappa * u) / (1 + sigma * u) - q) ** 2;
	return miss;
}

/**
 * The strengths that miss the readings least, with ln σ of the three channels drawn to a common value.
 *
 * Without the tie, a channel that hardly changes leaves its σ free and the dose read from a color unusable. Both σ and
 * the common value are looked for on one grid, so that the answer is the same everywhere.
 */
function tied(channels: readonly Channel[]): Strength[] {
	const misses = channels.map((channel) =>
		SIGMAS.map((sigma) => missOf(channel, sigma)),
	);
	let least = Number.POSITIVE_INFINITY;
	let best: readonly number[] = [];
	for (const ties of TIES) {
		let miss = 0;
		for (const each of misses) {
			const place = leastPlace(each, ties);
			miss += (each[place] as number) + (ties[place] as number);
		}
		if (miss < least) [least, best] = [miss, ties];
	}
	return channels.map((channel, j) => {
		const sigma = SIGMAS[leastPlace(misses[j] ?? [], best)] ?? 0;
		return { kappa: kappaOf(channel, sigma), sigma };
	});
}

/** The place on the grid that misses least, its tie counted. */
function leastPlace(
	misses: readonly number[],
	ties: readonly number[],
): number {
	let best = Number.POSITIVE_INFINITY;
	let place = 0;
	for (let i = 0; i < misses.length; i += 1) {
		const miss = (misses[i] as number) + (ties[i] as number);
		if (miss < best) [best, place] = [miss, i];
	}
	return place;
}
