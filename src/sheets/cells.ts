/** The cells of blocks, as formulas of other tabs write them. */
import type { Block, Tab } from "../template/plan";
import { type Area, a1Of } from "./a1";
import { blockArea } from "./page";
import { quoted } from "./tokens";

/** A tab's table that people made longer by so many rows. */
export interface Grown {
	table: Area;
	rows: number;
}

const absolute = (a1: string): string =>
	a1.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

function areaIn(block: Block, grown: Grown | undefined): Area {
	const area = blockArea(block);
	const isTable =
		area.row === grown?.table.row && area.rows === grown.table.rows;
	return isTable ? { ...area, rows: area.rows + grown.rows } : area;
}

/** `Tones.mix` to `'14 Tones'!$B$3`, for every block with a slot or a name; `names` says what each tab is called. */
export const cellsOf = (
	tabs: readonly Tab[],
	names: Readonly<Record<string, string>>,
	grown: Readonly<Record<string, Grown>> = {},
): Record<string, string> =>
	Object.fromEntries(
		tabs.flatMap(({ name, blocks }) =>
			blocks.flatMap((block) => {
				const area = a1Of(areaIn(block, grown[name]));
				const cells = `${quoted(names[name] ?? name)}!${absolute(area)}`;
				return [block.slot, block.name].flatMap((key) =>
					key === undefined ? [] : [[`${name}.${key}`, cells]],
				);
			}),
		),
	);
