/** Parts cut from sheets edge to edge, as a panel saw cuts, one part after the other. */
import { InputError, quoted } from "./errors";
import { withRounding } from "./rounding";

export interface Rectangle {
	lengthM: number;
	widthM: number;
}

export interface Part extends Rectangle {
	name: string;
	/** Whether it may be cut across the sheet, too. */
	turns: boolean;
}

/** A rectangle at a place of its sheet, from the sheet's corner. */
export interface Spot extends Rectangle {
	xM: number;
	yM: number;
}

/** A part as it is cut from a rest of its sheet. */
export interface Placed extends Spot {
	part: Part;
	turned: boolean;
	rest: Spot;
	/** Whether the first cut runs along the length of the rest, beside the part's width. */
	alongFirst: boolean;
}

export interface Sheet extends Rectangle {
	/** Whether it is an offcut that was there before. */
	offcut: boolean;
	/** In the order in which they are cut. */
	placed: Placed[];
	rests: Spot[];
}

/** What the parts are cut from: offcuts that are there, and as many boards as it takes. */
export interface Stock {
	offcuts: readonly Rectangle[];
	board: Rectangle;
	/** What the blade takes away. */
	kerfM: number;
}

/** How a rest is chosen for a part: its measure, and how much of it is chance. */
export interface Choice {
	measure: Measure;
	noise: number;
	split: Split;
	next: () => number;
}

/** What is left beside the part in a rest; the least is the best. */
export const MEASURES = [
	(overM: number, asideM: number) => Math.min(overM, asideM),
	(overM: number, asideM: number) => Math.max(overM, asideM),
	(_overM: number, _asideM: number, overM2: number) => overM2,
] as const;
type Measure = (typeof MEASURES)[number];

/** Whether the first cut runs along the length of the rest: by what is left beyond the part and beside it. */
export const SPLITS = [
	(beyondM: number, besideM: number) => beyondM < besideM,
	(beyondM: number, besideM: number) => beyondM >= besideM,
] as const;
type Split = (beyondM: number, besideM: number) => boolean;

/** Less than this beside a part is rounding: nothing to cut off, nothing to keep. */
const DUST_M = 1e-9;

const isWithin = (lengthM: number, roomM: number): boolean =>
	lengthM <= withRounding(roomM);

export const fits = (part: Rectangle, room: Rectangle): boolean =>
	isWithin(part.lengthM, room.lengthM) && isWithin(part.widthM, room.widthM);

export const turnedRound = ({ lengthM, widthM }: Rectangle): Rectangle => ({
	lengthM: widthM,
	widthM: lengthM,
});

/** The ways in which a part may lie. */
export const ways = (part: Part): readonly Rectangle[] =>
	part.turns && part.lengthM !== part.widthM
		? [part, turnedRound(part)]
		: [part];

export const areaM2 = ({ lengthM, widthM }: Rectangle): number =>
	lengthM * widthM;

export const newSheet = (size: Rectangle, offcut: boolean): Sheet => ({
	lengthM: size.lengthM,
	widthM: size.widthM,
	offcut,
	placed: [],
	rests: [{ xM: 0, yM: 0, lengthM: size.lengthM, widthM: size.widthM }],
});

interface Found {
	sheet: Sheet;
	/** Place in the sheet's rests. */
	at: number;
	way: Rectangle;
}

/**
 * The sheets from which the parts are cut in this order: the offcuts, then boards, a new one for a part that fits in no rest.
 *
 * @throws InputError for a part that is larger than a board.
 */
export function cutInOrder(
	parts: readonly Part[],
	{ offcuts, board, kerfM }: Stock,
	choice: Choice,
): { sheets: Sheet[]; looks: number } {
	const sheets = offcuts.map((size) => newSheet(size, true));
	let looks = 0;
	for (const part of parts) {
		let found = bestRest(part, sheets, choice);
		looks += sheets.reduce((count, { rests }) => count + rests.length, 1);
		if (!found) {
			const sheet = newSheet(board, false);
			found = bestRest(part, [sheet], choice);
			if (!found) throw tooLarge(part);
			sheets.push(sheet);
		}
		cutOut(part, found, kerfM, choice);
	}
	return { sheets, looks };
}

const tooLarge = ({ name }: Part): InputError =>
	new InputError(`${quoted(name)} is larger than a board`);

function bestRest(
	part: Part,
	sheets: readonly Sheet[],
	{ measure, noise, next }: Choice,
): Found | undefined {
	let best: Found | undefined;
	let least = Number.POSITIVE_INFINITY;
	const lies = ways(part);
	for (const sheet of sheets) {
		const sideM = Math.max(sheet.lengthM, sheet.widthM);
		for (let at = 0; at < sheet.rests.length; at++) {
			const rest = sheet.rests[at] as Spot;
			for (const way of lies) {
				if (!fits(way, rest)) continue;
				const left =
					measure(
						(rest.lengthM - way.lengthM) / sideM,
						(rest.widthM - way.widthM) / sideM,
						(areaM2(rest) - areaM2(way)) / sideM ** 2,
					) +
					noise * next();
				if (left >= least) continue;
				least = left;
				best = { sheet, at, way };
			}
		}
	}
	return best;
}

/** Cuts the part from the corner of the rest; what is left beside it and beyond it are rests again. */
function cutOut(
	part: Part,
	{ sheet, at, way }: Found,
	kerfM: number,
	{ split }: Choice,
): void {
	const rest = sheet.rests[at] as Spot;
	const { xM, yM } = rest;
	const { lengthM, widthM } = way;
	const beyondM = rest.lengthM - lengthM - kerfM;
	const besideM = rest.widthM - widthM - kerfM;
	const alongFirst = split(beyondM, besideM);
	const beyond: Spot = {
		xM: xM + lengthM + kerfM,
		yM,
		lengthM: beyondM,
		widthM: alongFirst ? widthM : rest.widthM,
	};
	const beside: Spot = {
		xM,
		yM: yM + widthM + kerfM,
		lengthM: alongFirst ? rest.lengthM : lengthM,
		widthM: besideM,
	};
	sheet.placed.push({
		part,
		xM,
		yM,
		lengthM,
		widthM,
		turned: way !== part,
		rest,
		alongFirst,
	});
	sheet.rests.splice(
		at,
		1,
		...[beyond, beside].filter(
			({ lengthM, widthM }) => Math.min(lengthM, widthM) > DUST_M,
		),
	);
}

/** What the blade takes away for a part, in the order of the cuts: each runs from edge to edge of what it cuts. */
export function cutsOf(placed: Placed, kerfM: number): Spot[] {
	const { xM, yM, lengthM, widthM, rest, alongFirst } = placed;
	const overM = rest.lengthM - lengthM;
	const asideM = rest.widthM - widthM;
	const along: Spot = {
		xM,
		yM: yM + widthM,
		lengthM: alongFirst ? rest.lengthM : lengthM,
		widthM: Math.min(kerfM, asideM),
	};
	const across: Spot = {
		xM: xM + lengthM,
		yM,
		lengthM: Math.min(kerfM, overM),
		widthM: alongFirst ? widthM : rest.widthM,
	};
	const cuts = [
		{ cut: along, needed: asideM > DUST_M },
		{ cut: across, needed: overM > DUST_M },
	];
	return (alongFirst ? cuts : cuts.reverse())
		.filter(({ needed }) => needed)
		.map(({ cut }) => cut);
}
