/**
 * A tab that holds every function to its example's answer, which comes from elsewhere: for a live workbook, where no test
 * can look. It compares by itself, since a script may read a cell before the function in it has answered.
 */

import type { Tab, Value } from "../../../templates/plan";
import type { SheetFunction } from "../../functions/declare";

type Rows = readonly (readonly Value[])[];

/** Columns of an answer: the widest has nine. */
const WIDTH = 9;
/** Rows above the first function: title, count, a blank one, headings. */
const HEAD = 4;
/** First columns, from 0, of what it should say, of what it says, and of what the formula's ranges hold. */
const SHOULD = 3;
const SAYS = SHOULD + WIDTH + 1;
const GIVEN = SAYS + WIDTH + 1;

function letters(column: number): string {
	const last = String.fromCharCode(65 + (column % 26));
	return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}

const widthOf = (rows: Rows): number =>
	Math.max(...rows.map((row) => row.length));

/** A value, a column or a table as rows. */
const rowsOf = (value: unknown): Rows =>
	[value].flat().map((row) => [row].flat() as Value[]);

/** The answer as it lies in the cells; an example may name the cells of a row, or of all rows, in one list. */
function answerRows({ answer, example }: SheetFunction): Rows {
	const rows = rowsOf(example.answer);
	if (answer.shape === "column" || widthOf(rows) > 1) return rows;
	const width = answer.columns?.length ?? 1;
	return Array.from({ length: rows.length / width }, (_, i) =>
		rows.slice(i * width, (i + 1) * width).flat(),
	);
}

const isReference = (shown: string): boolean => /^[A-Z]+\d+(:|$)/.test(shown);

/** The lines of one function, and a blank one in which nothing may appear either. */
function lines(fn: SheetFunction, above: number): Value[][] {
	const { shown, values } = fn.example;
	const given: { column: number; rows: Rows }[] = [];
	let column = GIVEN;
	const args = shown.map((text, i) => {
		if (!isReference(text)) return text;
		const rows = rowsOf(values[i]);
		const first = column;
		given.push({ column, rows });
		column += widthOf(rows) + 1;
		return `${letters(first)}${above + 1}:${letters(column - 2)}${above + rows.length}`;
	});
	const should = answerRows(fn);
	const formula = `${fn.name}(${args.join(";").replace(/\b([A-Z]+\d+):\1\b/g, "$1")})`;
	const all = [
		{ column: 0, rows: [[fn.name, formula]] },
		{ column: SHOULD, rows: should },
		{ column: SAYS, rows: [[`=${formula}`]] },
		...given,
	];
	const height = Math.max(...all.map(({ rows }) => rows.length)) + 1;
	return Array.from({ length: height }, (_, row) => {
		const line: Value[] = [];
		for (const part of all)
			(part.rows[row] ?? []).forEach((value, i) => {
				line[part.column + i] = value;
			});
		return Array.from(line, (value) => value ?? "");
	});
}

/** For all rows at once: `agrees`, or what to look at. Numbers agree to a thousandth. */
function verdicts(first: number, last: number): string {
	const of = (column: number) =>
		`${letters(column)}${first}:${letters(column)}${last}`;
	const differs = Array.from({ length: WIDTH }, (_, i) => {
		const [should, says] = [of(SHOULD + i), of(SAYS + i)];
		const near = `IF(ABS(${says}-${should})>ABS(${should})/1000;1;0)`;
		return `IFERROR(IF(ISNUMBER(${should});IF(ISNUMBER(${says});${near};1);IF(${says}=${should};0;1));1)`;
	});
	return `=ARRAYFORMULA(IF(${differs.join("+")}>0;"Look: it says something else";IF(${of(0)}="";"";"agrees")))`;
}

const headings = (): Value[] => {
	const texts: Value[] = ["Function", "Formula", "Verdict"];
	texts[SHOULD] = "It should say";
	texts[SAYS] = "It says";
	texts[GIVEN] = "What the formula's ranges hold";
	return Array.from(texts, (text) => text ?? "");
};

/** The tab, with a formula and an answer of every function. */
export function contractTab(registry: readonly SheetFunction[]): Tab {
	const rows: Value[][] = [];
	for (const fn of registry) rows.push(...lines(fn, HEAD + rows.length));
	const last = HEAD + rows.length;
	const wrong = `COUNTIF(C${HEAD + 1}:C${last};"Look*")`;
	const count = `=IF(${wrong}=0;"All ${registry.length} functions agree";"Look: rows that differ: "&${wrong})`;
	return {
		name: "Contract check",
		rows: last,
		widths: Array.from(
			{ length: widthOf(rows) },
			(_, i) => [220, 330, 210][i] ?? 80,
		),
		frozenRows: HEAD,
		blocks: [
			{ at: "A1", look: "title", rows: [["Contract check"]] },
			{ at: "A2", look: "large", rows: [[count]] },
			{ at: `A${HEAD}`, look: "heading", rows: [headings()] },
			{ at: `A${HEAD + 1}`, look: "label", rows },
			{
				at: `C${HEAD + 1}`,
				look: "label",
				rows: [[verdicts(HEAD + 1, last)]],
			},
		],
	};
}
