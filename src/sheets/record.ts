/** Keeps finished pours in the Pour log, and measured samples in Swatches. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { callFunction, functionNamed } from "../functions/index";
import type { Block, Format } from "../template/plan";
import { waitForTurn } from "./lock";
import type { MixerLoad, Recorded, SwatchInput } from "./messages";
import { mixerOf } from "./mixer";
import { isWeighed, pourRow } from "./pourrow";
import { readJob } from "./readjob";
import { readStudio } from "./readstudio";
import { freeRow, patterns, rowsStep } from "./rows";
import { wholly } from "./steps";
import type { Cell, Studio } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Every load of the job that was weighed and is not there yet. */
export function poursRecorded(spreadsheet: Spreadsheet, job: number): Recorded {
	waitForTurn();
	const read = readJob(spreadsheet, job, ["Job", "Tones", "Pour card", "Cost"]);
	const state = mixerOf(read);
	const open = state.loads.filter(({ recorded }) => !recorded);
	const rows = open
		.filter(isWeighed)
		.map((load) => ({ load, row: pourRow(read, state, load) }));
	const ready = rows.flatMap(({ load, row }) => (row ? [{ load, row }] : []));
	if (ready.length > 0)
		append(
			read.studio,
			"Pour log",
			ready.map(({ row }) => row),
		);
	return {
		loads: ready.map(({ load }) => load.number),
		left: [
			...open.filter((load) => !isWeighed(load)).map(notWeighed),
			...rows
				.filter(({ row }) => !row)
				.map(
					({ load }) =>
						`Load ${load.number} cannot be worked out yet: choose it on the Pour card and read what is wrong there`,
				),
		],
	};
}

const notWeighed = ({ number }: MixerLoad): string =>
	`Load ${number} has no weights yet`;

/** Adds rows behind the filled ones of a table; answers the first one's number on the tab. */
function append(studio: Studio, tab: string, rows: Cell[][]): number {
	const table = studio.table(tab);
	if (!table) throw new InputError("This workbook has no studio tabs yet");
	const there = tab === "Pour log" ? studio.pours() : table.getValues();
	const row = table.getRow() + freeRow(there, rows.length, tab);
	const columns = rows[0]?.length ?? 0;
	const range = table
		.getSheet()
		.getRange(row, table.getColumn(), rows.length, columns);
	wholly(`Nothing was recorded on the ${tab} tab`, [
		rowsStep(range, rows, patterns(formatsOf(tab), studio.units)),
	]);
	return row;
}

const blockOf = (tab: string, key: string): Block | undefined =>
	workbook()
		.studioTabs.find(({ name }) => name === tab)
		?.blocks.find(({ name, slot }) => name === key || slot === key);

function formatsOf(tab: string): readonly Format[] {
	const formats = blockOf(
		tab,
		tab === "Pour log" ? "pours" : "swatches",
	)?.formats;
	if (typeof formats !== "object") throw new Error(`${tab} has no formats`);
	return formats;
}

/** @throws InputError for a sample that the Swatches tab could not be read with. */
export function swatchRecorded(
	spreadsheet: Spreadsheet,
	swatch: SwatchInput,
): number {
	const color = functionNamed("FAR_COLOR");
	if (!color) throw new Error("There is no function FAR_COLOR");
	callFunction(color, [[[swatch.color]], [[1]]]);
	waitForTurn();
	const studio = readStudio(spreadsheet);
	const table = studio?.table("Swatches");
	const heading = blockOf("Swatches", "swatch_pigments");
	if (!studio || !table || !heading)
		throw new InputError("This workbook has no studio tabs yet");
	const names = (
		table.getSheet().getRange(heading.at).offset(0, 0, 1, 8).getValues()[0] ??
		[]
	).map(String);
	return append(studio, "Swatches", [swatchRow(swatch, names)]);
}

function swatchRow(swatch: SwatchInput, names: readonly string[]): Cell[] {
	const unknown = Object.keys(swatch.doses).find(
		(name) => !names.some((known) => same(known, name)),
	);
	if (unknown !== undefined)
		throw new InputError(
			`The Swatches tab has no column for ${unknown}: type its name over a free one of the eight, then try again`,
		);
	const dose = (name: string): Cell =>
		Object.entries(swatch.doses).find(([key]) => same(key, name))?.[1] ?? "";
	return [
		swatch.mix,
		swatch.finish,
		swatch.sealed,
		swatch.state,
		...names.map((name) => (name === "" ? "" : dose(name))),
		swatch.color,
		swatch.ageDays ?? "",
		swatch.lot ?? "",
		serialDay(swatch.date),
		swatch.remark ?? "",
	];
}

const same = (a: string, b: string): boolean =>
	a !== "" && a.trim().toLowerCase() === b.trim().toLowerCase();

/** Days since 1899-12-30, as cells count them. */
const serialDay = (day: string | undefined): Cell =>
	day === undefined || day === ""
		? ""
		: Date.parse(`${day}T00:00:00Z`) / 86_400_000 + 25_569;
