/** Which loads the Pour log has. */
import { placeOf, rowsIn } from "../../job/cells/regions";
import { LOGGED } from "../../job/fields/log";
import type { UnitSystem } from "../../job/reading/units";
import type { RegionRead } from "./regiongrids";

/** Numbers of the job's loads that have a row, ascending. */
export function loggedLoads(
	{ grid }: RegionRead,
	units: UnitSystem,
	number: number,
): number[] {
	const loads = rowsIn(LOGGED, grid, placeOf(LOGGED, grid, units))
		.filter(({ job }) => Number(job) === number)
		.map(({ load }) => Number(load));
	return [...new Set(loads)].sort((a, b) => a - b);
}
