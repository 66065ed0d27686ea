/** Which tabs depend on what a call takes away. */
import {
	FormulaDataModel,
	type IFormulaDataItem,
} from "@univerjs/engine-formula";
import type { Book } from "../book";
import { partOf } from "../engine-private";

/** Tabs with a formula that has this word in it: the name of a tab or of cells. */
export function tabsMentioning({ engine, workbook }: Book, word: string) {
	const sought = word.replace(/'/g, "''").toLowerCase();
	const { [workbook.getId()]: tabs } = partOf(
		engine,
		FormulaDataModel,
	).getFormulaData();
	return Object.entries(tabs ?? {})
		.filter(([, formulas]) =>
			Object.values(formulas ?? {})
				.flatMap((row) => Object.values<IFormulaDataItem | null>(row))
				.some((cell) => cell?.f.toLowerCase().includes(sought)),
		)
		.map(([sheetId]) => sheetId);
}
