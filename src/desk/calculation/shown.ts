/** What a formula shows, and over which cells. */
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Block } from "../a1";
import { mapBlock, type Workbook } from "../book";
import type { Engine } from "../contract";
import { partOf } from "../engine-private";
import type { Item } from "./items";

export interface Shown {
	/** Whether its spill finds no room. */
	isBlocked(item: Item): boolean;
	/** The cells it fills: one where its spill finds no room, none for a rule. */
	fills(item: Item): Block | undefined;
	/** All that it shows, as text. */
	content(item: Item): string;
}

const BLOCKED = "#SPILL!";

const alone = ({ tree: { row, column } }: Item): Block => ({
	startRow: row,
	startColumn: column,
	endRow: row,
	endColumn: column,
});

export function shownIn(engine: Engine, workbook: Workbook): Shown {
	const data = () => partOf(engine, FormulaDataModel);
	const value = ({ tree }: Item) =>
		workbook
			.getWorkbook()
			.getSheetBySheetId(tree.subUnitId)
			?.getCellRaw(tree.row, tree.column)?.v;
	const spill = ({ tree }: Item): Block | undefined =>
		data().getArrayFormulaRange()[tree.unitId]?.[tree.subUnitId]?.[tree.row]?.[
			tree.column
		];
	const isBlocked = (item: Item) => value(item) === BLOCKED;
	const fills = (item: Item): Block | undefined => {
		if (item.tree.formulaId !== undefined) return undefined;
		return (isBlocked(item) ? undefined : spill(item)) ?? alone(item);
	};
	return {
		isBlocked,
		fills,
		content(item) {
			const { unitId, subUnitId } = item.tree;
			const cells = data().getArrayFormulaCellData()[unitId]?.[subUnitId];
			const block = fills(item);
			const spilled = block
				? mapBlock(block, (row, column) => cells?.[row]?.[column]?.v)
				: [];
			return JSON.stringify([value(item), spilled]);
		},
	};
}
