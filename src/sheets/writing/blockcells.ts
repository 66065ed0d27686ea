/** The cells of blocks, as formulas of other tabs write them. */
import type { Block, Tab } from "../../../templates/plan";
import { type Area, a1Of } from "../reading/a1";
import { blockPlace, type PlacedGrid } from "../reading/blockplace";
import { blockArea, type Page } from "./page";
import { quoted } from "./tokens";

const absolute = (a1: string): string =>
	a1.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** `Mixes.names` to `'Mixes'!$A$5:$A$64`, for every block with a slot or a name that `areaOf` knows the place of. */
const cellsBy = (
	{ name, blocks }: Tab,
	sheet: string,
	areaOf: (block: Block) => Area | undefined,
): Record<string, string> =>
	Object.fromEntries(
		blocks.flatMap((block) => {
			const keys = [block.slot, block.name].filter((key) => key !== undefined);
			const area = keys.length > 0 ? areaOf(block) : undefined;
			if (!area) return [];
			const cells = `${quoted(sheet)}!${absolute(a1Of(area))}`;
			return keys.map((key) => [`${name}.${key}`, cells]);
		}),
	);

/** The blocks of new tabs, which lie as their templates say; `names` says what each tab is called. */
export const cellsOf = (
	tabs: readonly Tab[],
	names: Readonly<Record<string, string>>,
): Record<string, string> =>
	Object.assign(
		{},
		...tabs.map((tab) => cellsBy(tab, names[tab.name] ?? tab.name, blockArea)),
	);

/** Texts of a page by which its cells are found again: those that nobody types over. */
export const textsOf = ({ cells }: Page): string[][] =>
	cells.map((row) =>
		row.map(({ value, look }) =>
			look !== "input" && typeof value === "string" && value.startsWith("'")
				? value.slice(1)
				: "",
		),
	);

/** The blocks of a region of a tab that people have had in their hands. */
export function cellsNow(
	page: Page,
	region: string,
	sheet: string,
	now: PlacedGrid,
): Record<string, string> {
	const made = { region, texts: textsOf(page) };
	return cellsBy(page.tab, sheet, (block) =>
		blockPlace(blockArea(block), made, now),
	);
}
