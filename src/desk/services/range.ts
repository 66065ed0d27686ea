/** `Range` of the script. */
import type { Call } from "./call";
import type { Place } from "./place";
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
	};
	const served: Range = call.serve<Range>("Range", methods, place);
	return served;
}
