/** A workbook of few cells that has one of everything a plan may say, so that each service call can be tried in seconds. */
import {
	CARD_ROWS,
	loadHeading,
	stepKey,
	TABLE_TITLES,
	weighedKey,
} from "../../../src/job/cells/jobcells";
import { studioSlots } from "../../../src/job/cells/studioslots";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	PLANS,
	PRICE,
	QUOTE,
	TRAVEL,
	WHAT_IF,
	WORK_ROW,
} from "../../../src/job/fields/cost";
import { CURE } from "../../../src/job/fields/cure";
import type { Fields } from "../../../src/job/fields/field";
import { JOB } from "../../../src/job/fields/job";
import { JOBS_ROW } from "../../../src/job/fields/jobline";
import { LOGGED } from "../../../src/job/fields/log";
import { INGREDIENT } from "../../../src/job/fields/mix";
import { CUTOUT, KNOCKOUT } from "../../../src/job/fields/openings";
import { OPERATION_KEYS, OPERATIONS } from "../../../src/job/fields/operations";
import { PIECE } from "../../../src/job/fields/piece";
import { PIGMENT } from "../../../src/job/fields/pigment";
import { CURE_LOG, POUR } from "../../../src/job/fields/pour";
import { SETTINGS } from "../../../src/job/fields/settings";
import { STOCK } from "../../../src/job/fields/stock";
import { SWATCH } from "../../../src/job/fields/swatch";
import { LOOK, TONE } from "../../../src/job/fields/tone";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import type { StudioFile } from "../../../src/job/studiofile";
import { VERSION } from "../../../src/job/version";
import { lettersOf, typedList, typedTable } from "../../../templates/blocks";
import type { Block, Tab } from "../../../templates/plan";
import type { Workbook } from "../../../templates/workbook";

const MIX = "White casting mix";
const size = (fields: object) => Object.keys(fields).length;

/** A studio tab that is one table, its headings in row 4. */
function tableTab(
	name: string,
	region: string,
	fields: Fields,
	more: readonly Block[] = [],
	columns = size(fields),
): Tab {
	const { blocks, choices } = typedTable({
		at: "A4",
		slot: region,
		fields,
		rows: 4,
	});
	return {
		name,
		rows: 9,
		widths: Array<number>(columns).fill(80),
		frozenRows: 4,
		names: { [region]: `A4:${lettersOf(columns - 1)}8` },
		blocks: [
			{ at: "A1", look: "title", rows: [[name]] },
			...blocks,
			{ at: "A5", look: "input", size: [4, 1], slot: "names" },
			...more,
		],
		choices,
	};
}

const settings = typedList({ at: "A3", fields: SETTINGS });
const LAST = 2 + size(SETTINGS);

const studio: Tab = {
	name: "Studio",
	rows: LAST + 2,
	widths: [150, 90, 60],
	names: { settings: `A2:C${LAST}` },
	blocks: [
		{ at: "A1", look: "title", rows: [["Studio"]] },
		{ at: "A2", look: "heading", rows: [["What", "Here", "Closed days"]] },
		...settings.blocks,
		{ at: "C3", look: "input", size: [2, 1], formats: "date" },
		{
			at: `B${LAST + 1}`,
			look: "note",
			rows: [[VERSION]],
			formats: "text",
			name: "version",
		},
		{ at: "C1", look: "note", rows: [["Look: undo it"]], name: "undo" },
	],
	choices: settings.choices,
};

const jobs: Tab = {
	name: "Jobs",
	rows: 10,
	widths: Array<number>(20).fill(60),
	hidden: 1,
	names: { jobs: "A4:R10" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Jobs"]] },
		{ at: "A2", look: "result", rows: [["=COUNTA(A5:A10)"]] },
		{
			at: "A4",
			look: "heading",
			rows: [Object.values(JOBS_ROW).map(({ label }) => label)],
		},
		{ at: "A5", look: "result", size: [6, 18] },
	],
};

/** Columns of doses behind the fields of a swatch; the first has a name. */
const doses: Block = {
	at: `${lettersOf(size(SWATCH))}4`,
	look: "input",
	size: [1, 2],
	rows: [["Umber", "Black"]],
	formats: "text",
};

