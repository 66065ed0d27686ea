/** What a call has added to the workbook, so that it can be taken away again when the call cannot finish. */

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface Added {
	spreadsheet: Spreadsheet;
	/** The tab that was open before. */
	open: Sheet;
	tabs: { name: string; sheet: Sheet }[];
	/** Each is noted before it is set. */
	names: string[];
	/** Cells of an older tab that were blank. */
	cells: GoogleAppsScript.Spreadsheet.Range[];
}

/** The message of whatever was thrown. */
export const reason = (error: unknown): string =>
	error instanceof Error ? error.message : String(error);

/** Takes the added names and tabs away, each whatever becomes of the others; what is left, in words. */
export function takeBack({
	spreadsheet,
	open,
	tabs,
	names,
	cells,
}: Added): string[] {
	return [
		...cells.flatMap((range) =>
			left("a row of the Jobs tab", () => range.clearContent()),
		),
		...names.flatMap((name) =>
			left(`the name ${name}`, () => removeName(spreadsheet, name)),
		),
		...tabs.flatMap(({ name, sheet }) =>
			left(`the tab ${name}`, () => spreadsheet.deleteSheet(sheet)),
		),
		...left("another tab is open", () => spreadsheet.setActiveSheet(open)),
	];
}

function removeName(spreadsheet: Spreadsheet, name: string): void {
	if (spreadsheet.getRangeByName(name)) spreadsheet.removeNamedRange(name);
}

function left(what: string, step: () => unknown): string[] {
	try {
		step();
		return [];
	} catch (error) {
		return [`${what} (${reason(error)})`];
	}
}
