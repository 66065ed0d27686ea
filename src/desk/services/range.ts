/** `Range` of the script. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import { AddWorksheetMergeMutation } from "@univerjs/sheets";
import {
	AddSheetDataValidationCommand,
	ClearRangeDataValidationCommand,
} from "@univerjs/sheets-data-validation";
import {
	RemoveNoteMutation,
	SheetsNoteModel,
	UpdateNoteMutation,
} from "@univerjs/sheets-note";
import { type Block, formatA1 } from "../a1";
import { type Cell, mapBlock } from "../book";
import { isDate, isDatePattern, serialOf } from "../dates";
import {
	displayAt,
	formulaAt,
	isCalculated,
	patternAt,
	styleAt,
	valueAt,
} from "../values";
import { engineFormula, NO_CONTENT, typedCell } from "../writing";
import { type Call, signature } from "./call";
import { change, changeCells } from "./change";
import { activate, type Place, placeBySize, placeOn, sheetAt } from "./place";
import { protect } from "./protection";
import { sheetService } from "./sheet";
import { bordersAt, type Sides, STYLES } from "./style";
import { builtRule, checkValid } from "./validation";

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

const height = (block: Block) => block.endRow - block.startRow + 1;
const width = (block: Block) => block.endColumn - block.startColumn + 1;

/** Rows of exactly the range's size. @throws Error as the platform says it. */
function fitting(block: Block, data: unknown, method: string): unknown[][] {
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
	return data;
}

function contentFor(
	call: Call,
	sheet: Worksheet,
	row: number,
	column: number,
	value: unknown,
): Cell {
	const { book } = call.host;
	if (value === null || value === undefined || value === "") return NO_CONTENT;
	if (isDate(value)) {
		const dated = isDatePattern(patternAt(book, sheet, row, column));
		const style = dated ? {} : { s: { n: { pattern: "yyyy-mm-dd" } } };
		return {
			...NO_CONTENT,
			v: serialOf(value),
			t: CellValueType.NUMBER,
			...style,
		};
	}
	if (typeof value === "boolean")
		return { ...NO_CONTENT, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
	if (typeof value === "number" && Number.isFinite(value))
		return { ...NO_CONTENT, v: value, t: CellValueType.NUMBER };
	if (typeof value !== "string")
		throw new Error(`${String(value)} cannot be kept in a cell`);
	if (value.length > 50_000)
		throw new Error(
			"Your input contains more than the maximum of 50000 characters in a single cell.",
		);
	return typedCell(book, sheet, row, column, value, "script");
}

/** Writes values into places; each is parsed as if it were typed there. */
export function writeValues(
	call: Call,
	place: Place,
	inputAt: (row: number, column: number) => unknown,
): void {
	const sheet = sheetAt(call, place);
	const { startRow, startColumn } = place.block;
	changeCells(call, sheet, [place.block], (row, column) => {
		const value = inputAt(row - startRow, column - startColumn);
		const cell = contentFor(call, sheet, row, column, value);
		if (cell?.v !== null && cell?.v !== undefined)
			checkValid(call.host.book, sheet, row, column, cell.v);
		return cell;
	});
}

/** Puts a format on all cells of the places, in one command a tab. */
export function writeStyle(
	call: Call,
	places: readonly Place[],
	method: keyof typeof STYLES,
	value: unknown,
): void {
	const style = STYLES[method](value, `SpreadsheetApp.Range.${method}`);
	for (const sheetId of new Set(places.map((place) => place.sheetId))) {
		const own = places.filter((place) => place.sheetId === sheetId);
		changeCells(
			call,
			sheetAt(call, { sheetId }),
			own.map(({ block }) => block),
			() => ({ s: style }),
		);
	}
}

/** Draws lines around and inside each place. */
export function writeBorders(
	call: Call,
	places: readonly Place[],
	sides: Sides,
): void {
	for (const place of places)
		changeCells(
			call,
			sheetAt(call, place),
			[place.block],
			(row, column, block) => ({
				s: {
					bd: bordersAt(sides, {
						top: row === block.startRow,
						bottom: row === block.endRow,
						left: column === block.startColumn,
						right: column === block.endColumn,
					}),
				},
			}),
		);
}

/** The arguments of `setBorder`, which Range and RangeList share. */
export function sidesOf(args: readonly unknown[]): Sides {
	const on = (index: number) => (args[index] ?? null) as boolean | null;
	return {
		top: on(0),
		left: on(1),
		bottom: on(2),
		right: on(3),
		vertical: on(4),
		horizontal: on(5),
		color: (args[6] ?? null) as string | null,
		style: (args[7] ?? null) as string | null,
	};
}

/** Takes away content, formats or both. */
export function clearCells(
	call: Call,
	places: readonly Place[],
	what: { content: boolean; format: boolean },
): void {
	for (const place of places)
		changeCells(call, sheetAt(call, place), [place.block], () => ({
			...(what.content ? NO_CONTENT : {}),
			...(what.format ? { s: null } : {}),
		}));
}

/** Gives cells, from the top left of `to` on, the formats of `from`. */
function copyFormats(call: Call, from: Place, to: Place): void {
	const sheet = sheetAt(call, to);
	const { startRow, startColumn } = to.block;
	const target = placeBySize(sheet, [
		startRow + 1,
		startColumn + 1,
		height(from.block),
		width(from.block),
	]);
	clearCells(call, [target], { content: false, format: true });
	const source = sheetAt(call, from);
	changeCells(call, sheet, [target.block], (row, column) => ({
		s: styleAt(
			call.host.book,
			source,
			from.block.startRow + row - startRow,
			from.block.startColumn + column - startColumn,
		),
	}));
}

function writeNote(
	call: Call,
	sheet: Worksheet,
	row: number,
	column: number,
	note: unknown,
): void {
	const sheetId = sheet.getSheetId();
	const cell = { sheetId, row, col: column };
	const notes = call.host.book.engine.univer
		.__getInjector()
		.get(SheetsNoteModel);
	const old = notes.getNote(call.host.book.workbook.getId(), sheetId, {
		row,
		col: column,
	});
	if (note === null || note === "") {
		if (old) change(call, sheet, RemoveNoteMutation.id, cell);
		return;
	}
	change(call, sheet, UpdateNoteMutation.id, {
		...cell,
		note: {
			id: `note_${sheetId}_${row}_${column}`,
			row,
			col: column,
			width: 220,
			height: 90,
			note: String(note),
			show: false,
		},
	});
}

function noteAt(call: Call, sheet: Worksheet, row: number, column: number) {
	const { book } = call.host;
	const notes = book.engine.univer.__getInjector().get(SheetsNoteModel);
	const found = notes.getNote(book.workbook.getId(), sheet.getSheetId(), {
		row,
		col: column,
	});
	return found?.note ?? "";
}

/** @throws Error for a calculated cell once the call has written: it may still be calculating. */
function checkReadable(call: Call, sheet: Worksheet, block: Block): void {
	if (!call.written) return;
	mapBlock(block, (row, column) => {
		if (!isCalculated(call.host.book, sheet, row, column)) return;
		const cell = formatA1({
			startRow: row,
			endRow: row,
			startColumn: column,
			endColumn: column,
		});
		throw new Error(
			`${sheet.getName()}!${cell} is calculated and this call has already written: read first, write last`,
		);
	});
}

function readMethods(call: Call, place: Place) {
	const { book } = call.host;
	const { block } = place;
	const sheet = () => sheetAt(call, place);
	const each = <T>(read: (on: Worksheet, row: number, column: number) => T) => {
		const on = sheet();
		return mapBlock(block, (row, column) => read(on, row, column));
	};
	const values = () => {
		checkReadable(call, sheet(), block);
		return each((on, row, column) => valueAt(book, on, row, column));
	};
	const shown = () => {
		checkReadable(call, sheet(), block);
		return each((on, row, column) => displayAt(book, on, row, column));
	};
	const formulas = () =>
		each((on, row, column) => formulaAt(book, on, row, column));
	const notes = () => each((on, row, column) => noteAt(call, on, row, column));
	const formats = () =>
		each((on, row, column) => patternAt(book, on, row, column));
	const first = <T>(rows: T[][]) => rows[0]?.[0] as T;
	return {
		getValues: values,
		getValue: () => first(values()),
		getDisplayValues: shown,
		getDisplayValue: () => first(shown()),
		getFormulas: formulas,
		getFormula: () => first(formulas()),
		getNotes: notes,
		getNote: () => first(notes()),
		getNumberFormats: formats,
		getNumberFormat: () => first(formats()),
		getBackground: () =>
			styleAt(book, sheet(), block.startRow, block.startColumn).bg?.rgb ??
			"#ffffff",
		isBlank: () =>
			values()
				.flat()
				.every((value) => value === ""),
		getA1Notation: () => formatA1(block),
		getRow: () => block.startRow + 1,
		getColumn: () => block.startColumn + 1,
		getLastRow: () => block.endRow + 1,
		getLastColumn: () => block.endColumn + 1,
		getNumRows: () => height(block),
		getNumColumns: () => width(block),
	};
}

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
		copyTo(destination: unknown, options: unknown = null) {
			const formatOnly =
				(options as { formatOnly?: boolean } | null)?.formatOnly === true;
			if (!formatOnly)
				throw signature([destination, options], "SpreadsheetApp.Range.copyTo");
			copyFormats(call, place, call.inner<Place>(destination, "Range"));
		},
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
				change(call, sheet(), "sheet.mutation.remove-worksheet-merge", {
					ranges: merged,
				});
			return self();
		},
	};
}

