/** Which castings share a load of the mixer. */
import { castings, type LoadRow, mixerLoads } from "../../calc/loads";
import { sum } from "../../calc/sum";
import { type Given, setting } from "./given";
import { all, from, fromBoth, type Known, look, missing } from "./known";
import { type PieceAnswer, strayCutouts, wasteOf } from "./pieces";

/** A table of loads has room for so many castings. */
export const MOST_CASTINGS = 40;

export interface LoadsAnswer {
	/** Mix to make for all pieces, waste included. */
	batchKg: Known<number>;
	/** A row a casting, by load. */
	castings: Known<readonly LoadRow[]>;
	count: Known<number>;
}

/** One load of the mixer. */
export interface Load {
	number: number;
	castings: readonly string[];
	/** What each casting takes of the load. */
	parts: readonly { name: string; massKg: number }[];
	massKg: number;
	capacityShare: number;
}

/** Sums over the pieces are known once each piece is. */
export function overPieces<T>(
	given: Given,
	pieces: readonly PieceAnswer[],
	of: (piece: PieceAnswer) => Known<T>,
): Known<readonly T[]> {
	const [stray] = strayCutouts(given);
	if (stray) return look(stray);
	if (pieces.length === 0) return missing("type the pieces");
	return all(
		pieces.map((piece) => {
			const known = of(piece);
			return "look" in known
				? look(`${piece.name || "a piece"}: ${known.look}`)
				: known;
		}),
	);
}

export function loadsAnswer(
	given: Given,
	pieces: readonly PieceAnswer[],
): LoadsAnswer {
	const batchKg = from(
		overPieces(given, pieces, ({ batchKg }) => batchKg),
		sum,
	);
	const poured = fromBoth(
		overPieces(given, pieces, ({ name, quantity, massKg }) =>
			fromBoth(quantity, massKg, (count, mass) => ({ name, count, mass })),
		),
		wasteOf(given),
		(rows, waste) =>
			rows.map(({ name, count, mass }) => ({
				name,
				quantity: count,
				massKg: mass * (1 + waste),
			})),
	);
	const rows = fromBoth(
		roomFor(poured),
		setting(given, "mixer_capacity"),
		(each, capacity) => mixerLoads(castings(each), capacity),
	);
	return {
		batchKg,
		castings: rows,
		count: from(rows, (list) => Math.max(0, ...list.map(({ load }) => load))),
	};
}

function roomFor<P extends { quantity: number }>(
	poured: Known<readonly P[]>,
): Known<readonly P[]> {
	const count = from(poured, (each) =>
		sum(each.map(({ quantity }) => quantity)),
	);
	return "is" in count && count.is > MOST_CASTINGS
		? look(`there is room for ${MOST_CASTINGS} castings: split the job`)
		: poured;
}

/** The loads, each with what is cast of it. */
export const loadsOf = ({ castings }: LoadsAnswer): Known<readonly Load[]> =>
	from(castings, (rows) => {
		const numbers = [...new Set(rows.map(({ load }) => load))];
		return numbers.map((number) => {
			const own = rows.filter(({ load }) => load === number);
			return {
				number,
				castings: own.map(({ name }) => name),
				parts: own.map(({ name, massKg }) => ({ name, massKg })),
				massKg: sum(own.map(({ massKg }) => massKg)),
				capacityShare: own[0]?.capacityShare ?? 0,
			};
		});
	});
