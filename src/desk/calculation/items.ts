/** Every formula of the workbook and what it reads, kept from one calculation to the next. */
import type { IUnitRange } from "@univerjs/core";
import {
	IFormulaCurrentConfigService,
	type IFormulaDataItem,
	IOtherFormulaManagerService,
} from "@univerjs/engine-formula";
import type { Block } from "../a1";
import type { Engine } from "../contract";
import {
	cellTree,
	forgetReadings,
	partOf,
	readingOf,
	ruleTrees,
	type Tree,
} from "../engine-private";

/** One formula: of a cell, or of a rule for one of its cells. */
export interface Item {
	tree: Tree;
	/** What it stood for when it was read: another text, another item. */
	text: string;
	reads: { sheetId: string; block: Block }[];
	/** What is called at every calculation: the clock, chance, addresses put together. */
	always: boolean;
	/** Cells it filled last; none for a rule. */
	fills: Block | undefined;
}

const LAST = Number.MAX_SAFE_INTEGER;

/** Whole rows and columns have no numbers on one side. */
function blockOf({ range }: IUnitRange): Block {
	const known = (value: number, open: number) =>
		Number.isNaN(value) ? open : value;
	return {
		startRow: known(range.startRow, 0),
		startColumn: known(range.startColumn, 0),
		endRow: known(range.endRow, LAST),
		endColumn: known(range.endColumn, LAST),
	};
}

async function itemOf(engine: Engine, tree: Tree, text: string): Promise<Item> {
	const { ranges, always } = await readingOf(engine, tree);
	return {
		tree,
		text,
		reads: ranges.map((range) => ({
			sheetId: range.sheetId,
			block: blockOf(range),
		})),
		always,
		fills: undefined,
	};
}

/** Formulas of cells as they stand now, by place. */
function* cellFormulas(engine: Engine) {
	const formulas = partOf(
		engine,
		IFormulaCurrentConfigService,
	).getFormulaData();
	for (const [unitId, sheets] of Object.entries(formulas))
		for (const [sheetId, rows] of Object.entries(sheets ?? {}))
			for (const [row, columns] of Object.entries(rows ?? {}))
				for (const [column, formula] of Object.entries(
					columns as Record<string, IFormulaDataItem | null>,
				)) {
					if (!formula) continue;
					const { f, x = 0, y = 0 } = formula;
					yield {
						key: `${sheetId}:${row}:${column}`,
						text: x || y ? `${f} ${x} ${y}` : f,
						tree: () =>
							cellTree(
								engine,
								{ unitId, sheetId, row: Number(row), column: Number(column) },
								formula,
							),
					};
				}
}

export interface Items {
	/** Reads what has changed since; answers what is new or reads other cells, and what is no longer there. */
	refresh(): Promise<{ added: Set<Item>; removed: Item[] }>;
	all(): Iterable<Item>;
	/** What reads some cell of a block. */
	readersOf(sheetId: string, block: Block): Item[];
	/** Names, tabs, rows or columns have changed: the same text may read other cells now. */
	doubt(): void;
}

export const meet = (a: Block, b: Block): boolean =>
	a.startRow <= b.endRow &&
	b.startRow <= a.endRow &&
	a.startColumn <= b.endColumn &&
	b.startColumn <= a.endColumn;

type Readers = Map<string, { block: Block; item: Item }[]>;

function readersIn(items: Iterable<Item>): Readers {
	const readers: Readers = new Map();
	for (const item of items)
		for (const { sheetId, block } of item.reads) {
			const list = readers.get(sheetId) ?? [];
			list.push({ block, item });
			readers.set(sheetId, list);
		}
	return readers;
}

export function itemsOf(engine: Engine): Items {
	let cells = new Map<string, Item>();
	let rules: Item[] = [];
	let rulesText = "";
	let readers: Readers = new Map();
	let doubted = false;

	/** The item as it was known, where it still is the same. */
	const same = (known: Item | undefined, now: Item): Item => {
		if (!known) return now;
		const isSame =
			known.text === now.text &&
			JSON.stringify(known.reads) === JSON.stringify(now.reads);
		// its tree is another: the tab may have more rows now
		return isSame ? Object.assign(known, { tree: now.tree }) : now;
	};
	const refreshCells = async (added: Set<Item>) => {
		const found = new Map<string, Item>();
		for (const { key, text, tree } of cellFormulas(engine)) {
			const known = cells.get(key);
			const item =
				known?.text === text && !doubted
					? known
					: same(known, await itemOf(engine, tree(), text));
			if (item !== known) added.add(item);
			found.set(key, item);
		}
		const removed = [...cells]
			.filter(([key, item]) => found.get(key) !== item)
			.map(([, item]) => item);
		cells = found;
		return removed;
	};
	const refreshRules = async (added: Set<Item>) => {
		const text = JSON.stringify(
			partOf(engine, IOtherFormulaManagerService).getOtherFormulaData(),
		);
		if (text === rulesText && !doubted) return;
		rulesText = text;
		rules = [];
		for (const tree of ruleTrees(engine)) {
			const item = await itemOf(engine, tree, tree.formula);
			rules.push(item);
			added.add(item);
		}
	};
	return {
		async refresh() {
			const added = new Set<Item>();
			if (doubted) forgetReadings(engine);
			const removed = await refreshCells(added);
			await refreshRules(added);
			doubted = false;
			if (added.size > 0 || removed.length > 0)
				readers = readersIn([...cells.values(), ...rules]);
			return { added, removed };
		},
		*all() {
			yield* cells.values();
			yield* rules;
		},
		readersOf: (sheetId, block) =>
			(readers.get(sheetId) ?? [])
				.filter((reader) => meet(reader.block, block))
				.map(({ item }) => item),
		doubt() {
			doubted = true;
		},
	};
}
