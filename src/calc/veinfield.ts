/** The lie of folded tones over a piece: one smooth number a place, which runs through all tones and back in every band. */
import { uniform } from "./noise";

/** Width of a band before the first fold; what a studio lays side by side before folding: no source. */
const START_M = 0.4;

/** One turn of the folded mix, and how unevenly it stretches. */
interface Turn {
	cos: number;
	sin: number;
	/** Waves along the bands bend them; across them they make thick and thin. */
	bend: number;
	pinch: number;
	waves: number;
	ripple: number;
	ripples: number;
	phase: number;
	otherPhase: number;
	/** Where the fold's edge lies. */
	shift: number;
}

/** The first turn is free; later ones are slight, so that veins stay long. */
function turnOf(random: () => number, first: boolean): Turn {
	const angle = first ? 2 * Math.PI * random() : 0.8 * (random() - 0.5);
	const strength = 0.6 + 0.8 * random();
	return {
		cos: Math.cos(angle),
		sin: Math.sin(angle),
		bend: strength * (first ? 0.5 : 0.22),
		pinch: strength * 0.2,
		waves: 1.5 + 2 * random(),
		ripple: 0.08 * random(),
		ripples: 3 + 3 * random(),
		phase: 2 * Math.PI * random(),
		otherPhase: 2 * Math.PI * random(),
		shift: 4 * random(),
	};
}

/** From −1 to 1 and back, of period 4: a sheet folded over again and again. */
const folded = (across: number): number =>
	1 - Math.abs(((((across + 1) % 4) + 4) % 4) - 2);

/**
 * The number at a place of the piece: every fold stretches to double length, half width, and lays double, after a
 * seeded turn and an uneven pull; so each fold has twice as many bands, and the tones that meet are neighbors.
 *
 * @source Baker's map with its second half turned over; stretching and folding in Christov, Lueptow and Ottino,
 * arXiv:1010.2256. Turns, waves and their sizes were chosen by looking: no source.
 */
export function veinField(
	seed: number,
	folds: number,
): (xM: number, yM: number) => number {
	const random = uniform(seed);
	const turns = Array.from({ length: folds + 1 }, (_, i) =>
		turnOf(random, i === 0),
	);
	return (xM, yM) => {
		let across = xM / START_M;
		let along = yM / START_M;
		for (let i = 0; i <= folds; i++) {
			const turn = turns[i] as Turn;
			const turned = turn.cos * across + turn.sin * along;
			along = turn.cos * along - turn.sin * across;
			across =
				turned +
				turn.bend * Math.sin(turn.waves * along + turn.phase) +
				turn.ripple * Math.sin(turn.ripples * along + turn.otherPhase);
			along += turn.pinch * Math.sin(turn.waves * across + turn.otherPhase);
			// A turned band shows wider across by 1 / cos: the stretch makes up for it.
			const stretch = i > 0 ? 1 / turn.cos : 1;
			const last = i === folds;
			across = folded(
				(last ? 1 : 2) * stretch * across + (last && i > 0 ? 0 : turn.shift),
			);
			if (!last) along /= 2;
		}
		return Math.sin((across * Math.PI) / 2) + 0.4 * Math.sin(1.7 * along);
	};
}
