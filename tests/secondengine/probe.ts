/** What the LibreOffice at hand gets wrong, asked of itself. */
import type { BookCell, BookData, Shown } from "./cells";

type Made = Pick<BookCell, "row" | "column"> & Partial<BookCell>;

const cell = (made: Made): BookCell => ({
	tab: "Probe",
	formula: undefined,
	fills: { rows: 1, columns: 1 },
	shown: "",
	isBlank: false,
	...made,
});

/**
 * 2, 4, 6 divided by 1, "none", 2, and joined to it: `2x1`, nothing, `3x2`.
 *
 * LibreOffice 7.4 joins `3x2` to the error's row and has nothing left for its own.
 */
export const PROBE: BookData = {
	names: [],
	tabs: [
		{
			name: "Probe",
			cells: [
				cell({ row: 0, column: 0, shown: 2 }),
				cell({ row: 0, column: 1, shown: 1 }),
				cell({
					row: 0,
					column: 2,
					formula: 'ARRAYFORMULA(IF(ISNUMBER(B1:B3),A1:A3/B1:B3&"x"&B1:B3,""))',
					fills: { rows: 3, columns: 1 },
				}),
				cell({ row: 1, column: 0, shown: 4 }),
				cell({ row: 1, column: 1, shown: "none" }),
				cell({ row: 2, column: 0, shown: 6 }),
				cell({ row: 2, column: 1, shown: 2 }),
			],
		},
	],
};

/** Whether columns with errors in them are joined row by row. */
export function joinsErrors(
	calculated: ReadonlyMap<string, ReadonlyMap<string, Shown>>,
): boolean {
	const probe = calculated.get("Probe");
	const shown = ["C1", "C2", "C3"].map((at) => probe?.get(at));
	return JSON.stringify(shown) === JSON.stringify(["2x1", "", "3x2"]);
}

/** A formula that joins columns where one of them may hold errors: what is divided, what is looked up. */
export function joinsWhatMayFail(formula: string): boolean {
	const bare = formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/\d\/\d+/g, "");
	return (
		/\bARRAYFORMULA\(/.test(bare) &&
		bare.includes("&") &&
		/\/|\bVLOOKUP\(/.test(bare)
	);
}
