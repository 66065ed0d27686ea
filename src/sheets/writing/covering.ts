/** Few blocks of cells in the place of many. */
import type { Area } from "../reading/a1";

/** A cell that a block has to cover, may cover, or must leave out. */
export type Need = "covered" | "free" | "barred";

type Row = readonly Need[];

/**
 * Blocks that cover every cell that has to be covered and none that is barred.
 *
 * Rows without a barred cell go into one block, as long as they follow each other.
 */
export function blocksOver(cells: readonly Row[]): Area[] {
	const columns = cells.flatMap((row) =>
		row.flatMap((need, column) => (need === "covered" ? [column] : [])),
	);
	if (columns.length === 0) return [];
	const first = Math.min(...columns);
	const width = Math.max(...columns) - first + 1;
	const blocks: Area[] = [];
	let open: Area | undefined;
	cells.forEach((whole, row) => {
		const needs = whole.slice(first, first + width);
		if (needs.includes("barred")) {
			open = undefined;
			blocks.push(...piecesOf(needs, row, first));
		} else if (needs.includes("covered")) {
			if (!open) {
				open = { row, column: first, rows: 1, columns: width };
				blocks.push(open);
			}
			open.rows = row - open.row + 1;
		}
	});
	return blocks;
}

/** The pieces of a row between barred cells that hold something to cover. */
function piecesOf(needs: Row, row: number, first: number): Area[] {
	const pieces: Area[] = [];
	let from = 0;
	for (let column = 0; column <= needs.length; column++) {
		if (column < needs.length && needs[column] !== "barred") continue;
		if (needs.slice(from, column).includes("covered"))
			pieces.push({
				row,
				column: first + from,
				rows: 1,
				columns: column - from,
			});
		from = column + 1;
	}
	return pieces;
}
