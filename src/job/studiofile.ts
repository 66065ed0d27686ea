/** A studio file: everything typed about the studio that its jobs share, as plain JSON. */
import { InputError } from "../calc/errors";
import { sameName } from "../calc/names";
import { day, share, type Typed } from "./fields/field";
import type { JobsRow } from "./fields/jobline";
import { LOGGED, type LoggedRow } from "./fields/log";
import { INGREDIENT, type IngredientRow } from "./fields/mix";
import { PIGMENT, type PigmentRow } from "./fields/pigment";
import { SETTINGS, type SettingKey } from "./fields/settings";
import { STOCK, type StockRow } from "./fields/stock";
import { SWATCH, type SwatchRow } from "./fields/swatch";
import { mistakesIn, type Shape } from "./mistakes";
import type { UnitSystem } from "./reading/units";

/** A swatch with dry pigment as a share of binder, by the pigments' names. */
export interface SwatchInput extends SwatchRow {
	doses?: Readonly<Record<string, Typed>>;
}

export interface StudioFile {
	about?: readonly string[];
	settings: Partial<Record<SettingKey, Typed>>;
	/** Days without work. */
	closedDays?: readonly Typed[];
	/** An ingredient a row; those of one mix have its name. */
	mixes: readonly IngredientRow[];
	pigments: readonly PigmentRow[];
	/** Pigments that have a column on Swatches, dosed or not. */
	swatchPigments?: readonly string[];
	swatches?: readonly SwatchInput[];
	stock?: readonly StockRow[];
	log?: readonly LoggedRow[];
	/** Rows of the Jobs tab as they are shown, one a job. */
	jobs?: readonly JobsRow[];
}

const namesOf = (cells: readonly unknown[]): string[] => [
	...new Set(
		cells
			.map((cell) => String(cell ?? "").trim())
			.filter((name) => name !== ""),
	),
];

/** The names of the mixes in the order of their first rows. */
export const mixNames = ({ mixes }: StudioFile): string[] =>
	namesOf(mixes.map(({ mix }) => mix));

export const studioPigments = ({ pigments }: StudioFile): string[] =>
	namesOf(pigments.map(({ name }) => name));

/** The studio's own spelling of a name. */
export const spelled = (name: string, names: readonly string[]): string =>
	names.find((known) => sameName(known, name)) ?? name;

/** No workbook has more rows of anything. */
const MOST_ROWS = 5000;

const rowsOf = (fields: Shape["fields"], values?: Shape["values"]) => ({
	of: { fields, values },
	most: MOST_ROWS,
});

const STUDIO_SHAPE: Shape = {
	fields: {},
	rowsByKey: {},
	lists: {
		mixes: rowsOf(INGREDIENT),
		pigments: rowsOf(PIGMENT),
		swatches: rowsOf(SWATCH, { doses: share("Dose") }),
		stock: rowsOf(STOCK),
		log: rowsOf(LOGGED),
	},
	names: { swatchPigments: 8 },
	free: ["about", "jobs", "settings", "closedDays"],
};

/** The studio, when every field is one that a studio has and of the right kind. @throws InputError with a line for each that is not. */
export function checkedStudio(input: unknown): StudioFile {
	const file = input as Partial<StudioFile> | null;
	const units: UnitSystem = file?.settings?.units === "us" ? "us" : "metric";
	const place = { path: "", units, file: "the studio" };
	const mistakes = [
		...mistakesIn(input, STUDIO_SHAPE, place),
		...mistakesIn(
			file?.settings ?? {},
			{ fields: SETTINGS },
			{ ...place, path: "settings." },
		),
		...(file?.closedDays ?? []).flatMap((typed, index) =>
			mistakesIn({ day: typed }, CLOSED_DAY, {
				...place,
				path: `closedDays[${index}].`,
			}),
		),
	];
	if (mistakes.length > 0)
		throw new InputError(mistakes.map(({ say }) => say).join("\n"));
	return input as StudioFile;
}

const CLOSED_DAY: Shape = { fields: { day: day("Closed day") } };
