/** Blocks of cells in A1 notation. */

/** Rows and columns counted from 0. */
export interface Area {
	row: number;
	column: number;
	rows: number;
	columns: number;
}

const CELL = /^([A-Z]+)(\d+)$/;

/** Column letters as a count from 0: `A` is 0, `AA` is 26. */
export const columnIndex = (letters: string): number =>
	[...letters].reduce(
		(sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
		0,
	) - 1;

/** Letters of a column counted from 0. */
export function columnLetters(index: number): string {
	const last = String.fromCharCode(65 + (index % 26));
	return index < 26 ? last : columnLetters(Math.floor(index / 26) - 1) + last;
}

function cellAt(a1: string): [row: number, column: number] {
	const [, letters = "", row = ""] = CELL.exec(a1) ?? [];
	if (!letters) throw new Error(`${a1} is not a cell`);
	return [Number(row) - 1, columnIndex(letters)];
}

/** The area of `B2` or `B2:C4`. */
export function areaOf(a1: string): Area {
	const [first = "", last = first] = a1.split(":");
	const [row, column] = cellAt(first);
	const [lastRow, lastColumn] = cellAt(last);
	return {
		row,
		column,
		rows: lastRow - row + 1,
		columns: lastColumn - column + 1,
	};
}

/** The area's A1 notation; one cell is `B2`. */
export function a1Of({ row, column, rows, columns }: Area): string {
	const first = `${columnLetters(column)}${row + 1}`;
	const last = `${columnLetters(column + columns - 1)}${row + rows}`;
	return first === last ? first : `${first}:${last}`;
}
