/** Colors, fonts and number formats of a tab. */

import { LOOKS, PAPER, TEXT_SIZE } from "./looks";
import type { PageCell } from "./page";
import type { Grid } from "./tabranges";

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
		.setNumberFormats(each((cell) => cell.format))
		.setHorizontalAlignments(each(({ align }) => align));
	const sizes = each(sizeOf);
	if (!hasTitleOnly(sizes)) range.setFontSizes(sizes);
	if (cells.flat().some(({ wrap }) => wrap))
		range.setWraps(each(({ wrap }) => wrap));
}

const sizeOf = ({ look }: PageCell): number => LOOKS[look].size ?? TEXT_SIZE;

/** A new tab has the size of its title already. */
const hasTitleOnly = (sizes: readonly (readonly number[])[]): boolean =>
	sizes.every((row, at) =>
		row.every(
			(size, column) =>
				size === (at + column === 0 ? LOOKS.title.size : TEXT_SIZE),
		),
	);

/** `null` is the usual color; the published types do not know it. */
const orNone = (color: string | undefined): string => (color ?? null) as string;
