/** Colors, fonts and number formats of a tab. */

import { LOOKS, PAPER, TEXT_SIZE } from "./looks";
import type { PageCell } from "./page";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** Formats new cells: one call for each property. */
export function setForms(range: Range, cells: readonly PageCell[][]): void {
	const each = <T>(of: (cell: PageCell) => T): T[][] =>
		cells.map((row) => row.map(of));
	range
		.setBackgrounds(each(({ look }) => LOOKS[look].background ?? PAPER))
		.setFontColors(each(({ look }) => orNone(LOOKS[look].color)))
		.setFontWeights(each(({ look }) => (LOOKS[look].bold ? "bold" : "normal")))
		.setFontSizes(each(({ look }) => LOOKS[look].size ?? TEXT_SIZE))
		.setNumberFormats(each(({ format }) => format))
		.setHorizontalAlignments(each(({ align }) => align))
		.setWraps(each(({ wrap }) => wrap));
}

/** `null` is the usual color; the published types do not know it. */
const orNone = (color: string | undefined): string => (color ?? null) as string;
