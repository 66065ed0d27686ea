/** What a person's hand does on the grid. */
import { type Book, blockOf, tabNamed } from "./book";
import { checkValid } from "./services/validation";
import { typedCell, writeCells } from "./writing";

/** Types a text into a cell. @throws Error for what the cell's choice refuses. */
export function typeInto(
	book: Book,
	tab: string,
	cell: string,
	text: string,
): void {
	const sheet = tabNamed(book, tab);
	const { startRow: row, startColumn: column } = blockOf(sheet, cell);
	const content = typedCell(book, sheet, row, column, text, "person");
	if (content?.v !== null && content?.v !== undefined)
		checkValid(book, sheet, row, column, content.v);
	writeCells(book, sheet, { [row]: { [column]: content } });
}

/** Opens a tab and selects cells. */
export function selectCells(book: Book, tab: string, range: string): void {
	const sheet = book.workbook.getSheetByName(tab);
	if (!sheet) throw new Error(`there is no tab ${tab}`);
	book.workbook.setActiveSheet(sheet);
	sheet.setActiveSelection(sheet.getRange(range));
}
