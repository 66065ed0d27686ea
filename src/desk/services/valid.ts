/** What may be typed into a cell that has a rule. */
import {
	DataValidationErrorStyle,
	type DataValidationOperator,
	DataValidationType,
	type IDataValidationRuleBase,
	type IDataValidationRuleOptions,
	type Worksheet,
} from "@univerjs/core";
import { deserializeListOptions } from "@univerjs/sheets";
import { SheetDataValidationModel } from "@univerjs/sheets-data-validation";
import { cellA1, splitReference } from "../a1";
import { type Book, blockOf, mapBlock, tabNamed } from "../book";
import { partOf } from "../engine-private";
import { rawAt } from "../values";

type Rule = IDataValidationRuleBase & IDataValidationRuleOptions;

/**
 * Checks a value against the rule of its cell; blank and formulas pass, and so does all a rule only warns of.
 *
 * @throws Error for a value that a strict rule refuses.
 */
export function checkValid(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
	value: unknown,
): void {
	const rule = partOf(book.engine, SheetDataValidationModel).getRuleByLocation(
		book.workbook.getId(),
		sheet.getSheetId(),
		row,
		column,
	);
	const strict = rule?.errorStyle === DataValidationErrorStyle.STOP;
	if (!rule || !strict || !refuses(book, rule, value)) return;
	const cell = cellA1(row, column);
	throw new Error(
		`The data you entered in cell ${cell} violates the data validation rules set on this cell.`,
	);
}

function listed(book: Book, formula: string): string[] {
	if (!formula.startsWith("=")) return deserializeListOptions(formula);
	const { tab, range } = splitReference(formula.slice(1));
	const sheet = tabNamed(book, tab ?? "");
	return mapBlock(blockOf(sheet, range.replace(/\$/g, "")), (row, column) =>
		String(rawAt(book, sheet, row, column)),
	).flat();
}

function refuses(book: Book, rule: Rule, value: unknown): boolean {
	const first = Number(rule.formula1);
	const outside: Partial<
		Record<DataValidationOperator, (n: number) => boolean>
	> = {
		between: (n) => n < first || n > Number(rule.formula2),
		greaterThan: (n) => n <= first,
		greaterThanOrEqual: (n) => n < first,
		lessThanOrEqual: (n) => n > first,
	};
	if (rule.type === DataValidationType.LIST)
		return !listed(book, rule.formula1 ?? "").includes(String(value));
	if (rule.type === DataValidationType.DECIMAL)
		return (
			typeof value !== "number" ||
			Boolean(rule.operator && outside[rule.operator]?.(value))
		);
	return false;
}
