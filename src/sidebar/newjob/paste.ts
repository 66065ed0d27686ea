/** Pieces out of rows copied from any sheet. */

import { SHAPES, type Shape } from "../../calc/shapes";
import { wordOf } from "../../job/fields/field";
import { DIMENSIONS, type Dimension, PIECE } from "../../job/fields/piece";
import { delimitedRows } from "./delimited";
import { blankPiece, type PieceRow } from "./form";

export interface PastedPieces {
	pieces: PieceRow[];
	/** Header words that no field of a piece goes by: their columns are left out. */
	unused: string[];
	/** Why nothing could be made of it. */
	mistake?: string;
}

type PieceField = keyof typeof PIECE;
type Fields = readonly PieceField[];

const KEYS = Object.keys(PIECE) as PieceField[];
/** Sizes in the columns of PIECE_TAKEOFF. */
const FIELDS: Fields = KEYS.slice(0, KEYS.indexOf("dropThickness") + 1);
const PLAIN: Fields = ["name", "quantity", "a", "b", "thickness"];

/** What people head the column of each field with. */
const HEADINGS = KEYS.map((key): [PieceField, string[]] => {
	const { label, also = [] } = PIECE[key] as { label: string; also?: string[] };
	return [key, [label.toLowerCase(), wordOf(key).toLowerCase(), ...also]];
});

const fieldNamed = (word: string): PieceField | undefined => {
	const named = (one: string) =>
		HEADINGS.find(([, words]) => words.includes(one))?.[0];
	return named(word) ?? named(word.replace(/s$/, ""));
};

const OTHER_SHAPES: Readonly<Record<string, Shape>> = {
	rect: "rectangle",
	rectangular: "rectangle",
	slab: "rectangle",
	circle: "round",
	circular: "round",
	ellipse: "oval",
	"l-shape": "L",
	"l shape": "L",
	"u-shape": "U",
	"u shape": "U",
};

function shapeNamed(typed: string): Shape | undefined {
	const word = typed.trim().toLowerCase();
	return (
		OTHER_SHAPES[word] ?? SHAPES.find((shape) => shape.toLowerCase() === word)
	);
}

interface HeaderCell {
	field?: PieceField;
	/** Unit said in the header, for bare numbers below it. */
	unit: string;
	word: string;
}

function headerCell(text: string): HeaderCell {
	const [, word = "", unit = ""] =
		/^(.*?)[\s,]*(?:[([]?\b(mm|cm|m|in|inch|inches|ft)\b\.?[)\]]?)?$/.exec(
			text
				.toLowerCase()
				.replace(/[._#:*]+/g, " ")
				.trim(),
		) ?? [];
	return { field: fieldNamed(word.trim()), unit, word: text.trim() };
}

/** The header, when the first row is one: at least two of its cells are column words, and none is a number. */
function headerOf(row: readonly string[]): HeaderCell[] | undefined {
	const cells = row.map(headerCell);
	const known = cells.filter(({ field }) => field !== undefined);
	return known.length >= 2 && row.every((text) => !/^\d/.test(text))
		? firstOfEach(cells)
		: undefined;
}

/** A field named twice is taken from its first column. */
const firstOfEach = (cells: readonly HeaderCell[]): HeaderCell[] =>
	cells.map((cell, index) =>
		cells.findIndex(({ field }) => field === cell.field) === index
			? cell
			: { ...cell, field: undefined },
	);

/** Pieces of the pasted text; lengths stay as they were written. */
export function pastedPieces(text: string): PastedPieces {
	const rows = delimitedRows(text);
	const [first] = rows;
	if (!first) return { pieces: [], unused: [], mistake: "there are no rows" };
	const header = headerOf(first);
	if (header) return underHeader(header, rows.slice(1));
	const mistake = unclear(rows);
	if (mistake) return { pieces: [], unused: [], mistake };
	return { pieces: rows.map(withoutHeader), unused: [] };
}

/** Why rows without a header cannot be told apart, for the first such row. */
function unclear(rows: readonly (readonly string[])[]): string | undefined {
	for (const [index, row] of rows.entries()) {
		const place = `row ${index + 1}`;
		if (/^[\d.,]+$/.test(row[0] ?? ""))
			return `${place} begins with "${row[0]}": put the name first, or a header above`;
		const most = startsWithWord(row[2]) ? FIELDS.length : PLAIN.length;
		if (row.slice(most).some((text) => text !== ""))
			return `${place} has more than ${most} columns: put a header above`;
	}
	return undefined;
}

const startsWithWord = (text = ""): boolean => /^[a-z]/i.test(text);

function underHeader(
	header: readonly HeaderCell[],
	rows: readonly (readonly string[])[],
): PastedPieces {
	const pieces = rows.map((row) =>
		pieceOf(
			header.map(({ field, unit }, index) => [
				field,
				withUnit(row[index] ?? "", unit),
			]),
		),
	);
	return {
		pieces,
		unused: header
			.filter(({ field, word }) => field === undefined && word !== "")
			.map(({ word }) => word),
		...(pieces.length === 0 && {
			mistake: "there are no rows below the header",
		}),
	};
}

const withUnit = (text: string, unit: string): string =>
	unit && /^[\d\s.,/½⅓⅔¼¾⅛⅜⅝⅞-]*\d*[\d½⅓⅔¼¾⅛⅜⅝⅞]$/.test(text)
		? `${text} ${unit}`
		: text;

/** Name, quantity, then shape or straight length, width, thickness; after a shape its own dimensions may stand close up. */
function withoutHeader(row: readonly string[]): PieceRow {
	const shape = shapeNamed(row[2] ?? "");
	if (!shape)
		return pieceOf(pairs(startsWithWord(row[2]) ? FIELDS : PLAIN, row));
	const close: Fields = [
		"name",
		"quantity",
		"shape",
		...(Object.keys(DIMENSIONS[shape]) as Dimension[]),
		"thickness",
	];
	const given = row.slice(3).filter((text) => text !== "");
	const closeUp =
		given.length === close.length - 3 &&
		row.slice(3, close.length).every((text) => text !== "");
	return pieceOf(pairs(closeUp ? close : FIELDS, row));
}

const pairs = (
	fields: Fields,
	row: readonly string[],
): [PieceField | undefined, string][] =>
	row.map((text, index) => [fields[index], text]);

function pieceOf(
	cells: readonly (readonly [PieceField | undefined, string])[],
): PieceRow {
	const given = Object.fromEntries(
		cells.filter(([field]) => field !== undefined),
	) as Partial<Record<PieceField, string>>;
	const piece = { ...blankPiece(), ...given };
	const shape = shapeNamed(given.shape ?? "") ?? given.shape;
	return { ...piece, shape: shape || "rectangle" };
}
