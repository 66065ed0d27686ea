import type { Block, Tab } from "../src/template/plan";
import { SETTINGS } from "./studio-settings";

/** The other tabs and the names of their tables. Each table's place is read from the formula that counts its rows. */
const TABLES = [
	["Mixes", "mixes"],
	["Pigments", "pigments"],
	["Swatches", "swatches"],
	["Stock", "stock"],
	["Jobs", "jobs"],
	["Pour log", "pours"],
] as const;

const FIRST_ROW = 3;

const rows = SETTINGS.flatMap(([heading, settings]) => [
	{ heading },
	...settings.map(([key, label, format, help]) => ({
		key,
		label,
		format,
		help,
	})),
]).map((row, index) => ({ ...row, at: FIRST_ROW + index }));

const TABLES_ROW = FIRST_ROW + rows.length;
const LAST_ROW = TABLES_ROW + TABLES.length;

const tableRows: Block[] = [
	{ at: `A${TABLES_ROW}`, look: "total", rows: [["Rows of each table"]] },
	...TABLES.flatMap(([tab, name], index): Block[] => {
		const row = TABLES_ROW + 1 + index;
		return [
			{ at: `A${row}`, look: "label", rows: [[tab]] },
			{
				at: `B${row}`,
				look: "result",
				rows: [[`=ROWS({at:${tab}.${name}})`]],
				formats: "whole",
				slot: `rows_${name}`,
			},
		];
	}),
	{
		at: `C${TABLES_ROW + 1}`,
		look: "note",
		rows: [["To make one longer, insert rows inside it"]],
	},
];

const blocks: Block[] = rows.flatMap((row): Block[] =>
	"heading" in row
		? [{ at: `A${row.at}`, look: "total", rows: [[row.heading]] }]
		: [
				{ at: `A${row.at}`, look: "label", rows: [[row.label]] },
				{
					at: `B${row.at}`,
					look: row.key === "units" ? "result" : "input",
					size: [1, 1],
					formats: row.format,
					slot: row.key,
					align: "right",
				},
				{ at: `C${row.at}`, look: "note", rows: [[row.help]] },
			],
);

/** The studio's own numbers, one set a workbook. */
export const studio: Tab = {
	name: "Studio",
	rows: LAST_ROW + 1,
	widths: [250, 150, 470, 30, 130],
	frozenRows: 2,
	names: { settings: `B${FIRST_ROW}:B${LAST_ROW}` },
	blocks: [
		{ at: "A1", look: "title", rows: [["Studio"]] },
		{
			at: "A2",
			look: "heading",
			rows: [["What", "Here", "What it is for", "", "Closed days"]],
		},
		...blocks,
		...tableRows,
		{
			at: "E3",
			look: "input",
			size: [30, 1],
			formats: "date",
			slot: "closed_days",
			note: "Holidays and other days without work, a date in each cell.",
			align: "right",
		},
	],
	choices: [
		{
			range: `B${rowOf("weekend")}`,
			list: ["Saturday and Sunday", "Sunday", "none"],
		},
		{ range: `B${rowOf("cement")}`, list: ["rapid", "normal", "slow"] },
	],
};

function rowOf(key: string): number {
	return rows.find((row) => "key" in row && row.key === key)?.at ?? 0;
}
