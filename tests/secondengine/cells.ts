/** The cells of a calculated workbook: what stands in them as formulas, and what they show. */
import type { IRange } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { serialOf } from "../../src/desk/dates";
import type { CellValue, Desk } from "../../src/desk/desk";

export type Shown = number | string | boolean;

export interface BookCell {
	tab: string;
	row: number;
	column: number;
	/** As in a file: English, commas, without the sign in front. */
	formula: string | undefined;
	/** Rows and columns that it fills. */
	fills: { rows: number; columns: number };
	shown: Shown;
	/** Nothing at all, which is less than an empty text. */
	isBlank: boolean;
}

export interface BookTab {
	name: string;
	cells: BookCell[];
}

export interface BookData {
	tabs: BookTab[];
	names: { name: string; refersTo: string }[];
}

/** Dates are days in the files. */
const plain = (value: CellValue): Shown =>
	value instanceof Date ? serialOf(value) : value;

function workbookOf(desk: Desk) {
	const facade = desk.engine.api.getActiveWorkbook();
	if (!facade) throw new Error("there is no workbook");
	return facade;
}

/** Everything that the desk's workbook holds. */
export function bookData(desk: Desk): BookData {
	const facade = workbookOf(desk);
	const model = desk.engine.univer.__getInjector().get(FormulaDataModel);
	const spills = model.getArrayFormulaRange()[facade.getId()];
	const spilled = model.getArrayFormulaCellData()[facade.getId()];
	const isBlank = (sheetId: string, row: number, column: number) => {
		const cell = spilled?.[sheetId]?.[row]?.[column];
		return cell !== undefined && (cell?.v ?? null) === null;
	};
	const tabs = facade
		.getWorkbook()
		.getSheets()
		.map((sheet) => {
			const name = sheet.getName();
			const all = facade
				.getSheetByName(name)
				?.getRange(0, 0, sheet.getRowCount(), sheet.getColumnCount())
				.getA1Notation();
			const values = desk.read(name, all ?? "A1");
			const own = spills?.[sheet.getSheetId()];
			const blocks: IRange[] = Object.values(own ?? {}).flatMap((line) =>
				Object.values(line ?? {}),
			);
			const isFilled = (row: number, column: number) =>
				blocks.some(
					(block) =>
						row >= block.startRow &&
						row <= block.endRow &&
						column >= block.startColumn &&
						column <= block.endColumn,
				);
			const cells = values.flatMap((line, row) =>
				line.flatMap((value, column): BookCell[] => {
					const formula = sheet.getCellRaw(row, column)?.f?.replace(/^=/, "");
					// where a spill says nothing there is an empty text
					if (value === "" && !formula && !isFilled(row, column)) return [];
					const spill = own?.[row]?.[column];
					const fills = {
						rows: spill ? spill.endRow - spill.startRow + 1 : 1,
						columns: spill ? spill.endColumn - spill.startColumn + 1 : 1,
					};
					return [
						{
							tab: name,
							row,
							column,
							formula,
							fills,
							shown: plain(value),
							isBlank: isBlank(sheet.getSheetId(), row, column),
						},
					];
				}),
			);
			return { name, cells };
		});
	const names = facade.getDefinedNames().map((defined) => ({
		name: defined.getName(),
		refersTo: defined.getFormulaOrRefString(),
	}));
	return { tabs, names };
}