const titled = (at: string, title: string): Block => ({
	at,
	look: "total",
	rows: [[title]],
});

const head = typedList({ at: "A3", fields: JOB, right: 2 });
const pieces = typedTable({
	at: "A13",
	slot: "pieces",
	fields: PIECE,
	rows: 2,
});
const cutouts = typedTable({
	at: "A17",
	slot: "cutouts",
	fields: CUTOUT,
	rows: 1,
});
const knockouts = typedTable({
	at: "A20",
	slot: "knockouts",
	fields: KNOCKOUT,
	rows: 1,
});

const job: Tab = {
	name: "Job",
	color: "#336699",
	rows: 22,
	widths: Array<number>(18).fill(70),
	frozenColumns: 1,
	names: { head: "A3:C9", pieces: "A13:P21" },
	blocks: [
		{ at: "A1", look: "title", rows: [['=C3&""']] },
		...head.blocks,
		{ at: "C4", look: "input", size: [1, 1], formats: "text", name: "title" },
		{ at: "D3", look: "result", rows: [["=C3"], ["={job}title"]] },
		{ at: "D6", look: "result", rows: [['=IF(C6="";"";C6)']], formats: "date" },
		{
			at: "B11",
			look: "result",
			slot: "summary",
			rows: [["=C3", "=C4", ...Array<string>(15).fill("=1+1")]],
		},
		...pieces.blocks,
		titled("A16", TABLE_TITLES.cutouts),
		...cutouts.blocks,
		titled("A19", TABLE_TITLES.knockouts),
		...knockouts.blocks,
	],
	choices: [
		...pieces.choices,
		{ range: "B14:B15", between: [1, 20], help: "How many" },
	],
	rules: [
		{ range: "C3", when: '=$C$3="?"', look: "current" },
		{ range: "C4:C5", when: "=LEN($C4)>30", look: "warning" },
	],
};

const look = typedList({ at: "A3", fields: LOOK });
const TONES = 4 + size(LOOK);
const tones = typedTable({
	at: `A${TONES}`,
	slot: "tone_list",
	fields: TONE,
	rows: 2,
});
const cure = typedList({ at: "H3", fields: CURE });
const CURE_END = 4 + size(CURE);
const cureLog = typedTable({
	at: `H${CURE_END}`,
	slot: "cureLog",
	fields: CURE_LOG,
	rows: 1,
});
const price = typedList({ at: "K8", fields: PRICE });
const quote = typedList({ at: "R3", fields: QUOTE });

/** Tables under each other, each with its title. */
const COST_TABLES = [
	["changes", CHANGE],
	["payments", PAYMENT],
	["goods", GOODS],
	["travel", TRAVEL],
] as const;
const costTables = COST_TABLES.flatMap(([slot, fields], index): Block[] => {
	const row = 13 + 3 * index;
	return [
		titled(`K${row}`, TABLE_TITLES[slot]),
		...typedTable({ at: `K${row + 1}`, slot, fields, rows: 1 }).blocks,
	];
});

const toned: Tab = {
	name: "Tones",
	color: "#336699",
	rows: 34,
	widths: Array<number>(20).fill(70),
	names: {
		tones: `A3:F${TONES + 2}`,
		cure: `H3:I${CURE_END + 1}`,
		cost: "K3:O33",
		quote: "R3:S5",
		picture: "R8:S12",
	},
	blocks: [
		{ at: "A1", look: "title", rows: [["Tones"]] },
		...look.blocks,
		...tones.blocks,
		{
			at: `C${TONES}`,
			look: "input",
			size: [1, 4],
			formats: "text",
			slot: "pigments",
		},
		{
			at: `A${TONES + 1}`,
			look: "input",
			size: [2, 6],
			slot: "tones",
			formats: ["text", ...Array<"share">(5).fill("share")],
		},
		{ at: "B1", look: "total", rows: [["=SUM(B20:B22)"]] },
		...cure.blocks,
		...cureLog.blocks,
		{ at: "K3", look: "heading", rows: [["", PLANS[1], PLANS[2]]] },
		...Object.entries(WHAT_IF).flatMap(([key, { label }], row): Block[] => [
			{ at: `K${4 + row}`, look: "label", rows: [[label]] },
			{ at: `L${4 + row}`, look: "input", size: [1, 2], slot: key },
		]),
		...price.blocks,
		...costTables,
		titled("K25", TABLE_TITLES.work),
		{
			at: "K26",
			look: "heading",
			rows: [Object.values(WORK_ROW).map(({ label }) => label)],
		},
		{
			at: "K27",
			look: "label",
			rows: OPERATION_KEYS.map((key) => [OPERATIONS[key].label]),
		},
		{ at: "L27", look: "input", size: [7, 3], slot: "work" },
		...quote.blocks,
	],
	choices: [{ range: "B3", from: "{at:Mixes.names}" }],
};

