/** Castings in mixer loads, as they are told to a person. */

import { InputError, quoted } from "./errors";
import { withRounding } from "./rounding";
import { sharedLoads } from "./sharing";
import { sum } from "./sum";

export interface Casting {
	name: string;
	massKg: number;
}

/** Each casting of a job, a piece repeated as often as it is poured. */
export const castings = (
	pieces: readonly { name: string; quantity: number; massKg: number }[],
): Casting[] =>
	pieces.flatMap(({ name, quantity, massKg }) =>
		Array.from({ length: quantity }, () => ({ name, massKg })),
	);

export interface LoadRow {
	/** From 1, numbered by the first casting in it. */
	load: number;
	name: string;
	/** What the casting takes of this load. */
	massKg: number;
	/** Of the capacity, that the whole load takes. */
	capacityShare: number;
}

/**
 * Castings by load, then in their order.
 *
 * The least number of loads, among those the lightest heaviest load, then each casting in the earliest load it may be
 * in. A casting above the capacity takes ⌈mass / capacity⌉ equal loads of its own. Exact for 24 castings and more where
 * many are equal; beyond, never more loads than by putting the heaviest first into the first load it fits in.
 */
export function mixerLoads(
	castings: readonly Casting[],
	capacityKg: number,
): LoadRow[] {
	const fits = castings.map(({ massKg }) => massKg <= withRounding(capacityKg));
	const shared = castings.filter((_, i) => fits[i]);
	const loadOf = sharedLoads(
		shared.map(({ massKg }) => massKg),
		capacityKg,
	);
	const groups = new Map<string, { castings: Casting[]; loads: number }>();
	let place = 0;
	for (const [i, casting] of castings.entries()) {
		const { massKg, name } = casting;
		if (fits[i]) {
			const key = `${loadOf[place++]}`;
			const group = groups.get(key) ?? { castings: [], loads: 1 };
			group.castings.push(casting);
			groups.set(key, group);
		} else {
			const loads = ownLoads(casting, capacityKg);
			const part = { name, massKg: massKg / loads };
			groups.set(`own ${i}`, { castings: [part], loads });
		}
	}
	return rows([...groups.values()], capacityKg);
}

/** More loads than this are a slip of the pen. */
const MOST_OWN_LOADS = 1000;

function ownLoads({ name, massKg }: Casting, capacityKg: number): number {
	const loads = Math.ceil(massKg / withRounding(capacityKg));
	if (loads <= MOST_OWN_LOADS) return loads;
	throw new InputError(
		`castings: ${quoted(name)} would take ${loads} loads of its own, more than ${MOST_OWN_LOADS}: check its mass and the capacity`,
	);
}

function rows(
	groups: readonly { castings: readonly Casting[]; loads: number }[],
	capacityKg: number,
): LoadRow[] {
	return groups
		.flatMap(
			({ castings, loads }) => Array(loads).fill(castings) as Casting[][],
		)
		.flatMap((castings, i) => {
			const wholeKg = sum(castings.map(({ massKg }) => massKg));
			return castings.map(({ name, massKg }) => ({
				load: i + 1,
				name,
				massKg,
				capacityShare: wholeKg / capacityKg,
			}));
		});
}
