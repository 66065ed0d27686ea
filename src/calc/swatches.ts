/** How strong a pigment is, from a studio's own swatches. */
import type { Channels, Lab } from "./color";
import {
	absorptions,
	mixedColor,
	reflectanceOf,
	type Strength,
} from "./kubelka";
import { sum } from "./sum";

/** One dose of one pigment, its color the mean of its swatches. */
export interface Swatch {
	dose: number;
	lab: Lab;
	/** How many swatches it is the mean of. */
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
	const readings = swatches.slice(1).map(({ dose, lab }) => ({
		u: (dose - weakest.dose) / range,
		absorptions: absorptions(lab),
	}));
	const channels = base.map((q0, j) => ({
		q0,
		points: readings.map(({ u, absorptions }) =>
			pointOf(u, absorptions[j] ?? 0),
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

function pointOf(u: number, q: number): Point {
	const r = reflectanceOf(q);
	const w = ((116 / NOISE) * r ** (-2 / 3) * 2 * r * r) / (3 * (1 - r * r));
	return { u, q, w2: w * w };
}

/** Passes through the one swatch; more σ where pigment of no absorption alone is lighter than the guess allows. */
function guessed({ q0, points }: Channel, guess: number): Strength {
	const q = points[0]?.q ?? q0;
	const sigma = Math.max(guess, q0 / q - 1);
	return { sigma, kappa: Math.max(0, q * (1 + sigma) - q0) };
}

/** The best κ for a σ, and how far the channel then is from its readings. */
function withSigma(
	{ q0, points }: Channel,
	sigma: number,
): Strength & { miss: number } {
	let top = 0;
	let bottom = 0;
	for (const { u, q, w2 } of points) {
		const x = u / (1 + sigma * u);
		top += w2 * x * (q - q0 / (1 + sigma * u));
		bottom += w2 * x * x;
	}
	const kappa = top > 0 ? top / bottom : 0;
	let miss = 0;
	for (const { u, q, w2 } of points)
		miss += w2 * ((q0 + kappa * u) / (1 + sigma * u) - q) ** 2;
	return { kappa, sigma, miss };
}

/**
 * The strengths that miss the readings least, with ln σ of the three channels drawn to a common value.
 *
 * Without the tie, a channel that hardly changes leaves its σ free and the dose read from a color unusable. Both σ and
 * the common value are looked for on one grid, so that the answer is the same everywhere.
 */
function tied(channels: readonly Channel[]): Strength[] {
	const scans = channels.map((channel) =>
		SIGMAS.map((sigma) => withSigma(channel, sigma)),
	);
	const misses = scans.map((scan) => scan.map(({ miss }) => miss));
	let best = { miss: Number.POSITIVE_INFINITY, places: [] as number[] };
	for (const ties of TIES) {
		const nearest = misses.map((each) => least(each, ties));
		const miss = sum(nearest.map((each) => each.miss));
		if (miss < best.miss)
			best = { miss, places: nearest.map(({ place }) => place) };
	}
	return best.places.map((place, j) => {
		const { kappa = 0, sigma = 0 } = scans[j]?.[place] ?? {};
		return { kappa, sigma };
	});
}

/** The place on the grid that misses least, its tie counted. */
function least(
	misses: readonly number[],
	ties: readonly number[],
): { miss: number; place: number } {
	let best = { miss: Number.POSITIVE_INFINITY, place: 0 };
	for (let place = 0; place < misses.length; place += 1) {
		const miss = (misses[place] as number) + (ties[place] as number);
		if (miss < best.miss) best = { miss, place };
	}
	return best;
}
