/** A tab as text: what a person sees of it, in columns. */

/** Cells as shown; `null` where a column or row is out of sight. */
export interface Shown {
	rows: readonly string[][];
	/** Which columns hold numbers, and so stand to the right. */
	isNumber(row: number, column: number): boolean;
}

const GAP = "  ";

/** A text with only blank cells after it may run over them, so it makes no column wide. */
const runsOver = (row: readonly string[], column: number) =>
	row.slice(column + 1).every((cell) => cell === "");

function columnWidths(rows: readonly string[][]): number[] {
	const count = Math.max(0, ...rows.map((row) => row.length));
	return Array.from({ length: count }, (_, column) =>
		Math.max(
			0,
			...rows.map((row) =>
				runsOver(row, column) && row.slice(0, column).every((cell) => !cell)
					? 0
					: (row[column]?.length ?? 0),
			),
		),
	);
}

/** Aligned text; blank columns are left out, and of several blank rows one stays. */
export function textTable({ rows, isNumber }: Shown): string {
	const flat = rows.map((row) => row.map((cell) => cell.replace(/\s+/g, " ")));
	const widths = columnWidths(flat);
	const used = widths
		.map((_, column) => column)
		.filter((column) => flat.some((row) => row[column]));
	const lines = flat.map((row, index) =>
		used
			.map((column) => {
				const cell = row[column] ?? "";
				const width = widths[column] ?? 0;
				return isNumber(index, column)
					? cell.padStart(width)
					: cell.padEnd(width);
			})
			.join(GAP)
			.trimEnd(),
	);
	return lines
		.filter((line, index) => line !== "" || lines[index - 1] !== "")
		.join("\n")
		.trim();
}
