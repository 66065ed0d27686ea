/** Parts on the fewest boards that a search finds, with the number below which nothing can be. */
import { boardsBound } from "./boardsbound";
import {
	areaM2,
	cutInOrder,
	MEASURES,
	type Part,
	type Rectangle,
	type Sheet,
	SPLITS,
	type Stock,
} from "./guillotine";
import { uniform } from "./noise";

export interface Nesting {
	/** Those that have parts: offcuts first, then boards. */
	sheets: Sheet[];
	/** Boards of these, without offcuts. */
	boards: number;
	/** No way of cutting takes fewer boards. */
	bound: number;
}

const SEED = 7;

/** Rests to look at before the search ends, for each part: 40 parts take some 50 ms at most. */
const LOOKS_A_PART = 6000;

/** What puts the parts in order, the largest first. */
const KEYS: readonly ((part: Part) => number)[] = [
	areaM2,
	({ lengthM, widthM }) => Math.max(lengthM, widthM),
	({ lengthM, widthM }) => Math.min(lengthM, widthM),
	({ lengthM }) => lengthM,
	({ widthM }) => widthM,
	({ lengthM, widthM }) => lengthM + widthM,
];

/**
 * The parts on offcuts and boards: cut in the best of some plain orders; then parts of a few sheets are taken out and cut anew in a
 * random order, for as long as a board more than the bound is in use and the search has looks left. The same parts give the same answer.
 *
 * @throws InputError for a part that is larger than a board.
 */
export function nested(parts: readonly Part[], stock: Stock): Nesting {
	if (parts.length === 0) return { sheets: [], boards: 0, bound: 0 };
	const bound = boardsBound(parts, stock);
	const next = uniform(SEED);
	const limit = LOOKS_A_PART * parts.length;
	let { sheets, looks } = bestOrder(parts, stock, next);
	let best = sheets;
	while (boardsIn(best) > bound && looks < limit) {
		const again = someAgain(sheets, stock, next);
		looks += again.looks;
		sheets = again.sheets;
		if (boardsIn(sheets) < boardsIn(best)) best = sheets;
	}
	return { sheets: inOrder(best), boards: boardsIn(best), bound };
}

const boardsIn = (sheets: readonly Sheet[]): number =>
	sheets.filter(({ offcut }) => !offcut).length;

const inOrder = (sheets: readonly Sheet[]): Sheet[] =>
	[
		...sheets.filter(({ offcut }) => offcut),
		...sheets.filter(({ offcut }) => !offcut),
	].filter(({ placed }) => placed.length > 0);

const usedShare = (sheet: Sheet): number =>
	sheet.placed.reduce((sum, part) => sum + areaM2(part), 0) / areaM2(sheet);

/** Fewer boards are better; of as many, those that are fuller while others are emptier. */
const worth = (sheets: readonly Sheet[]): number =>
	sheets.reduce((sum, sheet) => sum + usedShare(sheet) ** 2, 0) -
	10 * boardsIn(sheets);

interface Searched {
	sheets: Sheet[];
	looks: number;
}

function bestOrder(
	parts: readonly Part[],
	stock: Stock,
	next: () => number,
): Searched {
	let looks = 0;
	let best: Sheet[] | undefined;
	for (const key of KEYS) {
		const order = [...parts].sort((one, other) => key(other) - key(one));
		for (const measure of MEASURES)
			for (const split of SPLITS) {
				const cut = cutInOrder(order, stock, {
					measure,
					split,
					noise: 0,
					next,
				});
				looks += cut.looks;
				if (!best || worth(cut.sheets) > worth(best)) best = cut.sheets;
			}
	}
	return { sheets: best ?? [], looks };
}

/** Cuts the parts of some sheets anew, and keeps what is no worse; now and then also what is a little worse. */
function someAgain(
	sheets: readonly Sheet[],
	stock: Stock,
	next: () => number,
): Searched {
	const chosen = someOf(sheets, next);
	const key = KEYS[Math.floor(next() * KEYS.length)] as (part: Part) => number;
	const chance = next();
	const parts = [...chosen]
		.flatMap(({ placed }) => placed.map(({ part }) => part))
		.map((part) => ({
			part,
			size: key(part) * (1 + chance * (next() - 0.5)),
		}))
		.sort((one, other) => other.size - one.size)
		.map(({ part }) => part);
	const cut = cutInOrder(
		parts,
		{ ...stock, offcuts: [...chosen].filter(({ offcut }) => offcut) },
		{
			measure: MEASURES[Math.floor(next() * 3)] ?? MEASURES[0],
			noise: next() < 0.5 ? 0.001 : 0.3 * next(),
			split: () => next() < 0.5,
			next,
		},
	);
	const slack = next() < 0.02 ? 0.02 : 0;
	return worth(cut.sheets) >= worth([...chosen]) - slack
		? {
				sheets: [
					...sheets.filter((sheet) => !chosen.has(sheet)),
					...cut.sheets,
				],
				looks: cut.looks,
			}
		: { sheets: [...sheets], looks: cut.looks };
}

/** Two to five of the sheets, often an empty one among them. */
function someOf(sheets: readonly Sheet[], next: () => number): Set<Sheet> {
	const count = Math.min(sheets.length, 2 + Math.floor(next() * next() * 4));
	const chosen = new Set<Sheet>();
	const take = (from: readonly Sheet[], place: number) =>
		chosen.add(from[Math.floor(place * from.length)] as Sheet);
	if (next() < 0.5) {
		const emptyFirst = sheets
			.map((sheet) => ({ sheet, used: usedShare(sheet) }))
			.sort((one, other) => one.used - other.used)
			.map(({ sheet }) => sheet);
		take(emptyFirst, next() * next());
	}
	while (chosen.size < count) take(sheets, next());
	return chosen;
}

/** What is left of a board when its edges are trimmed. */
export const trimmed = (
	{ lengthM, widthM }: Rectangle,
	trimM: number,
): Rectangle => ({
	lengthM: lengthM - 2 * trimM,
	widthM: widthM - 2 * trimM,
});
