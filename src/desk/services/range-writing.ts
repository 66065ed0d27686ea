/** What a range of the script can be told to change. */
import { mapBlock } from "../book";
import { engineFormula, NO_CONTENT } from "../writing";
import { type Call, signature } from "./call";
import { changeCells } from "./change";
import { setChoices } from "./choice";
import { clearCells, writeValues } from "./fill";
import { fitting } from "./fitting";
import { writeNote } from "./notes";
import { copyCells } from "./paste";
import { type Place, sheetAt } from "./place";
import { STYLES } from "./style";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Style = keyof typeof STYLES;
type At = (row: number, column: number) => unknown;

const STYLE_NAMES = Object.keys(STYLES) as Style[];
const SINGLE = ["setBackground", "setNumberFormat"] as const;

export type StyleMethod = (typeof SINGLE)[number] | `${Style}s`;

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
	return {
		setValue(value: unknown) {
			writeValues(call, place, () => value);
			return self();
		},
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
		setNote(note: unknown) {
			mapBlock(block, (row, column) =>
				writeNote(call, sheet(), row, column, note),
			);
			return self();
		},
		setNotes(notes: unknown) {
			const given = fitting(block, notes, "setNotes");
			mapBlock(block, (row, column) =>
				writeNote(call, sheet(), row, column, given(row, column)),
			);
			return self();
		},
		clearContent() {
			clearCells(call, [place], { content: true, format: false });
			return self();
		},
		copyTo: (...args: unknown[]) => copyCells(call, place, args),
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
	};
}

/** Looks: one for all cells, where a script asks for it, and one for each. */
export function styleMethods(call: Call, place: Place, self: () => Range) {
	const put = (method: string, name: Style, valueAt: At) => {
		const cellFor = once((value) => ({
			s: STYLES[name](value, `SpreadsheetApp.Range.${method}`),
		}));
		changeCells(call, sheetAt(call, place), [place.block], (row, column) =>
			cellFor(valueAt(row, column) ?? null),
		);
		return self();
	};
	const single = SINGLE.map((name) => [
		name,
		(value: unknown) => put(name, name, () => value),
	]);
	const plural = STYLE_NAMES.map((name) => [
		`${name}s`,
		(values: unknown) =>
			put(`${name}s`, name, fitting(place.block, values, `${name}s`)),
	]);
	return Object.fromEntries([...single, ...plural]) as Record<
		StyleMethod,
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
