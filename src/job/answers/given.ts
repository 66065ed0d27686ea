/** What the answers are worked out from: both files, read by their fields. */
import type { Field, Read } from "../fields/field";
import { SETTINGS, type SettingKey } from "../fields/settings";
import { LOOK } from "../fields/tone";
import type { JobFile } from "../jobfile";
import { isBlank } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import { fromSi, type Quantity } from "../reading/units";
import type { StudioFile } from "../studiofile";
import { type Known, readField } from "./known";

export interface Given {
	studio: StudioFile;
	job: JobFile;
	/** Of the workbook, and so of every answer. */
	units: UnitSystem;
}

type Settings = Read<typeof SETTINGS>;

/** A setting in SI; missing where its cell is blank. */
export const setting = <K extends SettingKey>(
	{ studio, units }: Pick<Given, "studio" | "units">,
	key: K,
): Known<Exclude<Settings[K], undefined>> =>
	readField(
		SETTINGS as Record<SettingKey, Field>,
		key,
		studio.settings,
		units,
	) as Known<Exclude<Settings[K], undefined>>;

/** A field of the job's look as typed, or what a new job begins with. */
export const lookOf = <K extends keyof typeof LOOK & string>(
	{ job, units }: Pick<Given, "job" | "units">,
	key: K,
): Known<Exclude<Read<typeof LOOK>[K], undefined>> => {
	const { start } = LOOK[key];
	const begin = typeof start === "object" ? start[units] : start;
	const typed = isBlank(job[key]) ? begin : job[key];
	return readField(LOOK, key, { [key]: typed }, units);
};

export const isInvented = (typed: unknown): boolean =>
	/\binvented\b/i.test(String(typed ?? ""));

/** Swatches or stock for this job: rows that were invented for the demo are for invented clients alone. */
export const ownRows = <R extends { remark?: unknown }>(
	{ job }: Pick<Given, "job">,
	rows: readonly R[] = [],
): readonly R[] =>
	isInvented(job.client)
		? rows
		: rows.filter(({ remark }) => !isInvented(remark));

/** An amount with the studio's currency before it. */
export const withCurrency = (
	{ settings: { currency = "" } }: Pick<StudioFile, "settings">,
	amount: string,
): string => `${String(currency).trim()} ${amount}`.trim();

/** A number in the workbook's unit. */
export const inUnit = (
	{ units }: Pick<Given, "units">,
	quantity: Quantity,
	si: number,
): number => fromSi(si, quantity, units);
