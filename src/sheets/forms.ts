/** Colors, fonts and number formats of a tab. */
import type { Grid } from "./grid";
import { LOOKS, PAPER, TEXT_SIZE } from "./looks";
import type { PageCell } from "./page";

/** Formats a new tab: one call for each property that any of its cells has. */
export function setForms({ page, cells: range }: Grid): void {
	const { cells } = page;
	const each = <T>(of: (cell: PageCell) => T): T[][] =>
		cells.map((row) => row.map(of));
	range
		.setBackgrounds(
			each(({ look, paper }) =>
				orNone(LOOKS[look].background ?? (paper ? PAPER : undefined)),
			),
		)
		.setFontColors(each(({ look }) => orNone(LOOKS[look].color)))
		.setFontWeights(each(({ look }) => (LOOKS[look].bold ? "bold" : "normal")))
		.setFontSizes(each(({ look }) => LOOKS[look].size ?? TEXT_SIZE))
		.setNumberFormats(each((cell) => cell.format))
		.setHorizontalAlignments(each(({ align }) => align));
	if (cells.flat().some(({ wrap }) => wrap))
		range.setWraps(each(({ wrap }) => wrap));
}

/** `null` is the usual color; the published types do not know it. */
const orNone = (color: string | undefined): string => (color ?? null) as string;
