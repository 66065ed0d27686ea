/** Pieces or cutouts out of rows copied from any sheet. */

import { SHAPES, type Shape } from "../../calc/shapes";
import { type Fields as AnyFields, wordOf } from "../../job/fields/field";
import { CUTOUT } from "../../job/fields/openings";
import { DIMENSIONS, type Dimension, PIECE } from "../../job/fields/piece";
import { delimitedRows } from "./delimited";
import { blankCutout, blankPiece, type CutoutRow, type PieceRow } from "./form";

export interface PastedRows {
	pieces: PieceRow[];
	/** Where the header is one of cutouts. */
	cutouts: CutoutRow[];
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

type Headings = readonly (readonly [key: string, words: readonly string[]])[];

/** What people head the column of each field with. */
const headings = (fields: AnyFields): Headings =>
	Object.entries(fields).map(([key, { label, also = [] }]) => [
		key,
		[label.toLowerCase(), wordOf(key).toLowerCase(), ...also],
	]);

const OF_PIECE = headings(PIECE);
const OF_CUTOUT = headings(CUTOUT);

function fieldNamed(word: string, any: Headings): string | undefined {
	const named = (one: string) =>
		any.find(([, words]) => words.includes(one))?.[0];
	return named(word) ?? named(word.replace(/s$/, ""));
}

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
	field?: string;
	/** Unit said in the header, for bare numbers below it. */
	unit: string;
	word: string;
}

function headerCell(text: string, any: Headings): HeaderCell {
	const [, word = "", unit = ""] =
		/^(.*?)[\s,]*(?:[([]?\b(mm|cm|m|in|inch|inches|ft)\b\.?[)\]]?)?$/.exec(
			text
				.toLowerCase()
				.replace(/[._#:*]+/g, " ")
				.trim(),
		) ?? [];
	return { field: fieldNamed(word.trim(), any), unit, word: text.trim() };
}

/** The header, when the first row is one: at least two of its cells are column words, and none is a number. */
function headerOf(
	row: readonly string[],
	any: Headings,
): HeaderCell[] | undefined {
	const cells = firstOfEach(row.map((text) => headerCell(text, any)));
	return named(cells) >= 2 && row.every((text) => !/^\d/.test(text))
		? cells
		: undefined;
}

/** How many columns a header names. */
const named = (header: readonly HeaderCell[] = []): number =>
	header.filter(({ field }) => field !== undefined).length;

/** A field named twice is taken from its first column. */
const firstOfEach = (cells: readonly HeaderCell[]): HeaderCell[] =>
	cells.map((cell, index) =>
		cells.findIndex(({ field }) => field === cell.field) === index
			? cell
			: { ...cell, field: undefined },
	);

/** Rows of the pasted text; lengths stay as they were written. A header that names more fields of a cutout heads cutouts. */
export function pastedRows(text: string): PastedRows {
	const rows = delimitedRows(text);
	const none = { pieces: [], cutouts: [], unused: [] };
	const [first] = rows;
	if (!first) return { ...none, mistake: "there are no rows" };
	const ofPiece = headerOf(first, OF_PIECE);
	const ofCutout = headerOf(first, OF_CUTOUT);
	const header = named(ofCutout) > named(ofPiece) ? ofCutout : ofPiece;
	if (header) {
		const typed = underHeader(header, rows.slice(1));
		return {
			...none,
			[header === ofCutout ? "cutouts" : "pieces"]:
				header === ofCutout
					? typed.map((cells) => shaped({ ...blankCutout(), ...cells }))
					: typed.map(pieceOf),
			unused: header
				.filter(({ field, word }) => field === undefined && word !== "")
				.map(({ word }) => word),
			...(typed.length === 0 && {
				mistake: "there are no rows below the header",
			}),
		};
	}
	const mistake = unclear(rows);
	return mistake
		? { ...none, mistake }
		: { ...none, pieces: rows.map(withoutHeader) };
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

/** What each row holds, by the fields that the header names. */
const underHeader = (
	header: readonly HeaderCell[],
	rows: readonly (readonly string[])[],
): Record<string, string>[] =>
	rows.map((row) =>
		Object.fromEntries(
			header.flatMap(({ field, unit }, index) =>
				field === undefined ? [] : [[field, withUnit(row[index] ?? "", unit)]],
			),
		),
	);

const withUnit = (text: string, unit: string): string =>
	unit && /^[\d\s.,/½⅓⅔¼¾⅛⅜⅝⅞-]*\d*[\d½⅓⅔¼¾⅛⅜⅝⅞]$/.test(text)
		? `${text} ${unit}`
		: text;

/** Name, quantity, then shape or straight length, width, thickness; after a shape its own dimensions may stand close up. */
function withoutHeader(row: readonly string[]): PieceRow {
	const shape = shapeNamed(row[2] ?? "");
	if (!shape)
		return pieceOf(keyed(startsWithWord(row[2]) ? FIELDS : PLAIN, row));
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
	return pieceOf(keyed(closeUp ? close : FIELDS, row));
}

const keyed = (
	fields: Fields,
	row: readonly string[],
): Partial<Record<PieceField, string>> =>
	Object.fromEntries(
		row.flatMap((text, index) => {
			const field = fields[index];
			return field === undefined ? [] : [[field, text]];
		}),
	);

const pieceOf = (given: Partial<Record<PieceField, string>>): PieceRow =>
	shaped({ ...blankPiece(), ...given });

/** The row with its shape as the fields name it; a rectangle where none is given. */
function shaped<R extends { shape: string }>(row: R): R {
	const shape = shapeNamed(row.shape) ?? row.shape;
	return { ...row, shape: shape || "rectangle" };
}
