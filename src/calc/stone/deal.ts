/** Tones dealt to pixels by rank, so that each has its share to the pixel. */
import { InputError } from "../errors";
import { sum } from "../sum";

/** Stands for pixels that are not of the piece. */
export const OUTSIDE = 255;

export interface Dealt {
	/** The tone of each pixel, or `OUTSIDE`. */
	tones: Uint8Array;
	/** The least value of its field at which each tone but the first is seen. */
	least: number[];
}

/**
 * From the last tone to the second, each takes the pixels where its field is highest among those left; the first has
 * the rest. The order is by row, so that a share that passes another changes few pixels.
 *
 * @throws InputError when no share is above 0.
 */
export function deal(
	faces: Uint8Array,
	fields: readonly Float32Array[],
	shares: readonly number[],
): Dealt {
	const total = sum(shares);
	if (!(total > 0))
		throw new InputError("share must be above 0 for at least one tone");
	const tones = faces.map((face) => (face === 0 ? OUTSIDE : 0));
	const seen = tones.reduce((count, tone) => count + (tone === 0 ? 1 : 0), 0);
	const least = fields.map(() => 0);
	let left = seen;
	let share = total;
	for (let tone = shares.length - 1; tone > 0; tone--) {
		share -= shares[tone] as number;
		const kept = Math.min(
			left,
			Math.round((seen * Math.max(0, share)) / total),
		);
		least[tone - 1] = take(
			tones,
			fields[tone - 1] as Float32Array,
			tone,
			left,
			kept,
		);
		left = kept;
	}
	return { tones, least };
}

/** Gives a tone all of the pixels left but the lowest `kept`; among equals, the first. */
function take(
	tones: Uint8Array,
	field: Float32Array,
	tone: number,
	left: number,
	kept: number,
): number {
	if (kept === left) return Number.POSITIVE_INFINITY;
	const ranked = new Float32Array(left);
	for (let i = 0, next = 0; i < tones.length; i++)
		if (tones[i] === 0) ranked[next++] = field[i] as number;
	ranked.sort();
	const least = ranked[kept] as number;
	let equals = 0;
	for (let i = kept; i < left && ranked[i] === least; i++) equals++;
	for (let i = 0; i < tones.length; i++) {
		if (tones[i] !== 0) continue;
		const value = field[i] as number;
		if (value > least || (value === least && equals-- > 0)) tones[i] = tone;
	}
	return least;
}
