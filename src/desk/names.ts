/** Named ranges of the workbook. */
import type { Worksheet } from "@univerjs/core";
import {
	IDefinedNamesService,
	RemoveDefinedNameMutation,
	SetDefinedNameMutation,
} from "@univerjs/engine-formula";
import {
	type Block,
	formatAbsolute,
	parseA1,
	quoteTab,
	splitReference,
} from "./a1";
import { type Book, execute, sheetNamed } from "./book";
import { partOf } from "./engine-private";

export interface Named {
	id: string;
	name: string;
	/** Absent once its cells are gone. */
	cells: { sheet: Worksheet; block: Block } | undefined;
}

function cellsOf(book: Book, reference: string): Named["cells"] {
	const { tab, range } = splitReference(reference);
	const sheet = tab === undefined ? undefined : sheetNamed(book, tab);
	const block =
		sheet && parseA1(range, sheet.getRowCount(), sheet.getColumnCount());
	return sheet && block ? { sheet, block } : undefined;
}

export function namedRanges(book: Book): Named[] {
	const names = partOf(book.engine, IDefinedNamesService).getDefinedNameMap(
		book.workbook.getId(),
	);
	return Object.values(names ?? {}).map(({ id, name, formulaOrRefString }) => ({
		id,
		name,
		cells: cellsOf(book, formulaOrRefString),
	}));
}

const COPIED = "copied_";

/** Gives a copy of a tab that tab's names as its own: the copy's name stands in front of each. */
export function copyNames(book: Book, from: Worksheet, to: Worksheet): void {
	for (const { name, cells } of namedRanges(book)) {
		if (cells?.sheet.getSheetId() !== from.getSheetId()) continue;
		const bare = name.slice(name.lastIndexOf("!") + 1);
		execute(book, SetDefinedNameMutation.id, {
			id: `${COPIED}${to.getSheetId()}_${bare}`,
			name: `${quoteTab(to.getName())}!${bare}`,
			formulaOrRefString: `${quoteTab(to.getName())}!${formatAbsolute(cells.block)}`,
			localSheetId: to.getSheetId(),
		});
	}
}

/** Takes away the names that a tab has as its own. */
export function removeNamesOf(book: Book, sheetId: string): void {
	for (const { id, name } of namedRanges(book))
		if (id.startsWith(`${COPIED}${sheetId}_`))
			execute(book, RemoveDefinedNameMutation.id, { id, name });
}

/** Upper and lower case are the same name. */
export function namedRange(book: Book, name: string): Named | undefined {
	return namedRanges(book).find(
		(item) => item.name.toLowerCase() === name.toLowerCase(),
	);
}

const CELL_LIKE = /^(?:[a-z]{1,3}\d+|r\d*c\d*)$/i;
const ALLOWED = /^[a-z_]\w{0,249}$/i;

/**
 * Names cells, in place of what had the name before.
 *
 * @throws Error for a name that Sheets does not allow.
 */
export function setName(
	book: Book,
	name: string,
	sheet: Worksheet,
	block: Block,
): void {
	if (
		!ALLOWED.test(name) ||
		CELL_LIKE.test(name) ||
		/^(?:true|false)$/i.test(name)
	)
		throw new Error(`The name ${name} is not a valid name for a range.`);
	// the engine's mutation: its command takes 40 ms a name in a workbook of some jobs
	execute(book, SetDefinedNameMutation.id, {
		id: namedRange(book, name)?.id ?? `name_${name}`,
		name,
		formulaOrRefString: `${quoteTab(sheet.getName())}!${formatAbsolute(block)}`,
		localSheetId: "AllDefaultWorkbook",
	});
}

/** @throws Error when there is no such name. */
export function removeName(book: Book, name: string): void {
	const found = namedRange(book, name);
	if (!found) throw new Error(`The named range ${name} does not exist.`);
	execute(book, RemoveDefinedNameMutation.id, {
		id: found.id,
		name: found.name,
	});
}
