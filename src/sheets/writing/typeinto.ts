/** What a person would type into cells of a job. */
import type { JobRegion } from "../../job/cells/jobcells";
import type { Typed } from "../../job/fields/field";
import { type JobRead, jobOf } from "../reading/readjob";
import { areaIn } from "../reading/regiongrids";
import { wholly } from "./allornothing";
import { typedStep } from "./typedcell";

/** A cell of the region, counted from 0. */
export interface Change {
	row: number;
	column: number;
	typed: Typed;
	/** What the cell holds, where that is not what is typed. */
	cell?: Typed;
}

/** Types all of it or nothing. Answers the job as it is then: a read that fails after the writing would say that nothing was written. */
export function typeInto(
	read: JobRead,
	region: JobRegion,
	changes: readonly Change[],
	failed: string,
): JobRead {
	const { range } = read.regions[region];
	const [sheet, area] = [range.getSheet(), areaIn(range)];
	wholly(
		failed,
		changes.map(({ row, column, typed, cell = typed }) =>
			typedStep(
				sheet.getRange(area.row + row + 1, area.column + column + 1),
				cell,
			),
		),
	);
	const grid = read.regions[region].grid.map((line) => [...line]);
	for (const { row, column, typed } of changes) {
		const line = grid[row];
		if (line) line[column] = typed;
	}
	return jobOf({
		...read,
		regions: { ...read.regions, [region]: { range, grid } },
	});
}
