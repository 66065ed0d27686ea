/** Writes the formulas of a tab, once everything else of it is there. */
import { type Area, a1Of } from "../reading/a1";
import { blocksOver } from "./covering";
import { PLAIN_TEXT } from "./formats";
import type { Page, PageCell } from "./page";
import { RISKY } from "./typedcell";

export const isFormula = (value: unknown): boolean =>
	typeof value === "string" && value.startsWith("=");

const withoutMark = (value: unknown): string => String(value).replace(/^'/, "");

/** A plain text that a second writing might turn into something else. */
const isRisky = ({ format, value }: PageCell): boolean =>
	format === PLAIN_TEXT && RISKY.test(withoutMark(value));

/** The blocks that hold all formulas of a page. */
export const formulaBlocks = ({ cells }: Page): Area[] =>
	blocksOver(
		cells.map((row) =>
			row.map((cell) => {
				if (isFormula(cell.value)) return "covered";
				return isRisky(cell) ? "barred" : "free";
			}),
		),
	);

/** What a cell between formulas holds already, as a cell of its format takes it. */
const again = ({ format, value }: PageCell) =>
	format === PLAIN_TEXT && typeof value === "string"
		? withoutMark(value)
		: value;

/** Writes formulas and, since blocks are few, once more the values between them. */
export function writeFormulas(
	page: Page,
	at: (a1: string) => GoogleAppsScript.Spreadsheet.Range,
): void {
	for (const area of formulaBlocks(page))
		at(a1Of(area)).setValues(
			page.cells
				.slice(area.row, area.row + area.rows)
				.map((row) =>
					row.slice(area.column, area.column + area.columns).map(again),
				),
		);
}
