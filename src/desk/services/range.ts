/** `Range` of the script. */
import type { Call } from "./call";
import { type Place, placeOn, sheetAt } from "./place";
import { readMethods } from "./range-reading";
import {
	contentMethods,
	ruleMethods,
	type StyleMethod,
	styleMethods,
} from "./range-writing";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Methods = Pick<
	Range,
	| "clearContent"
	| "copyTo"
	| "getA1Notation"
	| "getBackground"
	| "getColumn"
	| "getFormula"
	| "getFormulas"
	| "getNote"
	| "getNumberFormats"
	| "getNumRows"
	| "getRow"
	| "getSheet"
	| "getValue"
	| "getValues"
	| "isBlank"
	| "offset"
	| "setDataValidation"
	| "setDataValidations"
	| "setFormula"
	| "setFormulas"
	| "setNote"
	| "setNotes"
	| "setValue"
	| "setValues"
	| StyleMethod
>;

export function rangeService(call: Call, place: Place): Range {
	const self = () => served;
	const methods: Methods = {
		...readMethods(call, place),
		...contentMethods(call, place, self),
		...ruleMethods(call, place, self),
		...styleMethods(call, place, self),
		getSheet: () => call.sheetOf(place),
		offset: (rows: number, columns: number, ...size: unknown[]) => {
			const [height, width] = [Number(size[0] ?? 1), Number(size[1] ?? 1)];
			const { startRow, startColumn } = place.block;
			const [row, column] = [startRow + rows, startColumn + columns];
			const block = {
				startRow: row,
				startColumn: column,
				endRow: row + height - 1,
				endColumn: column + width - 1,
			};
			return rangeService(call, placeOn(sheetAt(call, place), block));
		},
	};
	const served: Range = call.serve<Range>("Range", methods, place);
	return served;
}