const KEYS = [
	...Object.values(POUR).map(({ label }) => label),
	...Array.from({ length: CARD_ROWS.weighed }, (_, row) => weighedKey(row + 1)),
	...Array.from({ length: CARD_ROWS.steps }, (_, step) => stepKey(step)),
];
const WEIGHED = 4 + size(POUR);

const card: Tab = {
	name: "Pour card",
	color: "#336699",
	rows: 4 + KEYS.length,
	widths: Array<number>(1 + MOST.pours).fill(70),
	names: { card: `A3:I${3 + KEYS.length}`, load: "B2" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Pour card"]] },
		{ at: "B2", look: "input", rows: [[1]], formats: "whole", slot: "load" },
		{
			at: "A3",
			look: "heading",
			rows: [
				[
					"",
					...Array.from({ length: MOST.pours }, (_, i) => loadHeading(i + 1)),
				],
			],
		},
		{ at: "A4", look: "label", rows: KEYS.map((key) => [key]) },
		...Object.keys(POUR).map(
			(key, row): Block => ({
				at: `B${4 + row}`,
				look: "input",
				size: [1, MOST.pours],
				formats: "text",
				slot: key,
			}),
		),
		{
			at: `B${WEIGHED}`,
			look: "input",
			size: [CARD_ROWS.weighed, MOST.pours],
			slot: "weighed",
		},
		{
			at: `B${WEIGHED + CARD_ROWS.weighed}`,
			look: "input",
			size: [CARD_ROWS.steps, MOST.pours],
			slot: "steps",
		},
		{
			at: `A${4 + KEYS.length}`,
			look: "result",
			rows: [["=WEIGH_OUT(1;2)"]],
		},
	],
};

/** A client's text looks like a formula, and stays a text. */
export const smallJob: JobFile = {
	units: "metric",
	client: '=HYPERLINK("http://example.org","x")',
	title: "Slab",
	pourDate: "2027-03-09",
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
	tones: [{ name: "Shell", share: 1, doses: { Umber: 0.02 } }],
};

const smallStudio = (units: UnitSystem): StudioFile => ({
	settings: {
		units,
		currency: "EUR",
		mixer_capacity: 400,
		air: 0.02,
		waste: 0.1,
	},
	mixes: [
		{
			mix: MIX,
			ingredient: "Cement",
			parts: 1,
			specificGravity: 3.1,
			binderShare: 1,
			cementShare: 1,
		},
		{
			mix: MIX,
			ingredient: "Water",
			parts: 0.4,
			specificGravity: 1,
			waterShare: 1,
		},
	],
	pigments: [{ name: "Umber", maximum: 0.1 }, { name: "Black" }],
});

const slotsOf = (units: UnitSystem) => {
	const { swatch_pigments: _, ...slots } = studioSlots(smallStudio(units));
	return slots;
};

export const smallWorkbook: Workbook = {
	studioTabs: [
		studio,
		tableTab("Mixes", "mixes", INGREDIENT),
		tableTab("Pigments", "pigments", PIGMENT),
		tableTab("Swatches", "swatches", SWATCH, [doses], size(SWATCH) + 2),
		tableTab("Stock", "stock", STOCK),
		jobs,
		tableTab("Pour log", "pours", LOGGED),
	],
	jobTabs: [job, toned, card],
	starter: { metric: slotsOf("metric"), us: slotsOf("us") },
	starterStudios: { metric: smallStudio("metric"), us: smallStudio("us") },
	demo: { metric: smallJob, us: { ...smallJob, units: "us" } },
};
