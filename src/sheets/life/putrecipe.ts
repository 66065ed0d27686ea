/** A recipe into a tone of a job: the doses of its pigments, and none of others. */
import { InputError } from "../../calc/errors";
import { sameName } from "../../calc/names";
import { placeOf, type TablePlace } from "../../job/cells/regions";
import { TONE } from "../../job/fields/tone";
import type { JobState, ToneRecipe } from "../messages";
import { stateOf } from "../reading/jobstate";
import { readJob } from "../reading/readjob";
import type { RegionRead } from "../reading/regiongrids";
import { type Change, typeInto } from "../writing/typeinto";
import { takeTurn } from "./taketurn";

/** Writes the doses beside the tone. @throws InputError for a tone that is not there, or without room for a pigment. */
export function placeRecipe(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	{ job, tone, doses }: ToneRecipe,
): JobState {
	takeTurn(spreadsheet);
	const read = readJob(spreadsheet, job);
	const { grid } = read.regions.tones;
	const place = placeOf(TONE, grid, read.studio.units);
	const changes = changesFor(grid, place, tone, doses);
	const state = stateOf(spreadsheet, read);
	const now = typeInto(read, "tones", changes, "The recipe was not written");
	return { ...state, job: now.job };
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
		...added.map((name, i) => ({
			row: top,
			column: free[i] ?? 0,
			typed: name,
		})),
		...others.map(([column, name]) => {
			const [, dose = ""] =
				Object.entries(doses).find(([other]) => sameName(other, name)) ?? [];
			return { row: at, column, typed: dose };
		}),
		...added.map((name, i) => ({
			row: at,
			column: free[i] ?? 0,
			typed: doses[name] ?? "",
		})),
	];
}
