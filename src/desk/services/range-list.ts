/** `RangeList` of the script: one format on many ranges in one call. */
import { type Call, signature } from "./call";
import {
	clearCells,
	sidesOf,
	writeBorders,
	writeStyle,
	writeValues,
} from "./fill";
import type { Place } from "./place";
import { rangeService } from "./range";
import { STYLES } from "./style";

type RangeList = GoogleAppsScript.Spreadsheet.RangeList;
type Methods = Pick<
	RangeList,
	| "clear"
	| "clearContent"
	| "clearFormat"
	| "getRanges"
	| "setBorder"
	| "setValue"
	| keyof typeof STYLES
>;

export function rangeListService(
	call: Call,
	places: readonly Place[],
): RangeList {
	if (places.length === 0)
		throw signature([[]], "SpreadsheetApp.Sheet.getRangeList");
	const styles = Object.fromEntries(
		(Object.keys(STYLES) as (keyof typeof STYLES)[]).map((name) => [
			name,
			(value: unknown) => {
				writeStyle(call, places, name, value);
				return served;
			},
		]),
	) as Pick<RangeList, keyof typeof STYLES>;
	const clearing = (content: boolean, format: boolean) => () => {
		clearCells(call, places, { content, format });
		return served;
	};
	const methods: Methods = {
		...styles,
		getRanges: () => places.map((place) => rangeService(call, place)),
		setBorder(...sides: unknown[]) {
			writeBorders(call, places, sidesOf(sides));
			return served;
		},
		setValue(value: unknown) {
			for (const place of places) writeValues(call, place, () => value);
			return served;
		},
		clear: clearing(true, true),
		clearContent: clearing(true, false),
		clearFormat: clearing(false, true),
	};
	const served: RangeList = call.serve<RangeList>("RangeList", methods);
	return served;
}
