/** Data that must have a range's own size. */
import type { Block } from "../a1";
import { inBlock } from "../book";
import { signature } from "./call";

export const height = (block: Block) => block.endRow - block.startRow + 1;
export const width = (block: Block) => block.endColumn - block.startColumn + 1;

/** What data of exactly the range's size has for each cell. @throws Error as the platform says it. */
export function fitting(
	block: Block,
	data: unknown,
	method: string,
): (row: number, column: number) => unknown {
	if (!Array.isArray(data) || !data.every(Array.isArray))
		throw signature([data], `SpreadsheetApp.Range.${method}`);
	if (data.length !== height(block))
		throw new Error(
			`The number of rows in the data does not match the number of rows in the range. The data has ${data.length} but the range has ${height(block)}.`,
		);
	const strange = data.find((row) => row.length !== width(block));
	if (strange)
		throw new Error(
			`The number of columns in the data does not match the number of columns in the range. The data has ${strange.length} but the range has ${width(block)}.`,
		);
	return inBlock<unknown>(block, data);
}
