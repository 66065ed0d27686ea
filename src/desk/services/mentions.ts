/** Which tabs depend on what a call takes away. */
import { type Book, sheets } from "../book";

/** Tabs with a formula that has this word in it: the name of a tab or of cells. */
export function tabsMentioning(book: Book, word: string): string[] {
	const sought = word.replace(/'/g, "''").toLowerCase();
	return sheets(book)
		.filter((sheet) => {
			let found = false;
			sheet.getCellMatrix().forValue((_row, _column, cell) => {
				found ||= cell?.f?.toLowerCase().includes(sought) ?? false;
				return !found;
			});
			return found;
		})
		.map((sheet) => sheet.getSheetId());
}
