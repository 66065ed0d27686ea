/** What a person's hand does on the grid. */
import { type Book, blockOf, tabNamed } from "./book";
import { checkValid } from "./services/valid";
import { typedCell, writeCells } from "./writing";

type FWorksheet = NonNullable<ReturnType<Book["workbook"]["getSheetByName"]>>;

/** What the engine's sheets can do in the page only. */
interface Scrolling {
	scrollToCell(row: number, column: number): unknown;
}

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
	showSelected(sheet, range);
}

/** In the page a tab that was just opened is laid out a moment later; only then can it scroll. */
const LAID_OUT_MS = 300;

/** Selects cells of the open tab and, where there is a grid to see, scrolls to them. */
export function showSelected(sheet: FWorksheet, a1: string): void {
	const range = sheet.getRange(a1);
	sheet.setActiveSelection(range);
	const { scrollToCell } = sheet as Partial<Scrolling>;
	if (scrollToCell)
		setTimeout(
			() => scrollToCell.call(sheet, range.getRow(), range.getColumn()),
			LAID_OUT_MS,
		);
}
