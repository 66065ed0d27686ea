/** `RangeList` of the script: one format on many ranges in one call. */
import { type Call, signature } from "./call";
import { markingMethods } from "./marking";
import type { Place } from "./place";
import { rangeService } from "./range";
import type { STYLES } from "./style";

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
	const methods: Methods = {
		...markingMethods(call, places, () => served),
		getRanges: () => places.map((place) => rangeService(call, place)),
	};
	const served: RangeList = call.serve<RangeList>("RangeList", methods);
	return served;
}
