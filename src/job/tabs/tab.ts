/**
 * What a tab answers: declared once as rows and columns. The sheet function of that name computes it from the typed regions, and the
 * template gives its cells their formats.
 *
 * Headings are part of the answer, so that they stay with their numbers where a person puts a column in between.
 */
import type { Basis } from "../answers/basis";
import { basisOf } from "../answers/basis";
import { isKnown, type Known, type Said, saying } from "../answers/known";
import { type JobRegion, jobIn } from "../cells/jobcells";
import { type Grid, labelText } from "../cells/regions";
import { type StudioRegion, studioIn } from "../cells/studiocells";
import { isDay, serialDay } from "../reading/days";
import { fromSi, type Quantity, type UnitSystem } from "../reading/units";

/** What a cell shows. */
export type Cell = string | number;

/** How a cell shows it. */
export type Format =
	| "text"
	| "plain"
	| "whole"
	| "number"
	| "share"
	| "percent"
	| "money"
	| "date"
	| "length"
	| "area"
	| "volume"
	| "coating"
	| "mass"
	| "weighed"
	| "pigment"
	| "density"
	| "temperature";

export interface Shown {
	/** Heading of the column or label of the row; `{mass}` stands for the unit. */
	label: string;
	format: Format;
	/** What it is in: numbers come in SI and are turned into the workbook's unit. */
	unit?: Quantity;
	/** The public function that gives the same. */
	by?: string;
	/** What a person may want to know of it. */
	note?: string;
	wrap?: true;
}

/** What is counted in SI and shown in the workbook's unit, which stands in its label. */
export const measured = (
	label: string,
	unit: Quantity & Format,
	by?: string,
): Shown => ({
	label: `${label}, {${unit}}`,
	format: unit,
	unit,
	...(by && { by }),
});

/** Words that take several lines. */
export const wrapped = (label: string, by?: string): Shown => ({
	label,
	format: "text",
	wrap: true,
	...(by && { by }),
});

/** A column of a table or a label of a list, and the value there for a row, or for the job. */
export type ShownOf<T> = Shown & { of(thing: T): Value };

export const valuesOf = <T>(shown: readonly ShownOf<T>[], thing: T): Value[] =>
	shown.map(({ of }) => of(thing));

/** A region of a job's tabs or the studio's; `find` is the cell of the Pour log that says what is looked for. */
export type Region = JobRegion | StudioRegion | "find";

/** What an answer is worked out from. */
export interface TabInput extends Basis {
	regions: Readonly<Partial<Record<Region, Grid>>>;
	units: UnitSystem;
}

/** A value of an answer, known or not. */
export type Value = Known<Cell | undefined> | Said | Cell | undefined;

export interface TabAnswer {
	/** Of its sheet function. */
	name: string;
	summary: string;
	/** Regions that it reads, beside the studio's settings. */
	needs: readonly Region[];
	/** A heading a column, or a label a row. */
	shape: "table" | "list";
	shown: readonly Shown[];
	/** Headings that depend on what was typed, such as names of pigments, by their column. */
	headings?(input: TabInput): Readonly<Record<number, string>>;
	/** Of a table: rows under the headings. Of a list: a value for each label, as often as it has columns of them. */
	values(input: TabInput): readonly (readonly Value[])[];
}

/** Reads the regions and works out what all answers stand on. */
export function tabInput(
	regions: Readonly<Partial<Record<Region, Grid>>>,
): TabInput {
	const settings = regions.settings ?? [];
	const { units, ...studio } = studioIn({ ...regions, settings });
	return { ...basisOf(studio, jobIn(regions, studio, units)), regions, units };
}

/** The answer as cells: a table with its headings, or the values of a list, whose labels stand beside. */
export function tabCells(answer: TabAnswer, input: TabInput): Cell[][] {
	const { shape, shown } = answer;
	const values = answer.values(input);
	const cell = (value: Value, at: number) =>
		cellOf(value, shown[at], input.units);
	if (shape === "list")
		return shown.map((_, at) => values.map((column) => cell(column[at], at)));
	const own = answer.headings?.(input) ?? {};
	return [
		shown.map(({ label }, at) => own[at] ?? labelText(label, input.units)),
		...values.map((row) => shown.map((_, at) => cell(row[at], at))),
	];
}

function cellOf(
	value: Value,
	shown: Shown | undefined,
	units: UnitSystem,
): Cell {
	if (value === undefined) return "";
	if (typeof value === "object") {
		if ("say" in value) return value.say;
		return isKnown(value) ? cellOf(value.is, shown, units) : saying(value);
	}
	if (typeof value === "string")
		return shown?.format === "date" && isDay(value) ? serialDay(value) : value;
	return shown?.unit ? fromSi(value, shown.unit, units) : value;
}

/** The rows of an answer beside the rows of a typed table, down to the last that is filled: blank where nothing was typed. */
export function besideTyped(
	places: readonly (number | undefined)[],
	rows: readonly (readonly Value[])[],
): (readonly Value[])[] {
	const last = places.reduce<number>(
		(found, place, at) => (place === undefined ? found : at),
		-1,
	);
	return places
		.slice(0, last + 1)
		.map((place) => (place === undefined ? [] : (rows[place] ?? [])));
}
