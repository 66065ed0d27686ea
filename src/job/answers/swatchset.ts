/** The studio's swatches as the colors of a job are worked out from them. */
import type { Lab } from "../../calc/color";
import type { SwatchSet } from "../../calc/expected";
import { sameName } from "../../calc/names";
import { share } from "../fields/field";
import { SWATCH } from "../fields/swatch";
import { isBlank } from "../reading/cells";
import type { SwatchInput } from "../studiofile";
import type { Basis } from "./basis";
import { lookOf, ownRows } from "./given";
import {
	all,
	from,
	fromBoth,
	is,
	type Known,
	look,
	missing,
	readField,
	readRow,
} from "./known";

/** The swatches, and what of them is asked for. */
export function swatchSet({ given, pigments }: Basis): Known<SwatchSet> {
	const { studio } = given;
	const swatches = ownRows(given, studio.swatches);
	if (swatches.every(({ color }) => isBlank(color)))
		return missing(
			"no swatch of the studio's own has a color: cast samples and note them on the Swatches tab",
		);
	const kinds = all([
		lookOf(given, "mix"),
		lookOf(given, "finish"),
		lookOf(given, "sealing"),
		lookOf(given, "state"),
	] as Known<string>[]);
	const names = dosedBySwatches(studio.swatchPigments ?? [], swatches);
	const read = all(swatches.map((row, i) => swatchOf(row, i, names)));
	return fromBoth(kinds, read, (own, rows) => ({
		swatches: rows,
		swatchPigments: names,
		kinds: own,
		pigments: pigments.map(({ name }) => name),
	}));
}

/** The pigments that have a column of doses, and those that a swatch names besides. */
export function dosedBySwatches(
	columns: readonly string[],
	swatches: readonly SwatchInput[],
): string[] {
	const names = [...columns];
	for (const name of swatches.flatMap(({ doses = {} }) => Object.keys(doses)))
		if (!names.some((one) => sameName(one, name))) names.push(name);
	return names;
}

const DOSE = share("Dose");

/** Color changes strongly from day 7 to 28 (López and Di Sarli 2017), mostly to about day 21 (Takano et al. 2000). */
export const GROWN_DAYS = 28;
/** A photo errs about five times as far as a meter: 2 in L* against 0.4, an own guess. */
const PHOTO_WORTH = 1 / 25;

export function swatchOf(
	row: SwatchInput,
	index: number,
	names: readonly string[],
): Known<SwatchSet["swatches"][number]> {
	const { mix, finish, sealed, state, doses = {} } = row;
	const color = readField(SWATCH, "color", row, "metric");
	const reading = readRow(
		{ ageDays: SWATCH.ageDays, read: SWATCH.read },
		row,
		"metric",
	);
	const each = all(
		names.map((name): Known<number | undefined> => {
			const typed = Object.entries(doses).find(([key]) => sameName(key, name));
			return typed === undefined || isBlank(typed[1])
				? is(undefined)
				: readField({ dose: DOSE }, "dose", { dose: typed[1] }, "metric");
		}),
	);
	const read = from(
		all(["missing" in color ? is(undefined) : color, each, reading] as [
			Known<Lab | undefined>,
			typeof each,
			typeof reading,
		]),
		([lab, own, { ageDays, read: from }]) => ({
			kinds: [mix, finish, sealed, state].map((kind) => String(kind ?? "")),
			doses: own,
			lab,
			...(ageDays !== undefined &&
				ageDays < GROWN_DAYS && { unfit: `younger than ${GROWN_DAYS} days` }),
			...(from === "photo" && { worth: PHOTO_WORTH }),
		}),
	);
	return "look" in read ? look(`swatch ${index + 1}: ${read.look}`) : read;
}
