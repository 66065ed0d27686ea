/** Which tone can be made from which by adding pigment, and how many cannot be made from one another. */
import { sum } from "./sum";
import type { Tone } from "./tones";

/** Doses nearer than this are one dose. */
export const SAME_DOSE = 1e-12;

export interface Order {
	/** Every dose of `a` ≤ that of `b`; tones of equal doses stand in table order. */
	before(a: number, b: number): boolean;
	/** Place in an order that keeps every `before`. */
	place(tone: number): number;
}

/** The order of tones given by their places in the table. */
export function orderOf(tones: readonly Tone[]): Order {
	const doses = oneDose(tones.map((tone) => tone.doses));
	const totals = doses.map(sum);
	const lessOrEqual = (a: number, b: number) =>
		(doses[a] ?? []).every((dose, p) => dose <= (doses[b]?.[p] ?? 0));
	const before = tones.map((_, a) =>
		tones.map(
			(_, b) => a !== b && lessOrEqual(a, b) && (!lessOrEqual(b, a) || a < b),
		),
	);
	const places: number[] = [];
	tones
		.map((_, i) => i)
		.sort((a, b) => (totals[a] ?? 0) - (totals[b] ?? 0) || a - b)
		.forEach((tone, place) => {
			places[tone] = place;
		});
	return {
		before: (a, b) => before[a]?.[b] ?? false,
		place: (tone) => places[tone] ?? 0,
	};
}

/** The doses with those of one pigment that differ by rounding only made equal, so that ≤ is an order. */
export function oneDose(doses: readonly (readonly number[])[]): number[][] {
	const pigments = Math.max(0, ...doses.map((each) => each.length));
	const columns = Array.from({ length: pigments }, (_, p) => {
		const stands = new Map<number, number>();
		let first = Number.NEGATIVE_INFINITY;
		for (const dose of doses
			.map((each) => each[p] ?? 0)
			.sort((a, b) => a - b)) {
			if (dose - first > SAME_DOSE) first = dose;
			stands.set(dose, first);
		}
		return stands;
	});
	return doses.map((each) =>
		columns.map((stands, p) => stands.get(each[p] ?? 0) ?? 0),
	);
}

/**
 * The largest number of these tones of which none can be made from another: the vessels they need.
 *
 * Tones less the largest matching of tones to later ones (Dilworth's theorem, Fulkerson's proof).
 */
export function width(order: Order, tones: readonly number[]): number {
	const maker = new Map<number, number>();
	const matched = (tone: number, tried: Set<number>): boolean =>
		tones.some((to) => {
			if (tried.has(to) || !order.before(tone, to)) return false;
			tried.add(to);
			const from = maker.get(to);
			if (from !== undefined && !matched(from, tried)) return false;
			maker.set(to, tone);
			return true;
		});
	return tones.length - tones.filter((tone) => matched(tone, new Set())).length;
}
