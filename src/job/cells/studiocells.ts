/** The studio from the regions of its tabs: what was typed, and nothing else. */
import { InputError } from "../../calc/errors";
import { nameKey } from "../../calc/names";
import {
	day,
	type Field,
	type Fields,
	number,
	type Row,
} from "../fields/field";
import { JOBS_ROW, type JobsRow } from "../fields/jobline";
import { LOGGED } from "../fields/log";
import { INGREDIENT } from "../fields/mix";
import { PIGMENT } from "../fields/pigment";
import { SETTINGS } from "../fields/settings";
import { STOCK } from "../fields/stock";
import { SWATCH } from "../fields/swatch";
import { isBlank } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import type { StudioFile, SwatchInput } from "../studiofile";
import {
	columnUnder,
	type Grid,
	isEmpty,
	listIn,
	placeOf,
	rowsIn,
	typedIn,
} from "./regions";

/** The regions of the studio's tabs, by the end of their names: `studio_mixes`. */
export const STUDIO_REGIONS = [
	"settings",
	"mixes",
	"pigments",
	"swatches",
	"stock",
	"pours",
	"jobs",
] as const;

export type StudioRegion = (typeof STUDIO_REGIONS)[number];

export const CLOSED = { day: day("Closed days") };

/** What heads the settings' column: beside each stands what it is for. */
export const SETTINGS_HEADING = "Here";

const DOSE: Field = number("", {}, {});

const filledRows = <F extends Fields>(
	fields: F,
	grid: Grid,
	units: UnitSystem,
): Row<F>[] =>
	rowsIn(fields, grid, placeOf(fields, grid, units)).filter(
		(row) => !isEmpty(row),
	);

/** The workbook's units, by the setting beside its label. @throws InputError where it is neither of the two. */
function unitsIn(settings: Grid): UnitSystem {
	const label = nameKey(SETTINGS.units.label);
	for (const row of settings) {
		const at = row.findIndex(
			(cell) => typeof cell === "string" && nameKey(cell) === label,
		);
		const typed = at < 0 ? "" : row[columnUnder(SETTINGS_HEADING, settings)];
		if (typed === "metric" || typed === "us") return typed;
	}
	throw new InputError(
		"Units on the Studio tab must be metric or us: undo that change first",
	);
}

/** The studio, as far as its regions are given. */
export function studioIn(
	regions: Partial<Record<StudioRegion, Grid>> & { settings: Grid },
): StudioFile & { units: UnitSystem } {
	const { settings, mixes, pigments, swatches, stock, pours, jobs } = regions;
	const units = unitsIn(settings);
	const closed = filledRows(CLOSED, settings, units).flatMap(({ day }) =>
		day === undefined ? [] : [day],
	);
	return {
		units,
		settings: listIn(SETTINGS as Fields, settings, units, SETTINGS_HEADING),
		...(closed.length > 0 && { closedDays: closed }),
		mixes: mixes ? filledRows(INGREDIENT, mixes, units) : [],
		pigments: pigments ? filledRows(PIGMENT, pigments, units) : [],
		...(swatches && swatchesIn(swatches, units)),
		...(stock && { stock: filledRows(STOCK, stock, units) }),
		...(pours && { log: filledRows(LOGGED, pours, units) }),
		...(jobs && { jobs: filledRows(JOBS_ROW, jobs, units).map(numbered) }),
	};
}

/** A job's number is shown by a link, as a text. */
const numbered = (row: JobsRow): JobsRow =>
	/^\d+$/.test(String(row.job)) ? { ...row, job: Number(row.job) } : row;

/** Every row of the Swatches tab, blank ones too. */
export const swatchRows = (grid: Grid, units: UnitSystem): SwatchInput[] =>
	swatchTable(grid, units).rows;

function swatchesIn(
	grid: Grid,
	units: UnitSystem,
): Pick<StudioFile, "swatches" | "swatchPigments"> {
	const { place, rows } = swatchTable(grid, units);
	return {
		swatchPigments: place.others.map(([, name]) => name.trim()),
		swatches: rows.filter((row) => !isEmpty(row)),
	};
}

function swatchTable(grid: Grid, units: UnitSystem) {
	const place = placeOf(SWATCH, grid, units);
	const rows = rowsIn(SWATCH, grid, place).map((row, index): SwatchInput => {
		const cells = grid[place.row + 1 + index] ?? [];
		const doses = place.others.flatMap(([column, name]) =>
			isBlank(cells[column])
				? []
				: [[name.trim(), typedIn(DOSE, cells[column]) ?? ""] as const],
		);
		return doses.length > 0
			? { ...row, doses: Object.fromEntries(doses) }
			: row;
	});
	return { place, rows };
}
