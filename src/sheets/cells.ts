/** The cells of blocks, as formulas of other tabs write them. */
import type { Tab } from "../template/plan";
import { a1Of } from "./a1";
import { blockArea } from "./page";
import { quoted } from "./tokens";

const absolute = (a1: string): string =>
	a1.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");

/** `Tones.mix` to `'14 Tones'!$B$3`, for every block with a slot or a name; `names` says what each tab is called. */
export const cellsOf = (
	tabs: readonly Tab[],
	names: Readonly<Record<string, string>>,
): Record<string, string> =>
	Object.fromEntries(
		tabs.flatMap(({ name, blocks }) =>
			blocks.flatMap((block) =>
				[block.slot, block.name].flatMap((key) =>
					key === undefined
						? []
						: [
								[
									`${name}.${key}`,
									`${quoted(names[name] ?? name)}!${absolute(a1Of(blockArea(block)))}`,
								],
							],
				),
			),
		),
	);
