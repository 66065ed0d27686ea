/** What a new studio's tabs hold, as a studio file. */
import type { Field, Row, Typed } from "../src/job/fields/field";
import { INGREDIENT } from "../src/job/fields/mix";
import { PIGMENT } from "../src/job/fields/pigment";
import { SETTINGS, type SettingKey } from "../src/job/fields/settings";
import type { UnitSystem } from "../src/job/reading/units";
import type { StudioFile } from "../src/job/studiofile";
import { starter } from "./starter";

type Cells = readonly (readonly Typed[])[];

const table = (units: UnitSystem, slot: string): Cells =>
	starter[units][slot] as Cells;

/** Cells as records, blank ones left out. */
const records = <F extends Readonly<Record<string, Field>>>(
	fields: F,
	rows: Cells,
): Row<F>[] =>
	rows.map(
		(row) =>
			Object.fromEntries(
				Object.keys(fields)
					.map((key, column) => [key, row[column] ?? ""] as const)
					.filter(([, typed]) => typed !== ""),
			) as Row<F>,
	);

/** The setting that a new studio begins with. */
function startOf(key: SettingKey, units: UnitSystem): Typed {
	const { start = "" } = SETTINGS[key] as Field;
	return typeof start === "object" ? start[units] : start;
}

export function starterStudio(units: UnitSystem): StudioFile {
	const names = (table(units, "swatch_pigments")[0] ?? [])
		.map(String)
		.filter(Boolean);
	return {
		settings: Object.fromEntries(
			(Object.keys(SETTINGS) as SettingKey[]).map((key) => [
				key,
				startOf(key, units),
			]),
		),
		mixes: records(INGREDIENT, table(units, "mixes")),
		pigments: records(PIGMENT, table(units, "pigments")),
		swatchPigments: names,
		swatches: table(units, "swatches").map((row) => {
			const [mix = "", finish = "", sealed = "", state = ""] = row;
			return {
				mix,
				finish,
				sealed,
				state,
				doses: Object.fromEntries(
					names.flatMap((name, i) => {
						const dose = row[4 + i] ?? "";
						return dose === "" ? [] : [[name, dose]];
					}),
				),
				color: row[12] ?? "",
				ageDays: row[13] ?? "",
				remark: row[16] ?? "",
			};
		}),
		stock: table(units, "stock").map(
			([
				material = "",
				onHand = "",
				unit = "",
				,
				,
				pack,
				packPrice,
				remark,
			]) => ({
				material,
				onHand,
				unit,
				pack,
				packPrice,
				remark,
			}),
		),
	};
}
