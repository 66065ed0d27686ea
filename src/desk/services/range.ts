/** `Range` of the script. */
import {
	AddWorksheetMergeMutation,
	RemoveWorksheetMergeMutation,
} from "@univerjs/sheets";
import { formatA1 } from "../a1";
import { mapBlock } from "../book";
import { showSelected } from "../hand";
import { engineFormula, NO_CONTENT } from "../writing";
import { type Call, signature } from "./call";
import { change, changeCells } from "./change";
import { setChoices } from "./choice";
import {
	clearCells,
	sidesOf,
	writeBorders,
	writeStyle,
	writeValues,
} from "./fill";
import { fitting, height, width } from "./fitting";
import { writeNote } from "./notes";
import { copyCells } from "./paste";
import { activate, type Place, placeBySize, placeOn, sheetAt } from "./place";
import { protect } from "./protection";
import { readMethods } from "./range-reading";
import { sheetService } from "./sheet";
import { STYLES } from "./style";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Methods = Pick<
	Range,
	| "activate"
	| "breakApart"
	| "clear"
	| "clearContent"
	| "clearDataValidations"
	| "clearFormat"
	| "clearNote"
	| "copyTo"
	| "getA1Notation"
	| "getBackground"
	| "getCell"
	| "getColumn"
	| "getDisplayValue"
	| "getDisplayValues"
	| "getFormula"
	| "getFormulas"
	| "getLastColumn"
	| "getLastRow"
	| "getNote"
	| "getNotes"
	| "getNumColumns"
	| "getNumberFormat"
	| "getNumberFormats"
	| "getNumRows"
	| "getRow"
	| "getSheet"
	| "getValue"
	| "getValues"
	| "isBlank"
	| "merge"
	| "offset"
	| "protect"
	| "setBorder"
	| "setDataValidation"
	| "setDataValidations"
	| "setFormula"
	| "setFormulas"
	| "setNote"
	| "setNotes"
	| "setValue"
	| "setValues"
	| keyof typeof STYLES
>;

function writeMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const sheet = () => sheetAt(call, place);
	const formulaFor = (formula: unknown, method: string) => {
		if (typeof formula !== "string")
			throw signature([formula], `SpreadsheetApp.Range.${method}`);
		return formula === ""
			? NO_CONTENT
			: {
					...NO_CONTENT,
					f: engineFormula(call.host.book, sheet(), formula, "script"),
				};
	};
	const eachCell = (write: (row: number, column: number) => void) => {
		mapBlock(block, write);
		return self();
	};
	return {
		setValue(value: unknown) {
			writeValues(call, place, () => value);
			return self();
		},
		setValues(values: unknown) {
			const rows = fitting(block, values, "setValues");
			writeValues(call, place, (row, column) => rows[row]?.[column]);
			return self();
		},
		setFormula(formula: unknown) {
			const cell = formulaFor(formula, "setFormula");
			changeCells(call, sheet(), [block], () => cell);
			return self();
		},
		setFormulas(formulas: unknown) {
			const rows = fitting(block, formulas, "setFormulas");
			changeCells(call, sheet(), [block], (row, column) =>
				formulaFor(
					rows[row - block.startRow]?.[column - block.startColumn],
					"setFormulas",
				),
			);
			return self();
		},
		setNote: (note: unknown) =>
			eachCell((row, column) => writeNote(call, sheet(), row, column, note)),
		setNotes(notes: unknown) {
			const rows = fitting(block, notes, "setNotes");
			return eachCell((row, column) =>
				writeNote(
					call,
					sheet(),
					row,
					column,
					rows[row - block.startRow]?.[column - block.startColumn] ?? null,
				),
			);
		},
		clearNote: () =>
			eachCell((row, column) => writeNote(call, sheet(), row, column, null)),
		setBorder(...args: unknown[]) {
			writeBorders(call, [place], sidesOf(args));
			return self();
		},
		copyTo: (...args: unknown[]) => copyCells(call, place, args),
		clearContent() {
			clearCells(call, [place], { content: true, format: false });
			return self();
		},
		clearFormat() {
			clearCells(call, [place], { content: false, format: true });
			return self();
		},
		clear() {
			clearCells(call, [place], { content: true, format: true });
			return self();
		},
		merge() {
			change(call, sheet(), AddWorksheetMergeMutation.id, {
				ranges: [{ ...block }],
			});
			return self();
		},
		breakApart() {
			const merged = sheet()
				.getConfig()
				.mergeData.filter(
					(cells) =>
						cells.startRow >= block.startRow &&
						cells.endRow <= block.endRow &&
						cells.startColumn >= block.startColumn &&
						cells.endColumn <= block.endColumn,
				);
			if (merged.length > 0)
				change(call, sheet(), RemoveWorksheetMergeMutation.id, {
					ranges: merged,
				});
			return self();
		},
	};
}

function ruleMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const set = (ruleAt: (row: number, column: number) => unknown) => {
		setChoices(call, sheetAt(call, place), block, ruleAt);
		return self();
	};
	return {
		setDataValidation: (rule: unknown) => set(() => rule),
		setDataValidations(rules: unknown) {
			const rows = fitting(block, rules, "setDataValidations");
			return set(
				(row, column) =>
					rows[row - block.startRow]?.[column - block.startColumn],
			);
		},
		clearDataValidations: () => set(() => null),
	};
}

function styleMethods(call: Call, place: Place, self: () => Range) {
	const names = Object.keys(STYLES) as (keyof typeof STYLES)[];
	const methods = names.flatMap((name) => {
		const one = (value: unknown) => {
			writeStyle(call, [place], name, value);
			return self();
		};
		const many = (values: unknown) => {
			const plural = pluralOf(name);
			const rows = fitting(place.block, values, plural);
			const method = `SpreadsheetApp.Range.${plural}`;
			const cellFor = once((value) => ({ s: STYLES[name](value, method) }));
			const { startRow, startColumn } = place.block;
			changeCells(call, sheetAt(call, place), [place.block], (row, column) =>
				cellFor(rows[row - startRow]?.[column - startColumn] ?? null),
			);
			return self();
		};
		return [
			[name, one],
			[pluralOf(name), many],
		];
	});
	return Object.fromEntries(methods) as Pick<Range, keyof typeof STYLES>;
}

/** A function that makes one answer of each value and gives that one again. */
function once<T>(make: (value: unknown) => T): (value: unknown) => T {
	const made = new Map<unknown, T>();
	return (value) => {
		const known = made.get(value) ?? make(value);
		made.set(value, known);
		return known;
	};
}

const pluralOf = (name: string) =>
	name === "setFontFamily"
		? "setFontFamilies"
		: name === "setWrapStrategy"
			? "setWrapStrategies"
			: `${name}s`;

/** Opens the tab and selects the cells. */
export function activateCells(call: Call, place: Place): void {
	activate(call, place);
	const sheet = call.host.book.workbook.getSheetBySheetId(place.sheetId);
	if (sheet) showSelected(sheet, formatA1(place.block));
}

function moveMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const at = (row: number, column: number, rows: number, columns: number) =>
		rangeService(
			call,
			placeBySize(sheetAt(call, place), [row, column, rows, columns]),
		);
	return {
		getSheet: () => sheetService(call, place),
		getCell: (row: number, column: number) =>
			rangeService(
				call,
				placeOn(sheetAt(call, place), {
					startRow: block.startRow + row - 1,
					endRow: block.startRow + row - 1,
					startColumn: block.startColumn + column - 1,
					endColumn: block.startColumn + column - 1,
				}),
			),
		offset: (
			rows: number,
			columns: number,
			numRows = height(block),
			numColumns = width(block),
		) =>
			at(
				block.startRow + 1 + rows,
				block.startColumn + 1 + columns,
				numRows,
				numColumns,
			),
		activate() {
			activateCells(call, place);
			return self();
		},
		protect: () => protect(call, sheetAt(call, place), block),
	};
}

export function rangeService(call: Call, place: Place): Range {
	const self = () => served;
	const methods: Methods = {
		...readMethods(call, place),
		...writeMethods(call, place, self),
		...ruleMethods(call, place, self),
		...styleMethods(call, place, self),
		...moveMethods(call, place, self),
	};
	const served: Range = call.serve<Range>("Range", methods, place);
	return served;
}
