/** Puts a formula where the person is. */
import { InputError } from "../../calc/errors";

/** The address of the current cell, which now holds the formula. @throws InputError for a cell that holds something. */
export function putFormula(formula: string): string {
	if (typeof formula !== "string" || !/^=[A-Z]/.test(formula))
		throw new InputError("A formula starts with = and a function's name");
	const cell = SpreadsheetApp.getActiveSpreadsheet().getCurrentCell();
	if (!cell)
		throw new InputError("Click the cell that the formula is to go in first");
	const address = cell.getA1Notation();
	if (!cell.isBlank() || cell.getFormula() !== "")
		throw new InputError(`${address} is not blank: choose a blank cell`);
	cell.setFormula(formula);
	return address;
}
