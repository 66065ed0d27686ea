/**
 * Custom functions that would wait forever: on the platform none may depend on a formula that changes by itself.
 *
 * @source developers.google.com/apps-script/guides/sheets/functions, "Arguments": NOW(), RAND() show Loading… for good
 */
import { FormulaDataModel } from "@univerjs/engine-formula";
import { type Block, formatA1, parseA1, splitReference } from "./a1";
import { type Book, sheetNamed, sheets } from "./book";
import type { CellError } from "./contract";
import { partOf } from "./engine-private";
import { namedRanges } from "./names";

interface FormulaCell {
	tab: string;
	cell: string;
	sheetId: string;
	formula: string;
	/** The cells it fills. */
	block: Block;
	/** The cells it reads. */
	reads: { sheetId: string; block: Block }[];
}

const CHANGES_BY_ITSELF = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;
const REFERENCE =
	/(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|[A-Za-z_]\w+(?!\s*\()/g;

const withoutTexts = (formula: string) =>
	formula.replace(/"(?:[^"]|"")*"/g, '""');

function readsOf(book: Book, sheetId: string, formula: string) {
	const names = new Map(
		namedRanges(book).map(({ name, cells }) => [name.toLowerCase(), cells]),
	);
	return (withoutTexts(formula).match(REFERENCE) ?? []).flatMap((text) => {
		const named = names.get(text.toLowerCase());
		if (named)
			return [{ sheetId: named.sheet.getSheetId(), block: named.block }];
		const { tab, range } = splitReference(text);
		const on = tab === undefined ? undefined : sheetNamed(book, tab);
		const block = parseA1(range, 1e6, 1e4);
		return block ? [{ sheetId: on?.getSheetId() ?? sheetId, block }] : [];
	});
}

function formulaCells(book: Book): FormulaCell[] {
	const spills = partOf(book.engine, FormulaDataModel).getArrayFormulaRange()[
		book.workbook.getId()
	];
	return sheets(book).flatMap((sheet) => {
		const sheetId = sheet.getSheetId();
		const found: FormulaCell[] = [];
		sheet.getCellMatrix().forValue((row, column, cell) => {
			if (!cell?.f) return;
			const own = {
				startRow: row,
				startColumn: column,
				endRow: row,
				endColumn: column,
			};
			found.push({
				tab: sheet.getName(),
				cell: formatA1(own),
				sheetId,
				formula: cell.f,
				block: spills?.[sheetId]?.[row]?.[column] ?? own,
				reads: readsOf(book, sheetId, cell.f),
			});
		});
		return found;
	});
}

const meet = (a: Block, b: Block) =>
	a.startRow <= b.endRow &&
	b.startRow <= a.endRow &&
	a.startColumn <= b.endColumn &&
	b.startColumn <= a.endColumn;

/** Every formula that one depends on, itself too. */
function sources(all: readonly FormulaCell[], start: FormulaCell) {
	const found = new Set([start]);
	for (const cell of found)
		for (const { sheetId, block } of cell.reads)
			for (const other of all)
				if (other.sheetId === sheetId && meet(other.block, block))
					found.add(other);
	return found;
}

/** Cells whose custom functions would never finish, given the names of those functions. */
export function neverLoading(
	book: Book,
	functions: readonly string[],
): CellError[] {
	const all = formulaCells(book);
	const changing = all.filter(({ formula }) =>
		CHANGES_BY_ITSELF.test(withoutTexts(formula)),
	);
	if (changing.length === 0) return [];
	const own = new RegExp(`\\b(?:${functions.join("|")})\\s*\\(`);
	return all
		.filter(({ formula }) => own.test(withoutTexts(formula)))
		.flatMap((start) => {
			const cause = [...sources(all, start)].find((cell) =>
				changing.includes(cell),
			);
			const [, name] = CHANGES_BY_ITSELF.exec(cause?.formula ?? "") ?? [];
			if (!cause || !name) return [];
			return [
				{
					tab: start.tab,
					cell: start.cell,
					shown: "Loading...",
					message: `a custom function cannot depend on ${name.toUpperCase()} (${cause.tab}!${cause.cell})`,
				},
			];
		});
}
