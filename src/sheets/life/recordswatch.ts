/** Keeps measured samples in Swatches. */
import { InputError } from "../../calc/errors";
import { sameName } from "../../calc/names";
import { cellOf } from "../../job/cells/jobslots";
import { SWATCH, type SwatchRow } from "../../job/fields/swatch";
import { colorIn } from "../../job/reading/colortext";
import type { SwatchInput } from "../messages";
import { studioOf, studioRegion } from "../reading/readstudio";
import { addRows, type GrowingTable, growingTable } from "../writing/newrows";
import { takeTurn } from "./taketurn";

/** The sample's row on the tab. @throws InputError for one that the Swatches tab could not be read with. */
export function keepSwatch(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	swatch: SwatchInput,
): number {
	if (swatch.color !== undefined) colorIn("color", swatch.color);
	if (swatch.wanted !== undefined) colorIn("color wanted", swatch.wanted);
	takeTurn(spreadsheet);
	const { units } = studioOf(spreadsheet);
	const region = studioRegion(spreadsheet, "swatches");
	const table = growingTable("swatches", region, SWATCH, units);
	return addRows(table, [
		{ ...doseCells(swatch, table), ...ownCells(swatch, table) },
	]);
}

const ownCells = (swatch: SwatchInput, { place: { columns } }: GrowingTable) =>
	Object.fromEntries(
		Object.entries(SWATCH).map(([key, field]) => [
			columns[key] ?? -1,
			cellOf(field, swatch[key as keyof SwatchRow]),
		]),
	);

/** A dose under the name of each pigment. */
function doseCells(
	{ doses }: SwatchInput,
	{ place: { others } }: GrowingTable,
): Record<number, number> {
	return Object.fromEntries(
		Object.entries(doses).map(([name, dose]) => {
			const [column] = others.find(([, own]) => sameName(own, name)) ?? [];
			if (column === undefined)
				throw new InputError(
					`The Swatches tab has no column for ${name}: type its name over a free one of the eight, then try again`,
				);
			return [column, dose];
		}),
	);
}
