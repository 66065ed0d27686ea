/** Puts what a person typed into a cell, as that and nothing else. */

import type { Typed } from "../messages";
import type { Step } from "./allornothing";
import { PLAIN_TEXT } from "./formats";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** What Sheets would read as a formula, or as its own mark for a text. */
export const RISKY = /^[=+\-@']/;

/** The step that puts a value in a cell in place of what is there. */
export function typedStep(cell: Range, value: Typed): Step {
	const before: unknown = cell.getValue();
	const format = cell.getNumberFormats()[0]?.[0] ?? "";
	return {
		act: () => put(cell, value, format),
		undo: () => put(cell, before, format),
	};
}

/**
 * A cell that is plain text keeps the mark in front of a text as a part of it, and any other takes a text without the
 * mark for what it looks like.
 */
function put(cell: Range, value: unknown, format: string): void {
	if (typeof value !== "string" || value === "") cell.setValue(value);
	else if (format !== PLAIN_TEXT) cell.setValue(`'${value}`);
	else if (!RISKY.test(value)) cell.setValue(value);
	else
		cell
			.setNumberFormat("General")
			.setValue(`'${value}`)
			.setNumberFormat(format);
}
