/** Where on the Pour card the weights and notes of a load stand. */
import { InputError } from "../calc/errors";
import type { Fresh, Weighing } from "./messages";
import type { JobRead } from "./readjob";
import type { Cell } from "./studio";

/** What the card has a row each for, from the first. */
export const NOTES: readonly (keyof Fresh)[] = [
	"spread",
	"mixTemperature",
	"airTemperature",
	"waterIn",
	"lastTone",
	"weighedBy",
	"lots",
	"remarks",
	"result",
];

type Column = Weighing["column"];

export const isNote = (column: Column): column is keyof Fresh =>
	(NOTES as readonly Column[]).includes(column);

/** Slots on the card of what is no note. */
const WEIGHTS: Readonly<Record<Exclude<Column, keyof Fresh>, string>> = {
	mixed: "mixed",
	reserve: "reserve_weights",
	weights: "weights",
};

export const isColumn = (column: string): column is Column =>
	[...NOTES, ...Object.keys(WEIGHTS)].includes(column);

/** A cell as it was read. */
export interface Place {
	/** From 0, on the card. */
	row: number;
	column: number;
	value: Cell;
	format: string;
}

/** A cell of the card: the row, from 1, of a load's column in a block. */
interface CardCell {
	slot: string;
	row: number;
	load: number;
}

export const cellOf = ({ column, row, load }: Weighing): CardCell =>
	isNote(column)
		? { slot: "fresh", row: NOTES.indexOf(column) + 1, load }
		: { slot: WEIGHTS[column], row, load };

/** Where the number of the plan is written that a load was begun with. */
export const planCell = (load: number): CardCell => ({
	slot: "plan_numbers",
	row: 1,
	load,
});

export function placeIn(read: JobRead, { slot, row, load }: CardCell): Place {
	const card = cardOf(read);
	const block = card.tab.blocks.find((one) => one.slot === slot);
	const area = read.areaOf(`Pour card.${slot}`);
	if (!block || row > area.rows)
		throw new InputError("There is no such cell on the Pour card");
	const [at, across] = [area.row + row - 1, area.column + load - 1];
	return {
		row: at,
		column: across,
		value: card.values[at]?.[across] ?? "",
		format: card.page.cells[at]?.[across]?.format ?? "General",
	};
}

export function cardOf(read: JobRead) {
	const card = read.tabs.find(({ tab }) => tab.name === "Pour card");
	if (!card) throw new Error("The Pour card was not read");
	return card;
}
