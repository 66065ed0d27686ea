/** The number of boards below which no way of cutting can be. */
import {
	areaM2,
	fits,
	type Part,
	type Rectangle,
	type Stock,
	turnedRound,
	ways,
} from "./guillotine";

/** Numbers that differ by less are the same number, rounded. */
const ROUNDING = 1e-9;

/**
 * Boards that the parts need at least: by their area, by dual feasible functions of it, and by parts no two of which go on one
 * board. Every size has the blade's width in it: with kerf k, parts (l + k) × (w + k) go on boards (L + k) × (W + k).
 *
 * @source Bounds by dual feasible functions: Fekete and Schepers (from memory).
 */
export function boardsBound(
	parts: readonly Part[],
	{ offcuts, board, kerfM }: Stock,
): number {
	const withKerf = <R extends Rectangle>(size: R): R => ({
		...size,
		lengthM: size.lengthM + kerfM,
		widthM: size.widthM + kerfM,
	});
	const grown = parts.map(withKerf);
	const room = withKerf(board);
	const shares = grown.map((part) =>
		ways(part)
			.filter((way) => fits(way, room))
			.map((way) => ({
				length: way.lengthM / room.lengthM,
				width: way.widthM / room.widthM,
			})),
	);
	const sumOf = (f: Feasible, g: Feasible) =>
		shares.reduce(
			(sum, lies) =>
				sum + Math.min(...lies.map((lie) => f(lie.length) * g(lie.width))),
			0,
		);
	const offcutM2 = offcuts.reduce(
		(sum, offcut) => sum + areaM2(withKerf(offcut)),
		0,
	);
	const byArea = sumOf(plain, plain) - offcutM2 / areaM2(room);
	const functions = feasibleFunctions(shares.flat());
	const byFunctions = functions.flatMap((f) =>
		functions.map((g) => sumOf(f, g)),
	);
	const whole = (boards: number) => Math.ceil(boards - ROUNDING);
	return Math.max(
		0,
		whole(byArea),
		...[...byFunctions.map(whole), apart(grown, room)].map(
			// An offcut that is no larger than a board takes the place of one at most.
			(boards) => boards - offcuts.length,
		),
	);
}

/** Turns a share of a side so that shares which sum to 1 at most still do. */
type Feasible = (share: number) => number;

const plain: Feasible = (share) => share;

/** Counts what is above 1 − ε whole, and what is below ε not at all. */
const sharpened =
	(epsilon: number): Feasible =>
	(share) => {
		if (share > 1 - epsilon + ROUNDING) return 1;
		return share < epsilon - ROUNDING ? 0 : share;
	};

const rounded =
	(k: number): Feasible =>
	(share) => {
		const times = (k + 1) * share;
		return Math.abs(times - Math.round(times)) < ROUNDING
			? share
			: Math.floor(times) / k;
	};

/** Each ε costs a pass over the parts for every other: many parts get the first of them. */
const MOST_EPSILONS = 24;

function feasibleFunctions(
	lies: readonly { length: number; width: number }[],
): Feasible[] {
	const sides = lies.flatMap(({ length, width }) => [length, width]);
	const epsilons = new Set(
		sides
			.flatMap((side) => [side, 1 - side])
			.filter((side) => side > ROUNDING && side <= 0.5),
	);
	return [
		plain,
		...[1, 2, 3, 4, 5].map(rounded),
		sharpened(0.5),
		...[...epsilons].slice(0, MOST_EPSILONS).map(sharpened),
	];
}

/** How many parts there are of which no two go on one board, found from the largest on. */
function apart(parts: readonly Part[], room: Rectangle): number {
	const largestFirst = [...parts].sort(
		(one, other) => areaM2(other) - areaM2(one),
	);
	const found: Part[] = [];
	for (const part of largestFirst)
		if (found.every((other) => !goTogether(part, other, room)))
			found.push(part);
	return found.length;
}

const goTogether = (one: Part, other: Part, room: Rectangle): boolean =>
	ways(one).some((a) =>
		ways(other).some(
			(b) =>
				fits(joined(a, b), room) ||
				fits(joined(turnedRound(a), turnedRound(b)), turnedRound(room)),
		),
	);

/** Both, one beyond the other. */
const joined = (a: Rectangle, b: Rectangle): Rectangle => ({
	lengthM: a.lengthM + b.lengthM,
	widthM: Math.max(a.widthM, b.widthM),
});
