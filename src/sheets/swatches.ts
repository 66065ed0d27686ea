/** Keeps measured samples in Swatches. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { sameName } from "../calc/names";
import { colorIn } from "../job/reading/colortext";
import { a1Of } from "./a1";
import { serialDay } from "./days";
import type { SwatchInput } from "./messages";
import { blockArea } from "./page";
import { readStudio } from "./readstudio";
import { rowsAdded } from "./rows";
import { type Cell, NO_STUDIO } from "./studio";
import { takeTurn } from "./turn";

/** @throws InputError for a sample that the Swatches tab could not be read with. */
export function swatchRecorded(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	swatch: SwatchInput,
): number {
	colorIn("color", swatch.color);
	takeTurn(spreadsheet);
	const studio = readStudio(spreadsheet);
	const table = studio?.table("Swatches");
	if (!studio || !table) throw new InputError(NO_STUDIO);
	const names = pigmentNames(table.getSheet());
	return rowsAdded(
		studio,
		"Swatches",
		[swatchRow(swatch, names)],
		table.getValues(),
	);
}

/** What heads the columns of doses. */
function pigmentNames(sheet: GoogleAppsScript.Spreadsheet.Sheet): string[] {
	const heading = workbook()
		.studioTabs.flatMap(({ blocks }) => blocks)
		.find(({ slot }) => slot === "swatch_pigments");
	if (!heading) throw new Error("Swatches names no pigments");
	const [names = []] = sheet
		.getRange(a1Of(blockArea(heading)))
		.getValues() as Cell[][];
	return names.map(String);
}

function swatchRow(swatch: SwatchInput, names: readonly string[]): Cell[] {
	const unknown = Object.keys(swatch.doses).find(
		(name) => !names.some((known) => sameName(known, name)),
	);
	if (unknown !== undefined)
		throw new InputError(
			`The Swatches tab has no column for ${unknown}: type its name over a free one of the eight, then try again`,
		);
	const dose = (name: string): Cell =>
		Object.entries(swatch.doses).find(([key]) => sameName(key, name))?.[1] ??
		"";
	return [
		swatch.mix,
		swatch.finish,
		swatch.sealed,
		swatch.state,
		...names.map((name) => (name === "" ? "" : dose(name))),
		swatch.color,
		swatch.ageDays ?? "",
		swatch.lot ?? "",
		swatch.date ? serialDay(swatch.date) : "",
		swatch.remark ?? "",
	];
}
