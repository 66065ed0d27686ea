/** Blocks of a tab from the fields that are typed in it, and from the answers that it shows. */

import { JOB_REGIONS } from "../src/job/cells/jobcells";
import type { Field, Fields } from "../src/job/fields/field";
import { formatOf } from "../src/job/tabs/fieldformat";
import type { Shown, TabAnswer } from "../src/job/tabs/tab";
import type { Block, Choice } from "./plan";

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
function choiceOf({ words, kind }: Field, range: string): Choice[] {
	if (words) return [{ range, list: words }];
	return kind === "share" ? [{ range, between: [0, 1] }] : [];
}

export interface Typing {
	blocks: readonly Block[];
	choices: readonly Choice[];
}

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
			{ at, look: "label", rows: entries.map(([, { label }]) => [label]) },
			...(wide > 1
				? [
						{
							at: cell(0),
							look: "input",
							size: [entries.length, wide],
						} as Block,
					]
				: []),
			...entries.map(
				([key, field], row): Block => ({
					at: cell(row),
					look: "input",
					slot: key,
					formats: formatOf(field),
					...(starts[key] === undefined
						? { size: [1, 1] }
						: { rows: [[starts[key] ?? ""]] }),
					...(field.help && { note: field.help }),
					align: "left",
				}),
			),
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
export function typedTable({
	at,
	slot,
	fields,
	rows,
	starts,
}: {
	at: string;
	slot: string;
	fields: Fields;
	rows: number;
	/** What stands in the first rows before anything is typed. */
	starts?: readonly (readonly (string | number)[])[];
}): Typing {
	const entries = Object.entries(fields);
	const first = moved(at, 1);
	return {
		blocks: [
			{
				at,
				look: "heading",
				wrap: true,
				rows: [entries.map(([, { label }]) => label)],
			},
			...entries.flatMap(([, { help }], column): Block[] =>
				help
					? [
							{
								at: moved(at, 0, column),
								look: "heading",
								size: [1, 1],
								note: help,
							},
						]
					: [],
			),
			{
				at: first,
				look: "input",
				size: [rows, entries.length],
				slot,
				...(starts && { rows: starts }),
				formats: entries.map(([, field]) => formatOf(field)),
			},
		],
		choices: entries.flatMap(([, field], column) =>
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
	return {
		blocks: [
			{
				at,
				look: "input",
				size: [1, columns],
				slot,
				formats: formatOf(field),
				align: "right",
				...(field.help && { note: field.help }),
			},
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

/** The call while the cells above its headings are as many as they were made: references move with a column put in, answers do not. */
const whileWhole = (at: string, answer: TabAnswer): string => {
	const { length } = answer.shown;
	const above = area(moved(at, -1), 1, length);
	return `=IF(COLUMNS(${above})=${length};${calling(answer)};NA())`;
};

/** A table of answers, its headings on top. `slots` gives keys to the cells of columns, by the column's place. */
export function answerTable({
	at,
	answer,
	rows,
	slots = {},
	slot,
	whole = false,
}: {
	at: string;
	answer: TabAnswer;
	rows: number;
	slots?: Readonly<Record<string, number>>;
	/** Key of all the cells under the headings. */
	slot?: string;
	/** Other cells refer to single columns of it: it is an error once a column was put in between. */
	whole?: boolean;
}): Block[] {
	const { shown } = answer;
	const first = moved(at, 1);
	return [
		{
			at: first,
			look: "result",
			size: [rows, shown.length],
			formats: shown.map(({ format }) => format),
			...(slot && { slot }),
		},
		...shown.flatMap(({ wrap, format }, column): Block[] =>
			wrap
				? [
						{
							at: moved(first, 0, column),
							look: "result",
							size: [rows, 1],
							wrap,
							formats: format,
						},
					]
				: [],
		),
		...Object.entries(slots).map(
			([key, column]): Block => ({
				at: moved(first, 0, column),
				look: "result",
				size: [rows, 1],
				slot: key,
			}),
		),
		{
			at,
			look: "heading",
			wrap: true,
			size: [1, shown.length],
			rows: [[whole ? whileWhole(at, answer) : `=${calling(answer)}`]],
		},
		...shown.flatMap((one, column): Block[] => {
			const text = noteOf(one);
			return text
				? [
						{
							at: moved(at, 0, column),
							look: "heading",
							size: [1, 1],
							note: text,
						},
					]
				: [];
		}),
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
	return [
		{
			at,
			look: "label",
			rows: shown.map(({ label }, row) => [own[row] ?? label]),
		},
		...shown.map((one, row): Block => {
			const note = noteOf(one);
			return {
				at: moved(first, row),
				look: "total",
				size: [1, columns],
				formats: one.format,
				...(note && { note }),
			};
		}),
		...Object.entries(slots).map(
			([slot, row]): Block => ({
				at: moved(first, row),
				look: "total",
				size: [1, 1],
				slot,
			}),
		),
		...Object.entries(names).map(
			([name, row]): Block => ({
				at: moved(first, row),
				look: "total",
				size: [1, 1],
				name,
			}),
		),
		{
			at: first,
			look: "total",
			size: [1, 1],
			rows: [[`=IF(${intact};${calling(answer)};NA())`]],
		},
	];
}
