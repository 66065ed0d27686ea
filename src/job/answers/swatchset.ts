/** The studio's swatches as the colors of a job are worked out from them. */
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
	fromBoth,
	is,
	type Known,
	look,
	missing,
	readField,
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
function dosedBySwatches(
	columns: readonly string[],
	swatches: readonly SwatchInput[],
): string[] {
	const names = [...columns];
	for (const name of swatches.flatMap(({ doses = {} }) => Object.keys(doses)))
		if (!names.some((one) => sameName(one, name))) names.push(name);
	return names;
}

const DOSE = share("Dose");

function swatchOf(
	row: SwatchInput,
	index: number,
	names: readonly string[],
): Known<SwatchSet["swatches"][number]> {
	const { mix, finish, sealed, state, doses = {} } = row;
	const color = readField(SWATCH, "color", row, "metric");
	const each = all(
		names.map((name): Known<number | undefined> => {
			const typed = Object.entries(doses).find(([key]) => sameName(key, name));
			return typed === undefined || isBlank(typed[1])
				? is(undefined)
				: readField({ dose: DOSE }, "dose", { dose: typed[1] }, "metric");
		}),
	);
	const read = fromBoth(
		"missing" in color ? is(undefined) : color,
		each,
		(lab, own) => ({
			kinds: [mix, finish, sealed, state].map((kind) => String(kind ?? "")),
			doses: own,
			lab,
		}),
	);
	return "look" in read ? look(`swatch ${index + 1}: ${read.look}`) : read;
}
