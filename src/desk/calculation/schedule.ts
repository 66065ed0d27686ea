/**
 * What the engine calculates, and in which order, in place of its own choice.
 *
 * Its own follows a formula's cell, not the cells the formula spills over, so that numbers behind a spill stay old
 * unless everything is calculated twice. This one knows the spills: an edit costs what depends on it.
 */
import type { IUnitRange } from "@univerjs/core";
import type { Block } from "../a1";
import type { Workbook } from "../book";
import type { Engine } from "../contract";
import { chooseFormulas } from "../engine-private";
import { type Item, itemsOf, meet } from "./items";
import { downstream, ordered } from "./order";
import { passOf } from "./pass";
import { shownIn } from "./shown";

/** An item as it was before a calculation. */
interface Before {
	item: Item;
	fills: Block | undefined;
	value: string | undefined;
}

export interface Schedule {
	/** Names, tabs, rows or columns have changed. */
	doubt(): void;
	/** Cells that must be looked at again after the last calculation; none when all is at rest. */
	followUp(): IUnitRange[];
	/** Gives the engine its own choice back. */
	dispose(): void;
}

/** In an order of chance: the platform has none that a formula could count on, but that what is read comes first. */
function shuffled<T>(list: T[]): T[] {
	for (let last = list.length - 1; last > 0; last--) {
		const other = Math.floor(Math.random() * (last + 1));
		[list[last], list[other]] = [list[other] as T, list[last] as T];
	}
	return list;
}

export function schedule(engine: Engine, workbook: Workbook): Schedule {
	const pass = passOf(engine);
	const items = itemsOf(engine);
	let before: Before[] = [];
	const shown = shownIn(engine, workbook);
	const dependentsOf = (item: Item) =>
		item.fills ? items.readersOf(item.tree.subUnitId, item.fills) : [];

	/** Items that the engine's list of changes, and what is new or gone, make wrong. */
	const outdated = (added: ReadonlySet<Item>, removed: readonly Item[]) => {
		if (pass.isForced()) return [...items.all()];
		const changed = [
			...pass.dirtyRanges(),
			...removed.flatMap(({ tree, fills }) =>
				fills ? [{ sheetId: tree.subUnitId, range: fills }] : [],
			),
		];
		const found = new Set(added);
		const bySheet = new Map<string, Block[]>();
		for (const { sheetId, range } of changed) {
			for (const item of items.readersOf(sheetId, range)) found.add(item);
			const ranges = bySheet.get(sheetId);
			if (ranges) ranges.push(range);
			else bySheet.set(sheetId, [range]);
		}
		const rules = pass.dirtyRules();
		for (const item of items.all()) {
			const { subUnitId, formulaId } = item.tree;
			const isWrong =
				formulaId === undefined
					? shown.isBlocked(item) ||
						(bySheet.get(subUnitId) ?? []).some(
							(range) => item.fills !== undefined && meet(range, item.fills),
						)
					: rules.has(formulaId);
			if (isWrong) found.add(item);
		}
		return found;
	};

	const choose = async () => {
		if (pass.isAfterSpills()) return [];
		const { added, removed } = await items.refresh();
		for (const item of items.all()) item.fills = shown.fills(item);
		const wrong = outdated(added, removed);
		const always = [...items.all()].filter((item) => item.always);
		const wanted = new Set(
			shuffled([...downstream(wrong, dependentsOf), ...always]),
		);
		const { list, circular } = ordered(wanted, dependentsOf);
		if (circular.size > 0) pass.allowCircles();
		before = list.map((item) => ({
			item,
			fills: item.fills,
			value:
				item.always || circular.has(item) ? shown.content(item) : undefined,
		}));
		pass.forgetSpills();
		return list.map(({ tree }) => tree);
	};
	return {
		doubt: items.doubt,
		followUp() {
			const looked = before;
			before = [];
			return looked.flatMap(({ item, fills, value }) => {
				const now = shown.fills(item);
				item.fills = now;
				const moved = JSON.stringify(now) !== JSON.stringify(fills);
				const other = value !== undefined && value !== shown.content(item);
				if (!moved && !other) return [];
				const { unitId, subUnitId: sheetId } = item.tree;
				return [fills, now].flatMap((range) =>
					range ? [{ unitId, sheetId, range }] : [],
				);
			});
		},
		dispose: chooseFormulas(engine, choose),
	};
}
