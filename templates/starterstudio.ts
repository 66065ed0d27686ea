/** What a new studio begins with; every number is a start, to be replaced by the studio's own. */
import type { Field, Typed } from "../src/job/fields/field";
import { SETTINGS, type SettingKey } from "../src/job/fields/settings";
import type { UnitSystem } from "../src/job/reading/units";
import type { StudioFile } from "../src/job/studiofile";
import { mixesPacked } from "./starter/recipes";
import { PIGMENTS, SWATCHES } from "./starter/samples";
import { PACKS, stockOf } from "./starter/shelf";

/** The setting that a new studio begins with; undefined where it is for the studio to type. */
function startOf(key: SettingKey, units: UnitSystem): Typed | undefined {
	const { start } = SETTINGS[key] as Field;
	return typeof start === "object" ? start[units] : start;
}

export const starterStudio = (units: UnitSystem): StudioFile => ({
	settings: Object.fromEntries(
		(Object.keys(SETTINGS) as SettingKey[]).flatMap((key) => {
			const start = startOf(key, units);
			return start === undefined ? [] : [[key, start]];
		}),
	),
	mixes: mixesPacked(PACKS[units]),
	pigments: PIGMENTS,
	swatchPigments: PIGMENTS.map(({ name = "" }) => String(name)),
	swatches: SWATCHES,
	stock: stockOf(units),
});
