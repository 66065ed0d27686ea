import type { IWorkbookData } from "@univerjs/core";
import type { SavedWorkbook } from "./contract";

let opened = 0;

/**
 * What the engine opens: the kept workbook, or one blank tab.
 *
 * The engine's caches are kept by id in its modules, so every workbook gets a fresh one.
 */
export function snapshot(
	saved: SavedWorkbook | undefined,
): Partial<IWorkbookData> {
	opened += 1;
	const id = `workbook${opened}`;
	// the engine goes on working in what it is given: what was kept stays as it is
	if (saved)
		return {
			...(structuredClone(saved.workbook) as Partial<IWorkbookData>),
			id,
		};
	return {
		id,
		name: "Workbook",
		sheetOrder: ["tab0"],
		sheets: {
			tab0: {
				id: "tab0",
				name: "Sheet1",
				rowCount: 1000,
				columnCount: 26,
				defaultColumnWidth: 100,
				defaultRowHeight: 21,
				defaultStyle: { ff: "Arial", fs: 10, vt: 3 },
			},
		},
	};
}
