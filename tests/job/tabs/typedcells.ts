/** The typed cells of a job's tabs as the templates write them, for the functions of the tabs. */
import { callFunction, functionNamed } from "../../../src/functions";
import { jobSlots } from "../../../src/job/cells/jobslots";
import { type Grid, labelText } from "../../../src/job/cells/regions";
import { CLOSED, SETTINGS_HEADING } from "../../../src/job/cells/studiocells";
import type { Fields, Row } from "../../../src/job/fields/field";
import { JOBS_ROW } from "../../../src/job/fields/jobline";
import { LOGGED } from "../../../src/job/fields/log";
import { INGREDIENT } from "../../../src/job/fields/mix";
import { PIGMENT } from "../../../src/job/fields/pigment";
import { SETTINGS } from "../../../src/job/fields/settings";
import { STOCK } from "../../../src/job/fields/stock";
import { SWATCH } from "../../../src/job/fields/swatch";
import type { JobFile } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import type { StudioFile } from "../../../src/job/studiofile";
import {
	type Cell,
	type Region,
	type TabAnswer,
	tabCells,
	tabInput,
} from "../../../src/job/tabs/tab";
import { areaOf } from "../../../src/sheets/reading/a1";
import { type Page, pageOf } from "../../../src/sheets/writing/page";
import { pourCard as cardTab } from "../../../templates/card/cardtab";
import { cost as costTab } from "../../../templates/cost/costtab";
import { cure as cureTab } from "../../../templates/cure/curetab";
import { demo } from "../../../templates/index";
import { headBlocks } from "../../../templates/job/jobhead";
import { job as jobTab } from "../../../templates/job/jobtab";
import { pieceBlocks } from "../../../templates/job/pieces";
import type { Tab } from "../../../templates/plan";
import { quote as quoteTab } from "../../../templates/quote/quotetab";
import { starterStudio } from "../../../templates/starterstudio";
import { tones as tonesTab } from "../../../templates/tones/tonestab";

/** Cells of other blocks are not looked into. */
const ANYWHERE = new Proxy({}, { get: () => "Elsewhere!$A$1" });

export const pageFor = (tab: Tab, job: JobFile, studio: StudioFile): Page =>
	pageOf({
		tab,
		tokens: { units: job.units, job: "job1_", tabs: {}, cells: ANYWHERE },
		prefix: "job1_",
		slots: jobSlots(job, studio),
	});

/** What a sheet gives for these cells. @throws Error where one of them is a formula. */
export function gridOf(page: Page, name: string): Grid {
	const a1 = page.names[`job1_${name}`];
	if (!a1) throw new Error(`no name ${name}`);
	const { row, column, rows, columns } = areaOf(a1);
	return page.cells.slice(row, row + rows).map((cells) =>
		cells.slice(column, column + columns).map(({ value }) => {
			if (typeof value !== "string") return value;
			if (value.startsWith("=")) throw new Error(`${name} has ${value}`);
			return value.replace(/^'/, "");
		}),
	);
}

/** The Job tab as far as its pieces are typed on it. */
const piecesTab = { ...jobTab, blocks: [...headBlocks, ...pieceBlocks] };

export const demoJob = (units: UnitSystem): JobFile => demo[units];

/** The regions that the answers of the tabs ask for. */
export function jobRegions(job: JobFile) {
	const studio = starterStudio(job.units);
	const [first, tones, card, cure, cost, quote] = [
		piecesTab,
		tonesTab,
		cardTab,
		cureTab,
		costTab,
		quoteTab,
	].map((tab) => pageFor(tab, job, studio)) as [
		Page,
		Page,
		Page,
		Page,
		Page,
		Page,
	];
	return {
		...studioGrids(studio, job.units),
		head: gridOf(first, "head"),
		pieces: gridOf(first, "pieces"),
		tones: gridOf(tones, "tones"),
		card: gridOf(card, "card"),
		load: gridOf(card, "load"),
		cure: gridOf(cure, "cure"),
		cost: gridOf(cost, "cost"),
		quote: gridOf(quote, "quote"),
	};
}

const table = <F extends Fields>(
	fields: F,
	rows: readonly Row<F>[],
	units: UnitSystem,
): unknown[][] => [
	Object.values(fields).map(({ label }) => labelText(label, units)),
	...rows.map((row) => Object.keys(fields).map((key) => row[key] ?? "")),
];

/** The studio's regions. */
export function studioGrids(
	studio: StudioFile,
	units: UnitSystem,
): Readonly<Partial<Record<Region, Grid>>> {
	const { swatchPigments: names = [], swatches = [] } = studio;
	const [headings = [], ...rows] = table(SWATCH, swatches, units);
	return {
		settings: [
			["What", SETTINGS_HEADING],
			...Object.entries(SETTINGS).map(([key, { label }]) => [
				labelText(label, units),
				studio.settings[key as keyof typeof SETTINGS] ?? "",
			]),
			[CLOSED.day.label],
		],
		mixes: table(INGREDIENT, studio.mixes, units),
		pigments: table(PIGMENT, studio.pigments, units),
		stock: table(STOCK, studio.stock ?? [], units),
		pours: table(LOGGED, studio.log ?? [], units),
		jobs: table(JOBS_ROW, (studio.jobs ?? []) as Row<Fields>[], units),
		find: [["Umber"]],
		swatches: [
			[...headings, ...names],
			...rows.map((row, i) => [
				...row,
				...names.map((name) => swatches[i]?.doses?.[name] ?? ""),
			]),
		],
	};
}

/** The answer of a tab's function over the regions that it asks for, and no others. */
export function answerOf(
	answer: TabAnswer,
	regions: Readonly<Partial<Record<Region, Grid>>>,
): Cell[][] {
	const asked = ["settings", ...answer.needs] as const;
	return tabCells(
		answer,
		tabInput(
			Object.fromEntries(
				asked.map((region) => [region, regions[region] ?? []]),
			),
		),
	);
}

/** What a person gets from a public function in a cell of their own. */
export function called(name: string, ...given: readonly unknown[]): unknown {
	const fn = functionNamed(name);
	if (!fn) throw new Error(`no function ${name}`);
	return callFunction(fn, given);
}

export const calledRows = (
	name: string,
	...given: readonly unknown[]
): unknown[][] => called(name, ...given) as unknown[][];

/** A column of cells. */
export const columnIn = (rows: readonly (readonly unknown[])[], at: number) =>
	rows.map((row) => [row[at] ?? ""]);

/** A number and its text are the same in a cell of plain text. */
export const asText = (value: unknown): unknown =>
	typeof value === "number"
		? String(value)
		: Array.isArray(value)
			? value.map(asText)
			: typeof value === "object" && value !== null
				? Object.fromEntries(
						Object.entries(value).map(([key, own]) => [key, asText(own)]),
					)
				: value;
