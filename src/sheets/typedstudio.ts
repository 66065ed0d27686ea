/** The studio's tabs as they are today, as a studio file: what was typed, blanks left out. */
import { InputError } from "../calc/errors";
import type { Field, Fields, Row, Typed } from "../job/fields/field";
import { JOB_LINE } from "../job/fields/jobline";
import { LOGGED } from "../job/fields/log";
import { INGREDIENT } from "../job/fields/mix";
import { PIGMENT } from "../job/fields/pigment";
import { SETTINGS, type SettingKey } from "../job/fields/settings";
import { STOCK } from "../job/fields/stock";
import { SWATCH } from "../job/fields/swatch";
import { isBlank } from "../job/reading/cells";
import { dayOfSerial } from "../job/reading/days";
import type { StudioFile, SwatchInput } from "../job/studiofile";
import { serialOf } from "./days";
import { readStudio } from "./readstudio";
import { type Cell, NO_STUDIO, type Rows, type Studio } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Everything typed about the studio. @throws InputError in a workbook without studio tabs. */
export function studioFileOf(spreadsheet: Spreadsheet): StudioFile {
	const studio = readStudio(spreadsheet);
	if (!studio) throw new InputError(NO_STUDIO);
	const rows = (tab: string): Rows => studio.table(tab)?.getValues() ?? [];
	const block = (key: string): Rows =>
		spreadsheet.getRange(studio.cells[key] ?? "").getValues();
	const names = (block("Swatches.swatch_pigments")[0] ?? []).map(String);
	return {
		...jobStudio(studio),
		closedDays: block("Studio.closed_days").flatMap(
			([day]) => typedOf(day) ?? [],
		),
		swatchPigments: names.filter((name) => !isBlank(name)),
		swatches: filled(rows("Swatches")).map((row) => swatchOf(row, names)),
		stock: records(STOCK, rows("Stock")),
		log: records(LOGGED, studio.pours()),
		jobs: records({ job: {}, ...JOB_LINE }, studio.jobs) as Record<
			string,
			Typed
		>[],
	};
}

/** What a job is worked out from, of a studio whose tabs are read already. */
export const jobStudio = ({
	setting,
	mixes,
	pigments,
}: Studio): StudioFile => ({
	settings: recordOf(
		Object.keys(SETTINGS),
		Object.keys(SETTINGS).map(setting),
	) as Partial<Record<SettingKey, Typed>>,
	mixes: records(INGREDIENT, mixes),
	pigments: records(PIGMENT, pigments),
});

/** Rows whose cells are the fields in their order. */
const records = <F extends Fields>(
	fields: F | Readonly<Record<string, Partial<Field>>>,
	rows: Rows,
): Row<F>[] =>
	filled(rows).map((row) => recordOf(Object.keys(fields), row) as Row<F>);

const filled = (rows: Rows): Rows =>
	rows.filter((row) => row.some((cell) => !isBlank(cell)));

const recordOf = (
	keys: readonly string[],
	cells: readonly (Cell | undefined)[],
): Record<string, Typed> =>
	Object.fromEntries(
		keys.flatMap((key, column) => {
			const typed = typedOf(cells[column]);
			return typed === undefined ? [] : [[key, typed] as const];
		}),
	);

/** A cell's value as a file keeps it. */
function typedOf(cell: Cell | undefined): Typed | undefined {
	if (cell === undefined || isBlank(cell)) return undefined;
	if (typeof cell === "object") return dayOfSerial(serialOf(cell));
	return typeof cell === "boolean" ? String(cell).toUpperCase() : cell;
}

/** Doses stand between the kinds and the color, under the names of pigments. */
function swatchOf(row: readonly Cell[], names: readonly string[]): SwatchInput {
	const kinds = 4;
	const doses = recordOf(names, row.slice(kinds, kinds + names.length));
	return {
		...recordOf(Object.keys(SWATCH), [
			...row.slice(0, kinds),
			...row.slice(kinds + names.length),
		]),
		...(Object.keys(doses).length > 0 && { doses }),
	};
}
