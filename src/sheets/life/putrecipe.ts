/** A recipe into a tone of a job: the doses of its pigments, and none of others. */
import { InputError } from "../../calc/errors";
import { sameName } from "../../calc/names";
import { placeOf, type TablePlace } from "../../job/cells/regions";
import type { Typed } from "../../job/fields/field";
import { TONE } from "../../job/fields/tone";
import type { JobState, ToneRecipe } from "../messages";
import { jobStateOf } from "../reading/jobstate";
import { readJob } from "../reading/readjob";
import { areaIn, type RegionRead } from "../reading/regiongrids";
import { wholly } from "../writing/allornothing";
import { typedStep } from "../writing/typedcell";
import { takeTurn } from "./taketurn";

type Change = readonly [row: number, column: number, value: Typed];

/** Writes the doses beside the tone. @throws InputError for a tone that is not there, or without room for a pigment. */
export function placeRecipe(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	{ job, tone, doses }: ToneRecipe,
): JobState {
	takeTurn(spreadsheet);
	const { regions, studio } = readJob(spreadsheet, job);
	const { range, grid } = regions.tones;
	const place = placeOf(TONE, grid, studio.units);
	const changes = changesFor(grid, place, tone, doses);
	const [sheet, area] = [range.getSheet(), areaIn(range)];
	wholly(
		"The recipe was not written",
		changes.map(([row, column, value]) =>
			typedStep(
				sheet.getRange(area.row + row + 1, area.column + column + 1),
				value,
			),
		),
	);
	return jobStateOf(spreadsheet, job);
}

function changesFor(
	grid: RegionRead["grid"],
	{ row: top, columns, others, end }: TablePlace,
	tone: string,
	doses: ToneRecipe["doses"],
): Change[] {
	const at = grid.findIndex(
		(cells, row) =>
			row > top &&
			row < end &&
			sameName(String(cells[columns.name ?? 0] ?? ""), tone),
	);
	if (at < 0) throw new InputError(`The Tones tab has no tone ${tone}`);
	const own = Object.values(columns);
	const free = (grid[top] ?? []).flatMap((heading, column) =>
		heading === "" &&
		!own.includes(column) &&
		grid.slice(top + 1, end).every((cells) => (cells[column] ?? "") === "")
			? [column]
			: [],
	);
	const added = Object.keys(doses).filter(
		(name) => !others.some(([, known]) => sameName(known, name)),
	);
	if (added.length > free.length)
		throw new InputError(
			`The Tones tab has no free column for ${added.join(" and ")}: clear the name of a pigment that no tone uses`,
		);
	return [
		...added.map((name, i): Change => [top, free[i] ?? 0, name]),
		...others.map(([column, name]): Change => {
			const [, dose = ""] =
				Object.entries(doses).find(([other]) => sameName(other, name)) ?? [];
			return [at, column, dose];
		}),
		...added.map((name, i): Change => [at, free[i] ?? 0, doses[name] ?? ""]),
	];
}
