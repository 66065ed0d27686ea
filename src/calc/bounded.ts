/** Least squares for a few unknowns that have bounds of their own and one for their weighed sum. */
import { sum } from "./sum";

export interface Bounds {
	/** Each unknown is from `low` to `high`. */
	low: readonly number[];
	high: readonly number[];
	/** Σ weight × unknown is at most `limit`. */
	weights: readonly number[];
	limit: number;
}

/**
 * The unknowns within the bounds of least Σ (row · unknowns − wanted)², each step away from 0 damped a little.
 *
 * Solved freely; only where that leaves the bounds, on every face of them: no more than 54 for three unknowns.
 */
export function boundedLeast(
	rows: readonly (readonly number[])[],
	wanted: readonly number[],
	bounds: Bounds,
	damping = 0,
): number[] {
	const unknowns = bounds.low.map((_, i) => i);
	const normal = unknowns.map((i) =>
		unknowns.map(
			(k) =>
				sum(rows.map((row) => (row[i] ?? 0) * (row[k] ?? 0))) +
				(i === k ? damping + TINY : 0),
		),
	);
	const right = unknowns.map((i) =>
		sum(rows.map((row, j) => (row[i] ?? 0) * (wanted[j] ?? 0))),
	);
	const free = solved(normal, right);
	if (free && isWithin(free, bounds)) return free;
	const cost = (x: readonly number[]) =>
		sum(
			x.map(
				(own, i) =>
					own * (sum(x.map((each, k) => each * at(normal, i, k))) / 2) -
					own * (right[i] ?? 0),
			),
		);
	let best = [...bounds.low];
	let least = Number.POSITIVE_INFINITY;
	for (const face of faces(unknowns.length))
		for (const tight of [false, true]) {
			const x = onFace(normal, right, bounds, face, tight);
			if (!x || !isWithin(x, bounds)) continue;
			const own = cost(x);
			if (own < least) [least, best] = [own, x];
		}
	return best.map((each, i) =>
		Math.min(bounds.high[i] ?? 0, Math.max(bounds.low[i] ?? 0, each)),
	);
}

/** Keeps unknowns that nothing depends on at 0. */
const TINY = 1e-9;
const ROUNDING = 1e-9;

const at = (matrix: readonly (readonly number[])[], i: number, k: number) =>
	matrix[i]?.[k] ?? 0;

function isWithin(
	x: readonly number[],
	{ low, high, weights, limit }: Bounds,
): boolean {
	let total = 0;
	for (let i = 0; i < x.length; i += 1) {
		const own = x[i] as number;
		if (own < (low[i] as number) - ROUNDING) return false;
		if (own > (high[i] as number) + ROUNDING) return false;
		total += own * (weights[i] as number);
	}
	return total <= limit + ROUNDING;
}

type Place = "free" | "low" | "high";
const PLACES: readonly Place[] = ["free", "low", "high"];
const known: Place[][][] = [];

/** Every way in which unknowns lie free or at a bound. */
function faces(count: number): readonly (readonly Place[])[] {
	const all =
		known[count] ??
		(count === 0
			? [[]]
			: faces(count - 1).flatMap((face) =>
					PLACES.map((place) => [...face, place]),
				));
	known[count] = all;
	return all;
}

/** The least on one face; with `tight` the sum is at its limit, too. */
function onFace(
	normal: readonly (readonly number[])[],
	right: readonly number[],
	{ low, high, weights, limit }: Bounds,
	face: readonly Place[],
	tight: boolean,
): number[] | undefined {
	const free = face.flatMap((place, i) => (place === "free" ? [i] : []));
	if (tight && free.length === 0) return undefined;
	const x = face.map((place, i) =>
		place === "free" ? 0 : ((place === "low" ? low[i] : high[i]) ?? 0),
	);
	const rows = free.map((i) => free.map((k) => at(normal, i, k)));
	const values = free.map(
		(i) => (right[i] ?? 0) - sum(x.map((own, k) => own * at(normal, i, k))),
	);
	if (tight) {
		for (const [place, i] of free.entries()) rows[place]?.push(weights[i] ?? 0);
		rows.push([...free.map((i) => weights[i] ?? 0), 0]);
		values.push(limit - sum(x.map((own, i) => own * (weights[i] ?? 0))));
	}
	const found = solved(rows, values);
	if (!found) return undefined;
	for (const [place, i] of free.entries()) x[i] = found[place] ?? 0;
	return x;
}

/** The solution of linear equations by elimination, the largest pivot first; undefined where there is none. */
export function solved(
	matrix: readonly (readonly number[])[],
	values: readonly number[],
): number[] | undefined {
	const rows = matrix.map((row, i) => [...row, values[i] ?? 0]);
	const size = rows.length;
	for (let column = 0; column < size; column += 1) {
		let pivot = column;
		for (let row = column + 1; row < size; row += 1)
			if (Math.abs(at(rows, row, column)) > Math.abs(at(rows, pivot, column)))
				pivot = row;
		const top = rows[pivot];
		if (!top || Math.abs(top[column] ?? 0) < 1e-14) return undefined;
		[rows[pivot], rows[column]] = [rows[column] as number[], top];
		for (let row = 0; row < size; row += 1) {
			if (row === column) continue;
			const own = rows[row] as number[];
			const factor = (own[column] as number) / (top[column] as number);
			for (let k = column; k <= size; k += 1)
				own[k] = (own[k] as number) - factor * (top[k] as number);
		}
	}
	return rows.map((row, i) => (row[size] as number) / (row[i] as number));
}
