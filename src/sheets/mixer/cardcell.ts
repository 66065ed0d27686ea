/** Where on the Pour card a weight or a note of a load is typed. */
import { InputError } from "../../calc/errors";
import { nameKey, sameName } from "../../calc/names";
import {
	CARD_ROWS,
	correctionKey,
	ingredientsOf,
	loadHeading,
	stepKey,
	weighedKey,
} from "../../job/cells/jobcells";
import { columnUnder, labelText } from "../../job/cells/regions";
import type { Typed } from "../../job/fields/field";
import { POUR } from "../../job/fields/pour";
import type { CardCell, Weighing } from "../messages";
import type { JobRead } from "../reading/readjob";

/** A cell of the card's region as it was read; row and column count from 0, in the region. */
export interface CardPlace {
	row: number;
	column: number;
	value: Typed;
}

/** Where the number of the plan is written that a load was begun with. */
export const PLAN_NUMBER: CardCell = { note: "planNumber" };

/** @throws InputError for a cell that the card does not have. */
export function cardPlace(
	read: JobRead,
	{ load, cell }: Pick<Weighing, "load" | "cell">,
): CardPlace {
	const { grid } = read.regions.card;
	const key = nameKey(keyOf(read, cell));
	const row = grid.findIndex(([first]) => nameKey(String(first ?? "")) === key);
	if (row < 0) throw new InputError(noCell());
	const column = columnUnder(loadHeading(load), grid);
	return { row, column, value: grid[row]?.[column] ?? "" };
}

export const noCell = (): string => "There is no such cell on the Pour card";

/** What stands beside the cell in the card's column of keys. */
function keyOf({ job, studio }: JobRead, cell: CardCell): string {
	if ("step" in cell) return stepKey(cell.step);
	if ("correction" in cell) return correctionKey(cell.correction, cell.part);
	if ("note" in cell) {
		if (!(cell.note in POUR)) throw new InputError(noCell());
		return labelText(POUR[cell.note].label, studio.units);
	}
	const names = ingredientsOf(studio.file, job.mix);
	const at = names.findIndex((name) => sameName(name, cell.weighed));
	if (at < 0) throw new InputError(noCell());
	return weighedKey(at === names.length - 1 ? CARD_ROWS.weighed : at + 1);
}
