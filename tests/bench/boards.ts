import { boardsBound } from "../../src/calc/boardsbound";
import { milliseconds, ms, numbers, type Row } from "./row";
import { built } from "./script";

const BOARD = { lengthM: 2800, widthM: 2070 };
const KERF = 3.2;

/** What a kitchen of 40 parts may take. */
const LIMIT_MS = 50;

/** Bases, sides and knockout walls of a kitchen's molds, as rows of BOARDS_NEEDED. */
function kitchen(seed: number): [string, number, number, number][] {
	const next = numbers(seed);
	const between = (from: number, to: number) =>
		Math.round(from + (to - from) * next());
	return Array.from({ length: 40 }, (_, i) => {
		if (i < 8) return [`base ${i}`, between(1000, 2600), between(500, 900), 1];
		if (i < 26) return [`side ${i}`, between(500, 2500), between(48, 100), 1];
		return [`wall ${i}`, between(300, 800), between(30, 130), 1];
	});
}

/** BOARDS_NEEDED for three drawn kitchens, against the bound below which no cutting can be. */
export function boardRows(): Row[] {
	const call = built();
	return [1, 2, 5].map((seed) => {
		const parts = kitchen(seed);
		const args = [parts, BOARD.lengthM, BOARD.widthM, KERF];
		const answer = call("BOARDS_NEEDED", args) as number[][];
		const boards = Math.max(...answer.map(([board]) => board ?? 0));
		const bound = boardsBound(
			parts.map(([name, lengthM, widthM]) => ({
				name,
				lengthM,
				widthM,
				turns: true,
			})),
			{ offcuts: [], board: BOARD, kerfM: KERF },
		);
		const took = milliseconds(() => call("BOARDS_NEEDED", args), 9);
		return {
			what: `BOARDS_NEEDED, a kitchen of 40 parts (${seed})`,
			figure: ms(took),
			beside: `limit ${LIMIT_MS} ms; ${boards} boards, bound ${bound}${took > LIMIT_MS ? ", too slow" : ""}`,
		};
	});
}
