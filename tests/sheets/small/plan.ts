/** A workbook of few cells that has one of everything a plan may say, so that each service call can be tried in seconds. */
import type { JobFile } from "../../../src/job/jobfile";
import type { Block, Tab, Value } from "../../../src/template/plan";
import type { Workbook } from "../../../src/template/workbook";

const MIX = "White casting mix";

const table = (name: string, columns: number): Tab => ({
	name,
	rows: 8,
	widths: Array<number>(columns).fill(80),
	frozenRows: 2,
	blocks: [
		{ at: "A1", look: "title", rows: [[name]] },
		{ at: "A2", look: "heading", rows: [["What", "More"]], wrap: true },
		{
			at: "A3",
			look: "input",
			size: [6, columns],
			name: name.toLowerCase(),
			formats: ["text", ...Array<"number">(columns - 2).fill("number"), "text"],
		},
	],
});

const SETTINGS: readonly [key: string, value: Value][] = [
	["units", "metric"],
	["currency", "EUR"],
	["mixer_capacity", 40],
	["gram_division", 1],
	["waste", 0.1],
	["air", 0.02],
];
const TABLES = ["Mixes", "Pigments", "Swatches", "Jobs"];

const studio: Tab = {
	name: "Studio",
	rows: 14,
	widths: [150, 90],
	names: { settings: "B3:B12" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Studio"]] },
		...SETTINGS.flatMap(([key], row): Block[] => [
			{ at: `A${row + 3}`, look: "label", rows: [[key]] },
			{
				at: `B${row + 3}`,
				look: "input",
				size: [1, 1],
				slot: key,
				note: `The studio's ${key}`,
			},
		]),
		...TABLES.map(
			(tab, row): Block => ({
				at: `B${row + 9}`,
				look: "result",
				formats: "whole",
				slot: `rows_${tab.toLowerCase()}`,
				rows: [[`=ROWS({at:${tab}.${tab.toLowerCase()}})`]],
			}),
		),
	],
};

const swatches: Tab = {
	...table("Swatches", 17),
	blocks: [
		...table("Swatches", 17).blocks,
		{
			at: "E1",
			look: "input",
			size: [1, 8],
			formats: "text",
			slot: "swatch_pigments",
		},
	],
};

const jobs: Tab = {
	name: "Jobs",
	rows: 10,
	widths: Array<number>(20).fill(60),
	hidden: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [["Jobs"]] },
		{ at: "A2", look: "result", rows: [["=COUNTA(A5:A10)"]] },
		{ at: "A5", look: "result", size: [6, 18], name: "jobs" },
	],
};

const job: Tab = {
	name: "Job",
	color: "#336699",
	rows: 12,
	widths: Array<number>(18).fill(70),
	frozenColumns: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['=C3&""']] },
		{
			at: "A3",
			look: "label",
			rows: [["Client"], ["Title"], ["Pour"], ["Due"]],
		},
		{ at: "C3", look: "input", size: [1, 1], formats: "text", slot: "client" },
		{ at: "C4", look: "input", size: [1, 1], formats: "text", name: "title" },
		{
			at: "C5",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "pour_date",
			once: true,
		},
		{
			at: "C6",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "due_date",
		},
		{ at: "D6", look: "result", rows: [["=C6"]], formats: "date" },
		{ at: "D3", look: "result", rows: [["=C3"], ["={job}title"]] },
		{
			at: "A7",
			look: "input",
			size: [3, 11],
			slot: "pieces",
			formats: ["text", "whole", "text", "length", "length"],
		},
		{
			at: "B12",
			look: "result",
			slot: "summary",
			rows: [["=C3", "=C4", ...Array<string>(15).fill("=1+1")]],
		},
	],
	choices: [
		{ range: "B7:B9", between: [1, 20], help: "How many" },
		{ range: "C7:C9", list: ["rectangle", "L"] },
	],
	rules: [
		{ range: "C3", when: '=$C$3="?"', look: "current" },
		{ range: "C4:C5", when: "=LEN($C4)>30", look: "warning" },
	],
};

const tones: Tab = {
	name: "Tones",
	color: "#336699",
	rows: 12,
	widths: Array<number>(8).fill(70),
	blocks: [
		{ at: "A1", look: "title", rows: [["Tones"]] },
		{
			at: "B2",
			look: "input",
			size: [1, 1],
			formats: "text",
			slot: "mix",
			name: "mix",
		},
		{
			at: "C4",
			look: "input",
			size: [1, 4],
			formats: "text",
			slot: "pigments",
		},
		{
			at: "A5",
			look: "input",
			size: [6, 6],
			slot: "typed_tones",
			formats: ["text", "percent", "share", "share", "share", "share"],
		},
		{ at: "H5", look: "total", rows: [["=SUM(B5:B10)"], ["=WEIGH_OUT(1;2)"]] },
	],
	choices: [{ range: "B2", from: "{at:Mixes.mixes}" }],
};

/** A client's text looks like a formula, and stays a text. */
export const smallJob: JobFile = {
	units: "metric",
	client: '=HYPERLINK("http://example.org","x")',
	title: "Slab",
	pourDate: "2027-03-09",
	dueDate: "2027-04-09",
	mix: MIX,
	pieces: [
		{
			name: "-3",
			quantity: 1,
			shape: "rectangle",
			a: 1000,
			b: 1000,
			thickness: "3 cm",
		},
	],
	tones: [{ name: "Plain", share: 1, doses: { Umber: 0.02 } }],
};

const starter = {
	...Object.fromEntries(SETTINGS),
	mixes: [[MIX, 1, 2]],
	pigments: [["Umber", 0.1]],
	swatch_pigments: [["Umber", "", "", "", "", "", "", ""]],
};

export const smallWorkbook: Workbook = {
	studioTabs: [studio, table("Mixes", 3), table("Pigments", 3), swatches, jobs],
	jobTabs: [job, tones],
	starter: { metric: starter, us: { ...starter, units: "us" } },
	demo: { metric: smallJob, us: smallJob },
};
