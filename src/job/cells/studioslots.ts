/** What stands in the typed cells of the studio's tabs, by the keys of their blocks: the inverse of reading them. */
import { InputError } from "../../calc/errors";
import { sameName } from "../../calc/names";
import type { Typed } from "../fields/field";
import { LOGGED } from "../fields/log";
import { INGREDIENT } from "../fields/mix";
import { PIGMENT } from "../fields/pigment";
import { SETTINGS } from "../fields/settings";
import { STOCK } from "../fields/stock";
import { SWATCH } from "../fields/swatch";
import type { StudioFile } from "../studiofile";
import { cellOf, listSlots, rowOf, type Slots, tableSlot } from "./jobslots";
import { CLOSED } from "./studiocells";

/** Columns of the Swatches tab: fields, then a dose of each pigment, then the other fields. */
export const SWATCH_COLUMNS = { before: 4, pigments: 8 } as const;

/** Every typed cell of the studio's tabs. @throws InputError for more dosed pigments than Swatches has columns. */
export const studioSlots = (studio: StudioFile): Slots => ({
	...listSlots(SETTINGS, studio.settings),
	...closedSlot(studio),
	...tableSlot("mixes", INGREDIENT, studio.mixes),
	...tableSlot("pigments", PIGMENT, studio.pigments),
	...swatchSlots(studio),
	...tableSlot("stock", STOCK, studio.stock),
	...tableSlot("pours", LOGGED, studio.log),
});

const closedSlot = ({ closedDays = [] }: StudioFile): Slots =>
	closedDays.length === 0
		? {}
		: { closed_days: closedDays.map((day) => [cellOf(CLOSED.day, day)]) };

/** Names of the pigments that get a column: those of the file, then others that a swatch doses. */
function dosedPigments({ swatchPigments = [], swatches = [] }: StudioFile) {
	const names: string[] = [];
	for (const name of [
		...swatchPigments,
		...swatches.flatMap(({ doses = {} }) => Object.keys(doses)),
	])
		if (!names.some((one) => sameName(one, name))) names.push(name);
	if (names.length > SWATCH_COLUMNS.pigments)
		throw new InputError(
			`the swatches dose ${names.length} pigments (${names.join(", ")}): there is room for ${SWATCH_COLUMNS.pigments}`,
		);
	return names;
}

function swatchSlots(studio: StudioFile): Slots {
	const names = dosedPigments(studio);
	const rows = (studio.swatches ?? []).map((swatch): Typed[] => {
		const cells = rowOf(SWATCH, swatch);
		const doses = Array.from({ length: SWATCH_COLUMNS.pigments }, (_, column) =>
			doseOf(swatch.doses, names[column]),
		);
		return [
			...cells.slice(0, SWATCH_COLUMNS.before),
			...doses,
			...cells.slice(SWATCH_COLUMNS.before),
		];
	});
	return {
		...(names.length > 0 && { swatch_pigments: [names] }),
		...(rows.length > 0 && { swatches: rows }),
	};
}

/** The dose of a pigment; blank where there is none. */
export const doseOf = (
	doses: Readonly<Record<string, Typed>> = {},
	pigment?: string,
): Typed =>
	pigment === undefined
		? ""
		: (Object.entries(doses).find(([name]) => sameName(name, pigment))?.[1] ??
			"");
