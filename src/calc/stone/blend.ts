/** How much of each tone a pixel shows: crisp and smoky edges, and veins finer than a pixel. */
import { OUTSIDE } from "./deal";
import { type Folded, stream } from "./fold";
import { type Stretch, stretchAt } from "./stretch";
import { waveAt, waves } from "./waves";

/** Half-widths of edges in units of the fields: crisp, and what smoke adds where it is dense. Chosen by looking. */
const CRISP = 0.015;
const SMOKE = 0.04;
const SMOKE_M = 0.5;
const SMOKE_REPEAT_M = 6;

/** Farther from all edges than this many slopes, a pixel has one tone. */
const REACH = 2.4;
/** A pixel that reaches across more units of the fields fades to what is expected there. */
const FINE = 2.2;
/** The logistic curve of this slope is close to the normal distribution's. */
const LOGISTIC = 1.7;

/** The share of each tone in each pixel, a tone after the other. */
export function blend(folded: Folded): Float32Array[] {
	const { tones, fields, widthPx, pixelM } = folded;
	const shares = [tones, ...fields].map(() => new Float32Array(tones.length));
	const slopePerM = Math.max(0, ...fields.map(({ lying }) => lying.slopePerM));
	const smoke = waves(stream(folded.seed, 3), SMOKE_REPEAT_M, {
		startM: SMOKE_M,
	});
	const pixel = new Float64Array(shares.length);
	const sample = sampler(folded, pixel);
	const stretch: Stretch = { perPixelM: 0, right: 0, down: 0 };
	for (let i = 0; i < tones.length; i++) {
		const tone = tones[i] as number;
		if (tone === OUTSIDE) continue;
		stretchAt(folded, i, stretch);
		const units = stretch.perPixelM * slopePerM;
		const column = i % widthPx;
		const row = (i - column) / widthPx;
		const smoky = Math.max(0, waveAt(smoke, column * pixelM, row * pixelM));
		const soft = CRISP + SMOKE * smoky * smoky;
		if (isPlain(folded, i, REACH * units + soft)) {
			(shares[tone] as Float32Array)[i] = 1;
			continue;
		}
		sample(i, stretch, soft, units > 0.7 ? 7 : units > 0.25 ? 5 : 3);
		if (units > FINE) fade(folded, i, pixel, Math.min(1, units / FINE - 1));
		for (let each = 0; each < shares.length; each++)
			(shares[each] as Float32Array)[i] = pixel[each] as number;
	}
	level(shares, tones);
	return shares;
}

/** Moves edges by little, so that each tone has its share of all pixels also where they are blended. */
function level(shares: readonly Float32Array[], tones: Uint8Array): void {
	const wanted = shares.map(() => 0);
	for (const tone of tones)
		if (tone !== OUTSIDE) wanted[tone] = (wanted[tone] as number) + 1;
	for (let round = 0; round < 3; round++) {
		const gains = shares.map((share, tone) => {
			let seen = 0;
			let moves = 0;
			for (const part of share) {
				seen += part;
				moves += part * (1 - part);
			}
			return moves > 0 ? Math.exp(((wanted[tone] ?? 0) - seen) / moves) : 1;
		});
		for (let i = 0; i < tones.length; i++) {
			let whole = 0;
			for (let tone = 0; tone < shares.length; tone++)
				whole += (shares[tone]?.[i] as number) * (gains[tone] as number);
			if (whole > 0)
				for (let tone = 0; tone < shares.length; tone++)
					(shares[tone] as Float32Array)[i] =
						((shares[tone] as Float32Array)[i] as number) *
						((gains[tone] as number) / whole);
		}
	}
}

function isPlain({ fields, least }: Folded, i: number, reach: number): boolean {
	for (let row = 0; row < fields.length; row++) {
		const value = fields[row]?.all[i] as number;
		if (Math.abs(value - (least[row] as number)) < reach) return false;
	}
	return true;
}

/** Moves a pixel's shares toward those expected by where the mix was poured. */
function fade(
	{ fields, least }: Folded,
	i: number,
	pixel: Float64Array,
	by: number,
): void {
	let left = 1;
	for (let row = fields.length - 1; row >= 0; row--) {
		const above = (fields[row]?.poured[i] as number) - (least[row] as number);
		const share = left / (1 + Math.exp(-LOGISTIC * above));
		left -= share;
		pixel[row + 1] = (1 - by) * (pixel[row + 1] as number) + by * share;
	}
	pixel[0] = (1 - by) * (pixel[0] as number) + by * left;
}

const MOST = 7;
/** Half of an edge's width between samples: a half would be exact, more draws fine veins without beads. */
const STEEP = 0.9;

/**
 * Reads the fields at some places along the direction of most stretch, weighted as a tent a pixel wide either way. The
 * places lie between those that were traced: fields change too fast for that, places do not.
 */
function sampler(
	{ fields, least, places, widthPx }: Folded,
	pixel: Float64Array,
) {
	const { x, y } = places;
	const last = x.length - 1;
	const values = fields.map(() => new Float64Array(MOST));
	return (i: number, { right, down }: Stretch, soft: number, count: number) => {
		const column = i % widthPx;
		const half = (count - 1) / 2;
		const spacing = 1 / (half + 1);
		for (let n = 0; n < count; n++) {
			const du = (n - half) * spacing * right;
			const dv = (n - half) * spacing * down;
			const sideways =
				du < 0 ? (column > 0 ? -1 : 0) : column < widthPx - 1 ? 1 : 0;
			const beside = i + sideways;
			let below = dv < 0 ? i - widthPx : i + widthPx;
			if (below < 0 || below > last) below = i;
			const across = below + sideways;
			const u = Math.abs(du);
			const v = Math.abs(dv);
			const here = (1 - u) * (1 - v);
			const there = u * (1 - v);
			const under = (1 - u) * v;
			const over = u * v;
			const xM =
				here * (x[i] as number) +
				there * (x[beside] as number) +
				under * (x[below] as number) +
				over * (x[across] as number);
			const yM =
				here * (y[i] as number) +
				there * (y[beside] as number) +
				under * (y[below] as number) +
				over * (y[across] as number);
			for (let row = 0; row < fields.length; row++) {
				const { lying, poured } = fields[row] as (typeof fields)[number];
				(values[row] as Float64Array)[n] =
					waveAt(lying, xM, yM) +
					here * (poured[i] as number) +
					there * (poured[beside] as number) +
					under * (poured[below] as number) +
					over * (poured[across] as number) -
					(least[row] as number);
			}
		}
		addUp(values, pixel, soft, count);
	};
}

/** From how far the fields are above what each tone needs, at each sample, to shares of the pixel. */
function addUp(
	above: readonly Float64Array[],
	pixel: Float64Array,
	soft: number,
	count: number,
): void {
	const half = (count - 1) / 2;
	pixel.fill(0);
	for (let n = 0; n < count; n++) {
		const weight = 1 - Math.abs(n - half) / (half + 1);
		let left = weight / (half + 1);
		for (let row = above.length - 1; row >= 0; row--) {
			const line = above[row] as Float64Array;
			const before = line[Math.max(0, n - 1)] as number;
			const after = line[Math.min(count - 1, n + 1)] as number;
			const steep = Math.abs(after - before) / (n > 0 && n < count - 1 ? 2 : 1);
			const reach = 2 * (STEEP * steep + soft);
			const seen = 0.5 + (line[n] as number) / reach;
			const share = left * (seen < 0 ? 0 : Math.min(seen, 1));
			pixel[row + 1] = (pixel[row + 1] as number) + share;
			left -= share;
		}
		pixel[0] = (pixel[0] as number) + left;
	}
}
