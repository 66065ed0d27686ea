/** `Range` of the script. */
import { formatA1 } from "../a1";
import { showSelected } from "../hand";
import type { Call } from "./call";
import { height, width } from "./fitting";
import { markingMethods } from "./marking";
import { activate, type Place, placeBySize, placeOn, sheetAt } from "./place";
import { protect } from "./protection";
import { readMethods } from "./range-reading";
import { contentMethods, ruleMethods, styleMethods } from "./range-writing";
import { sheetService } from "./sheet";
import type { STYLES } from "./style";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Methods = Pick<
	Range,
	| "activate"
	| "breakApart"
	| "clear"
	| "clearContent"
	| "clearDataValidations"
	| "clearFormat"
	| "clearNote"
	| "copyTo"
	| "getA1Notation"
	| "getBackground"
	| "getCell"
	| "getColumn"
	| "getDisplayValue"
	| "getDisplayValues"
	| "getFormula"
	| "getFormulas"
	| "getLastColumn"
	| "getLastRow"
	| "getNote"
	| "getNotes"
	| "getNumColumns"
	| "getNumberFormat"
	| "getNumberFormats"
	| "getNumRows"
	| "getRow"
	| "getSheet"
	| "getValue"
	| "getValues"
	| "isBlank"
	| "merge"
	| "offset"
	| "protect"
	| "setBorder"
	| "setDataValidation"
	| "setDataValidations"
	| "setFormula"
	| "setFormulas"
	| "setNote"
	| "setNotes"
	| "setValue"
	| "setValues"
	| keyof typeof STYLES
>;

/** Opens the tab and selects the cells. */
export function activateCells(call: Call, place: Place): void {
	activate(call, place);
	const sheet = call.host.book.workbook.getSheetBySheetId(place.sheetId);
	if (sheet) showSelected(sheet, formatA1(place.block));
}

function moveMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const at = (row: number, column: number, rows: number, columns: number) =>
		rangeService(
			call,
			placeBySize(sheetAt(call, place), [row, column, rows, columns]),
		);
	return {
		getSheet: () => sheetService(call, place),
		getCell: (row: number, column: number) =>
			rangeService(
				call,
				placeOn(sheetAt(call, place), {
					startRow: block.startRow + row - 1,
					endRow: block.startRow + row - 1,
					startColumn: block.startColumn + column - 1,
					endColumn: block.startColumn + column - 1,
				}),
			),
		offset: (
			rows: number,
			columns: number,
			numRows = height(block),
			numColumns = width(block),
		) =>
			at(
				block.startRow + 1 + rows,
				block.startColumn + 1 + columns,
				numRows,
				numColumns,
			),
		activate() {
			activateCells(call, place);
			return self();
		},
		protect: () => protect(call, sheetAt(call, place), block),
	};
}

export function rangeService(call: Call, place: Place): Range {
	const self = () => served;
	const methods: Methods = {
		...readMethods(call, place),
		...markingMethods(call, [place], self),
		...contentMethods(call, place, self),
		...ruleMethods(call, place, self),
		...styleMethods(call, place, self),
		...moveMethods(call, place, self),
	};
	const served: Range = call.serve<Range>("Range", methods, place);
	return served;
}
