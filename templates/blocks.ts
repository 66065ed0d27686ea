/** Blocks of a tab from the fields that are typed in it, and from the answers that it shows. */

import { JOB_REGIONS } from "../src/job/cells/jobcells";
import type { Field, Fields } from "../src/job/fields/field";
import { formatOf } from "../src/job/tabs/fieldformat";
import type { Shown, TabAnswer } from "../src/job/tabs/tab";
import type { Block, Choice, Look } from "./plan";

export { formatOf };

/** A cell of another tab, blank where that is blank. */
export const ofTab = (cell: string) => `=IF(${cell}="";"";${cell})`;

/** Column letters from a number, 0 is A. */
export const lettersOf = (column: number): string =>
	column < 26
		? String.fromCharCode(65 + column)
		: lettersOf(Math.floor(column / 26) - 1) + lettersOf(column % 26);

const placeOf = (at: string): { column: number; row: number } => {
	const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
	const column = [...letters].reduce(
		(sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
		0,
	);
	return { column: column - 1, row: Number(row) };
};

/** The cell so many rows down and columns to the right. */
export function moved(at: string, down: number, right = 0): string {
	const { column, row } = placeOf(at);
	return `${lettersOf(column + right)}${row + down}`;
}

/** The cells from one on: so many rows and columns. */
export const area = (at: string, rows: number, columns: number): string =>
	rows === 1 && columns === 1
		? at
		: `${at}:${moved(at, rows - 1, columns - 1)}`;

/** The choices that fields bring along for the cells of one of them; what it is for stands in a note. */
export function choiceOf(field: Field, range: string): Choice[] {
	const { words, kind, limits = {} } = field;
	if (words) return [{ range, list: words }];
	if (kind === "share") return [{ range, ...shareChoice(limits) }];
	if (!["number", "money"].includes(kind)) return [];
	const { above, min = above, max = MOST_NUMBER } = limits;
	// Of limits in a unit only 0 is the same in all.
	const isLow = min !== undefined && (min === 0 || limits.whole === true);
	const low = isLow ? min : -MOST_NUMBER;
	const words0 = above === 0 ? "above 0" : isLow ? `${low} or more` : "";
	return [
		{
			range,
			between: [above === 0 ? LEAST_NUMBER : low, max],
			help: words0 ? `Type a number, ${words0}.` : "Type a number.",
		},
	];
}

/** As large and as small as numbers of a cell may be. */
const MOST_NUMBER = 1e100;
const LEAST_NUMBER = 1e-100;

function shareChoice({
	above,
	min = above ?? 0,
	below,
	max = below ?? 1,
}: NonNullable<Field["limits"]>): Pick<Choice, "between" | "help"> {
	const percent = (share: number) => `${Number((share * 100).toPrecision(6))}%`;
	return {
		between: [min, max],
		help: `Type a share from ${percent(min)} to ${percent(max)}, like 4% or 0.04.`,
	};
}

/** Texts below each other. */
export const lines = (
	at: string,
	look: Look,
	...texts: readonly string[]
): Block => ({ at, look, rows: texts.map((text) => [text]) });

export interface Typing {
	blocks: readonly Block[];
	choices: readonly Choice[];
}

/** Cells of one look, so many rows and columns from one on, with a key, a name, formats or a note. */
const cells = (
	at: string,
	look: Look,
	[rows, columns]: readonly [rows: number, columns: number],
	more: Omit<Block, "at" | "look" | "size">,
): Block => ({ at, look, size: [rows, columns], ...more });

/** Headings beside each other with a note on each that has one. */
const notesOn = (at: string, notes: readonly (string | undefined)[]): Block[] =>
	notes.flatMap((note, column) =>
		note ? [cells(moved(at, 0, column), "heading", [1, 1], { note })] : [],
	);

/** Keys of columns of a table, by the column's place. */
const columnKeys = (
	first: string,
	look: Look,
	rows: number,
	slots: Readonly<Record<string, number>>,
): Block[] =>
	Object.entries(slots).map(([slot, column]) =>
		cells(moved(first, 0, column), look, [rows, 1], { slot }),
	);

/** Labels with a cell to type in beside each, so many columns to the right. */
export function typedList({
	at,
	fields,
	right = 1,
	wide = 1,
	starts = {},
}: {
	at: string;
	fields: Fields;
	right?: number;
	/** Columns that the tint covers. */
	wide?: number;
	/** What stands in a cell before anything is typed. */
	starts?: Readonly<Record<string, string | number>>;
}): Typing {
	const cell = (row: number) => moved(at, row, right);
	const entries = Object.entries(fields);
	return {
		blocks: [
			lines(at, "label", ...entries.map(([, { label }]) => label)),
			...(wide > 1
				? [cells(cell(0), "input", [entries.length, wide], {})]
				: []),
			...entries.map(([key, field], row) => {
				const start = starts[key];
				return cells(cell(row), "input", [1, 1], {
					slot: key,
					formats: formatOf(field),
					...(start !== undefined && { rows: [[start]] }),
					...(field.help && { note: field.help }),
					align: "left",
				});
			}),
		],
		choices: entries.flatMap(([, field], row) => choiceOf(field, cell(row))),
	};
}

/** What the fields begin with, where that is the same in all units. */
export const startsOf = (fields: Fields): Record<string, string | number> =>
	Object.fromEntries(
		Object.entries(fields).flatMap(([key, { start }]) =>
			start === undefined || typeof start === "object" ? [] : [[key, start]],
		),
	);

/** Headings with rows to type in below. */
export function typedTable<F extends Fields>({
	at,
	slot,
	fields,
	rows,
	starts,
	slots = {},
}: {
	at: string;
	slot: string;
	fields: F;
	rows: number;
	/** What stands in the first rows before anything is typed. */
	starts?: readonly (readonly (string | number)[])[];
	/** Keys of the columns of single fields. */
	slots?: Readonly<Record<string, keyof F>>;
}): Typing {
	const keys: (keyof F)[] = Object.keys(fields);
	const own = Object.values(fields);
	const first = moved(at, 1);
	const places = Object.entries(slots).map(
		([slot, key]) => [slot, keys.indexOf(key)] as const,
	);
	return {
		blocks: [
			{
				at,
				look: "heading",
				wrap: true,
				rows: [own.map(({ label }) => label)],
			},
			...notesOn(
				at,
				own.map(({ help }) => help),
			),
			cells(first, "input", [rows, own.length], {
				slot,
				...(starts && { rows: starts }),
				formats: own.map(formatOf),
			}),
			...columnKeys(first, "input", rows, Object.fromEntries(places)),
		],
		choices: own.flatMap((field, column) =>
			choiceOf(field, area(moved(first, 0, column), rows, 1)),
		),
	};
}

/** One field in several columns, such as a column a load. */
export function typedAcross({
	at,
	slot,
	field,
	columns,
}: {
	at: string;
	slot: string;
	field: Field;
	columns: number;
}): Typing {
	const formats = formatOf(field);
	const note = field.help && { note: field.help };
	return {
		blocks: [
			cells(at, "input", [1, columns], {
				slot,
				formats,
				align: "right",
				...note,
			}),
		],
		choices: choiceOf(field, area(at, 1, columns)),
	};
}

const isOfJob = (region: string): boolean =>
	(JOB_REGIONS as readonly string[]).includes(region);

/** The formula that calls a tab's function. */
export const calling = ({ name, needs }: TabAnswer): string =>
	`${name}(${["studio_settings", ...needs.map((region) => (isOfJob(region) ? `{job}${region}` : `studio_${region}`))].join(";")})`;

/** What a person may want to know of an answer, and the function that gives the same. */
export const noteOf = ({ by, note }: Shown): string =>
	[note, by && `As ${by} answers it.`].filter(Boolean).join(" ");

/** Cell of the Studio tab with what to do where a column or a row was put in among answers. */
export const UNDO = "undo";

/**
 * The call while its cells are as many as they were made, else what to do: references and formats move with a column put in,
 * answers do not.
 */
const whileWhole = (intact: string, answer: TabAnswer): string =>
	`=IF(${intact};${calling(answer)};studio_${UNDO})`;

/** A table of answers, its headings on top. `slots` gives keys to the cells of columns, by the column's place. */
export function answerTable({
	at,
	answer,
	rows,
	slots = {},
	slot,
}: {
	at: string;
	answer: TabAnswer;
	rows: number;
	slots?: Readonly<Record<string, number>>;
	/** Key of all the cells under the headings. */
	slot?: string;
}): Block[] {
	const { shown } = answer;
	const first = moved(at, 1);
	const above = area(moved(at, -1), 1, shown.length);
	return [
		cells(first, "result", [rows, shown.length], {
			formats: shown.map(({ format }) => format),
			...(slot && { slot }),
		}),
		...shown.flatMap(({ wrap, format: formats }, column) =>
			wrap
				? [
						cells(moved(first, 0, column), "result", [rows, 1], {
							wrap,
							formats,
						}),
					]
				: [],
		),
		...columnKeys(first, "result", rows, slots),
		cells(at, "heading", [1, shown.length], {
			wrap: true,
			rows: [[whileWhole(`COLUMNS(${above})=${shown.length}`, answer)]],
		}),
		...notesOn(at, shown.map(noteOf)),
	];
}

/** Labels, and so many columns to the right the answers to them, while the rows are as many as they were made. */
export function answerList({
	at,
	answer,
	right,
	columns = 1,
	labels: own = {},
	slots = {},
	names = {},
}: {
	at: string;
	answer: TabAnswer;
	right: number;
	/** How many values stand beside each label. */
	columns?: number;
	/** Formulas in place of single labels, by their place. */
	labels?: Readonly<Record<number, string>>;
	/** Keys of the first answers to single labels, by the label's place. */
	slots?: Readonly<Record<string, number>>;
	/** Names of the first answers to single labels, by the label's place. */
	names?: Readonly<Record<string, number>>;
}): Block[] {
	const { shown } = answer;
	const first = moved(at, 0, right);
	const rows = `ROWS(${area(at, shown.length, 1)})=${shown.length}`;
	const above = area(moved(first, -1), 1, columns);
	const intact =
		columns === 1 ? rows : `(${rows})*(COLUMNS(${above})=${columns})`;
	const one = (row: number, more: Partial<Block>) =>
		cells(moved(first, row), "total", [1, 1], more);
	return [
		lines(at, "label", ...shown.map(({ label }, row) => own[row] ?? label)),
		...shown.map((answer, row) => {
			const note = noteOf(answer);
			return cells(moved(first, row), "total", [1, columns], {
				formats: answer.format,
				...(note && { note }),
			});
		}),
		...Object.entries(slots).map(([slot, row]) => one(row, { slot })),
		...Object.entries(names).map(([name, row]) => one(row, { name })),
		one(0, { rows: [[whileWhole(intact, answer)]] }),
	];
}
