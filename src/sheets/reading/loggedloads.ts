/** Which loads the Pour log has. */
import { placeOf, rowsIn } from "../../job/cells/regions";
import { LOGGED, type LoggedRow } from "../../job/fields/log";
import type { UnitSystem } from "../../job/reading/units";
import type { RegionRead } from "./regiongrids";

/** A row of the log; `at` is its place under the headings, from 0. */
interface Logged {
	at: number;
	row: LoggedRow;
}

/** The job's rows in the order of the tab; of a load that has several, the last. */
export function loggedRows(
	{ grid }: RegionRead,
	units: UnitSystem,
	number: number,
): Logged[] {
	const rows = rowsIn(LOGGED, grid, placeOf(LOGGED, grid, units))
		.map((row, at): Logged => ({ at, row }))
		.filter(({ row: { job } }) => Number(job) === number);
	return rows.filter(
		({ at, row: { load } }) =>
			!rows.some(
				(later) => later.at > at && Number(later.row.load) === Number(load),
			),
	);
}

/** Numbers of loads, ascending. */
export const loadsIn = (rows: readonly LoggedRow[]): number[] =>
	rows.map(({ load }) => Number(load)).sort((a, b) => a - b);
