/** New rows of a studio's table, whole or not at all. */
import { InputError } from "../../calc/errors";
import { nameKey } from "../../calc/names";
import { placeOf, type TablePlace } from "../../job/cells/regions";
import type { Fields, Typed } from "../../job/fields/field";
import type { UnitSystem } from "../../job/reading/units";
import { areaOf } from "../reading/a1";
import { areaIn, type RegionRead } from "../reading/regiongrids";
import { insistently, type Step, wholly } from "./allornothing";
import { textsOf } from "./blockcells";
import { keptAsText } from "./content";
import { GENERAL, PLAIN_TEXT } from "./formats";
import { noteBegun, noteDone, type Recording } from "./journal";
import { type StudioPage, studioPage } from "./studiopage";
import { quoted } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** A table of the studio, ready for more rows. */
export interface GrowingTable {
	region: RegionRead;
	place: TablePlace;
	/** What each of its columns was made in; none of a column that somebody put in. */
	formats: readonly (string | undefined)[];
}

/** The table with these headings in the region. @throws InputError where a heading is gone. */
export function growingTable(
	name: string,
	region: RegionRead,
	fields: Fields,
	units: UnitSystem,
): GrowingTable {
	const place = placeOf(fields, region.grid, units);
	const made = studioPage(name, units);
	return {
		region,
		place,
		formats: (region.grid[place.row] ?? []).map((heading) =>
			formatUnder(made, String(heading)),
		),
	};
}

/** The format of the cells that the template has under a heading. */
function formatUnder(
	{ page, region }: StudioPage,
	heading: string,
): string | undefined {
	const { row, rows } = areaOf(region);
	const word = nameKey(heading);
	for (const [at, texts] of textsOf(page)
		.slice(row, row + rows)
		.entries()) {
		const column = texts.findIndex((text) => nameKey(text) === word);
		if (word !== "" && column >= 0)
			return page.cells[row + at + 1]?.[column]?.format;
	}
	return undefined;
}

/** The first of so many rows that are free behind all that are filled, in the region. @throws InputError when it is full. */
export function freeRow(
	filled: readonly boolean[],
	needed: number,
	tab: () => string,
): number {
	const free = filled.lastIndexOf(true) + 1;
	if (free + needed > filled.length)
		throw new InputError(
			`The ${tab()} tab has no free row: add rows above its last one, then try again`,
		);
	return free;
}

/** Adds rows behind the filled ones, their cells by column; the first one's number on the tab. */
export function addRows(
	table: GrowingTable,
	rows: readonly Readonly<Record<number, Typed>>[],
): number {
	const { region, place } = table;
	const filled = region.grid
		.slice(place.row + 1, place.end)
		.map((row) => row.some((cell) => cell !== ""));
	const tab = () => region.range.getSheet().getName();
	return putRows(table, freeRow(filled, rows.length, tab), rows);
}

/** Puts a row in the place of one that is there, counted from 0 under the headings; a column of a person's own keeps its cell. */
export function replaceRow(
	table: GrowingTable,
	at: number,
	row: Readonly<Record<number, Typed>>,
): number {
	return putRows(table, at, [row]);
}

function putRows(
	{ region: { range }, place, formats }: GrowingTable,
	at: number,
	rows: readonly Readonly<Record<number, Typed>>[],
): number {
	const sheet = range.getSheet();
	const area = areaIn(range);
	const row = area.row + place.row + 1 + at + 1;
	const width = area.columns;
	const cells = sheet.getRange(row, area.column + 1, rows.length, width);
	const before = cells.getNumberFormats();
	const was = cells.getValues() as Typed[][];
	const begun: Recording = {
		act: "recording",
		job: 0,
		cells: `${quoted(sheet.getName())}!${cells.getA1Notation()}`,
		formats: before,
	};
	const values = rows.map((one, index) =>
		Array.from(
			{ length: width },
			(_, column) => one[column] ?? was[index]?.[column] ?? "",
		),
	);
	const patterns = before.map((line) =>
		line.map((pattern, column) => formats[column] ?? pattern),
	);
	wholly(`Nothing was recorded on the ${sheet.getName()} tab`, [
		{ act: () => noteBegun(begun), undo: () => noteDone(begun) },
		rowsStep(cells, values, { was, before, patterns }),
	]);
	insistently(() => noteDone(begun));
	return row;
}

/** Texts keep what they are: marked while the cells are not yet plain text, which would keep the mark as well. */
function rowsStep(
	range: Range,
	rows: readonly (readonly Typed[])[],
	{
		was,
		before,
		patterns,
	}: { was: readonly (readonly Typed[])[] } & Readonly<
		Record<"before" | "patterns", string[][]>
	>,
): Step {
	const put = (values: readonly (readonly Typed[])[]) => {
		if (range.getNumberFormats().flat().includes(PLAIN_TEXT))
			range.setNumberFormat(GENERAL);
		range.setValues(values.map((row) => row.map(keptAsText)));
	};
	return {
		act() {
			put(rows);
			range.setNumberFormats(patterns);
		},
		undo() {
			if (was.flat().every((cell) => cell === "")) range.clearContent();
			else put(was);
			range.setNumberFormats(before);
		},
	};
}
