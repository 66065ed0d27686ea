/** What a range of the script can be told to change. */
import {
	AddWorksheetMergeMutation,
	RemoveWorksheetMergeMutation,
} from "@univerjs/sheets";
import { mapBlock } from "../book";
import { engineFormula, NO_CONTENT } from "../writing";
import { type Call, signature } from "./call";
import { change, changeCells } from "./change";
import { setChoices } from "./choice";
import { writeValues } from "./fill";
import { fitting } from "./fitting";
import { STYLE_NAMES } from "./marking";
import { writeNote } from "./notes";
import { copyCells } from "./paste";
import { type Place, sheetAt } from "./place";
import { STYLES } from "./style";

type Range = GoogleAppsScript.Spreadsheet.Range;

export function contentMethods(call: Call, place: Place, self: () => Range) {
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
		setValues(values: unknown) {
			writeValues(call, place, fitting(block, values, "setValues"));
			return self();
		},
		setFormula(formula: unknown) {
			const cell = formulaFor(formula, "setFormula");
			changeCells(call, sheet(), [block], () => cell);
			return self();
		},
		setFormulas(formulas: unknown) {
			const given = fitting(block, formulas, "setFormulas");
			changeCells(call, sheet(), [block], (row, column) =>
				formulaFor(given(row, column), "setFormulas"),
			);
			return self();
		},
		setNote: (note: unknown) =>
			eachCell((row, column) => writeNote(call, sheet(), row, column, note)),
		setNotes(notes: unknown) {
			const given = fitting(block, notes, "setNotes");
			return eachCell((row, column) =>
				writeNote(call, sheet(), row, column, given(row, column) ?? null),
			);
		},
		clearNote: () =>
			eachCell((row, column) => writeNote(call, sheet(), row, column, null)),
		copyTo: (...args: unknown[]) => copyCells(call, place, args),
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

export function ruleMethods(call: Call, place: Place, self: () => Range) {
	const { block } = place;
	const set = (ruleAt: (row: number, column: number) => unknown) => {
		setChoices(call, sheetAt(call, place), block, ruleAt);
		return self();
	};
	return {
		setDataValidation: (rule: unknown) => set(() => rule),
		setDataValidations: (rules: unknown) =>
			set(fitting(block, rules, "setDataValidations")),
		clearDataValidations: () => set(() => null),
	};
}

/** A look for each cell, where `markingMethods` gives all of them one. */
export function styleMethods(call: Call, place: Place, self: () => Range) {
	const methods = STYLE_NAMES.map((name) => {
		const plural = pluralOf(name);
		const method = `SpreadsheetApp.Range.${plural}`;
		const set = (values: unknown) => {
			const given = fitting(place.block, values, plural);
			const cellFor = once((value) => ({ s: STYLES[name](value, method) }));
			changeCells(call, sheetAt(call, place), [place.block], (row, column) =>
				cellFor(given(row, column) ?? null),
			);
			return self();
		};
		return [plural, set];
	});
	return Object.fromEntries(methods) as Record<
		string,
		(values: unknown) => Range
	>;
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