function setRule(call: Call, sheet: Worksheet, block: Block, rule: unknown) {
	if (rule === null || rule === undefined) {
		change(call, sheet, ClearRangeDataValidationCommand.id, {
			ranges: [{ ...block }],
		});
		return;
	}
	const uid = `choice_${sheet.getSheetId()}_${formatA1(block)}`;
	change(call, sheet, AddSheetDataValidationCommand.id, {
		rule: { ...builtRule(call, rule), uid, ranges: [{ ...block }] },
	});
}

function ruleMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const set = (on: Block, rule: unknown) =>
		setRule(call, sheetAt(call, place), on, rule);
	return {
		setDataValidation(rule: unknown) {
			set(block, rule);
			return self();
		},
		setDataValidations(rules: unknown) {
			const rows = fitting(block, rules, "setDataValidations");
			mapBlock(block, (row, column) =>
				set(
					{
						startRow: row,
						endRow: row,
						startColumn: column,
						endColumn: column,
					},
					rows[row - block.startRow]?.[column - block.startColumn],
				),
			);
			return self();
		},
		clearDataValidations() {
			set(block, null);
			return self();
		},
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
			changeCells(call, sheetAt(call, place), [place.block], (row, column) => ({
				s: STYLES[name](
					rows[row - place.block.startRow]?.[
						column - place.block.startColumn
					] ?? null,
					method,
				),
			}));
			return self();
		};
		return [
			[name, one],
			[pluralOf(name), many],
		];
	});
	return Object.fromEntries(methods) as Pick<Range, keyof typeof STYLES>;
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
	sheet?.setActiveSelection(sheet.getRange(formatA1(place.block)));
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
