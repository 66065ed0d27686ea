/** The sentences of a sheet function, brought to the fields of the form that they speak of. */
import { InputError } from "../../calc/errors";
import type { CellParam, SheetFunction } from "../../functions/declare";
import type { Cell } from "./cells";
import type { Units } from "./form";

/** Sentence by field. */
export type Mistakes = Map<string, string>;

/** Rows of a form beside the table argument that they become. */
export interface FormTable {
	/** The argument's name, as sentences begin with it. */
	name: string;
	rows: readonly { key: number; cells: readonly Cell[] }[];
	/** Field and the word that sentences use for it, a column each. */
	fields: readonly (readonly [field: string, word: string])[];
	/** How each cell of a row is read. */
	columns(cells: readonly Cell[]): readonly CellParam<unknown>[];
}

/** The field's id in the page; the field `row` stands for the row as a whole. */
export const fieldId = (key: number, field: string): string =>
	`row${key}-${field}`;

/** The declared columns of a table argument; what may follow them is repeated for so many more. */
export function columnsOf(
	fn: SheetFunction,
	name: string,
	more = 0,
): CellParam<unknown>[] {
	const param = fn.params[name];
	if (param?.kind !== "table")
		throw new Error(`${fn.name} has no table ${name}`);
	const following = param.more ? Array(more).fill(param.more) : [];
	return [...Object.values(param.columns), ...following];
}

/** The sentence for what a person can correct in `work`; undefined when all is well. */
export function sentenceOf(work: () => unknown): string | undefined {
	try {
		work();
		return undefined;
	} catch (error) {
		if (error instanceof InputError) return error.message;
		throw error;
	}
}

/** Reads every cell by its own column's rule. */
export function cellMistakes(table: FormTable, units: Units): Mistakes {
	const found: Mistakes = new Map();
	for (const { key, cells } of table.rows) {
		const columns = table.columns(cells);
		table.fields.forEach(([field, word], index) => {
			const column = columns[index];
			const cell = cells[index];
			if (!column || (column.optional && cell === "")) return;
			const sentence = sentenceOf(() => column.read(word, cell, units));
			if (sentence) found.set(fieldId(key, field), sentence);
		});
	}
	return found;
}

/**
 * Where a sentence of the whole call belongs: `cutouts row 2: A must …` at A of that row. One that begins with no
 * field's word belongs to its row; one that names no row, to the first. A row without its table's name is the first table's.
 */
export function placed(
	sentence: string,
	tables: readonly FormTable[],
): [id: string, sentence: string] {
	const [, name, number = "1", words = sentence] =
		/^(?:(\w+) )?row (\d+): ([\s\S]*)$/.exec(sentence) ?? [];
	const table = tables.find((candidate) => candidate.name === name);
	const { rows, fields } = table ?? tables[0] ?? { rows: [], fields: [] };
	const row = rows[Number(number) - 1] ?? rows[0];
	const [field] = fields.find(
		([, word]) => words.startsWith(`${word} `) || words.startsWith(`${word}:`),
	) ?? ["row"];
	return [fieldId(row?.key ?? 0, field), words];
}
