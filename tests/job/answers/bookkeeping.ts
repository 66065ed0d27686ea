/**
 * The books of one load, kept in kilograms by hand: what went into which vessel, and what came out of it.
 *
 * It knows the mix and nothing else. What a scale said is put in; nothing of `src/` is asked.
 */

/** What lies in a vessel, or was pulled off. */
export interface Heap {
	/** Mix without pigment. */
	mixKg: number;
	binderKg: number;
	/** Dry pigment, and the same with its water. */
	dryKg: Record<string, number>;
	wetKg: Record<string, number>;
}

const empty = (): Heap => ({ mixKg: 0, binderKg: 0, dryKg: {}, wetKg: {} });

const total = (masses: Readonly<Record<string, number>>): number =>
	Object.values(masses).reduce((all, one) => all + one, 0);

export const onScaleKg = ({ mixKg, wetKg }: Heap): number =>
	mixKg + total(wetKg);

/** Dry pigment over binder. */
export const doseOf = ({ dryKg, binderKg }: Heap, pigment: string): number =>
	(dryKg[pigment] ?? 0) / binderKg;

export function booksOf(
	binderIn: Readonly<Record<string, number>>,
	wetPerDry: Readonly<Record<string, number>>,
) {
	const heaps = new Map<string, Heap>();
	const at = (name: string): Heap => {
		const heap = heaps.get(name) ?? empty();
		heaps.set(name, heap);
		return heap;
	};
	return {
		at,
		put(ingredient: string, kg: number): void {
			at("mixer").mixKg += kg;
			at("mixer").binderKg += kg * (binderIn[ingredient] ?? 0);
		},
		/** So much of one goes to another, each part of it alike. */
		move(from: string, to: string, kg: number): void {
			const part = kg / onScaleKg(at(from));
			const [source, target] = [at(from), at(to)];
			for (const key of ["mixKg", "binderKg"] as const) {
				target[key] += source[key] * part;
				source[key] *= 1 - part;
			}
			for (const key of ["dryKg", "wetKg"] as const)
				for (const [pigment, mass] of Object.entries(source[key])) {
					target[key][pigment] = (target[key][pigment] ?? 0) + mass * part;
					source[key][pigment] = mass * (1 - part);
				}
		},
		add(vessel: string, pigment: string, grams: number): void {
			const { dryKg, wetKg } = at(vessel);
			wetKg[pigment] = (wetKg[pigment] ?? 0) + grams / 1000;
			dryKg[pigment] =
				(dryKg[pigment] ?? 0) + grams / 1000 / (wetPerDry[pigment] ?? 1);
		},
		/** What stays in a vessel is a tone from now on. */
		keep(vessel: string, tone: string): void {
			heaps.set(tone, at(vessel));
			heaps.delete(vessel);
		},
	};
}

export type Books = ReturnType<typeof booksOf>;
