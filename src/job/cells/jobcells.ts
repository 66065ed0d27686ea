/** A job from the regions of its tabs: what was typed, and nothing else. */
import { sameName } from "../../calc/names";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	PLANS,
	PRICE,
	QUOTE,
	TRAVEL,
	WHAT_IF,
	WORK_ROW,
} from "../fields/cost";
import { CURE } from "../fields/cure";
import {
	type Field,
	type Fields,
	number,
	type Row,
	type Typed,
} from "../fields/field";
import { JOB } from "../fields/job";
import { CUTOUT, KNOCKOUT } from "../fields/openings";
import { operationKey } from "../fields/operations";
import { PIECE } from "../fields/piece";
import { CURE_LOG, POUR } from "../fields/pour";
import { LOOK, TONE } from "../fields/tone";
import {
	type CorrectionInput,
	type JobFile,
	MOST,
	type PourInput,
	type ToneInput,
} from "../jobfile";
import { isBlank } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import type { StudioFile } from "../studiofile";
import {
	columnUnder,
	type Grid,
	isEmpty,
	listIn,
	placeOf,
	rowsIn,
	type Titled,
	typedIn,
} from "./regions";

/** The regions of a job's tabs, by the end of their names: `job14_pieces`. */
export const JOB_REGIONS = [
	"head",
	"pieces",
	"tones",
	"card",
	"load",
	"cure",
	"cost",
	"quote",
] as const;

export type JobRegion = (typeof JOB_REGIONS)[number];

/** Where one table ends the next begins, under its title. */
export const TABLE_TITLES = {
	cutouts: "Cutouts",
	knockouts: "Knockouts",
	changes: "Change orders",
	payments: "Payments",
	goods: "Mold and other goods",
	travel: "Travel and outside help",
	work: "Work",
} as const;

const TABLES: Titled = {
	[TABLE_TITLES.cutouts]: CUTOUT,
	[TABLE_TITLES.knockouts]: KNOCKOUT,
	[TABLE_TITLES.changes]: CHANGE,
	[TABLE_TITLES.payments]: PAYMENT,
	[TABLE_TITLES.goods]: GOODS,
	[TABLE_TITLES.travel]: TRAVEL,
	[TABLE_TITLES.work]: WORK_ROW,
};

/** Rows of the weigh-out and of the plan that the card has room for; row 0 of the plan is the reserve. */
export const CARD_ROWS = { weighed: 13, steps: 37 } as const;

/** The last row of the weigh-out. */
export const ICE = "Ice, crushed";

/** What stands in the card's column of keys. */
export const weighedKey = (row: number): string => `Weighed ${row}`;
/** What heads the column of a load. */
export const loadHeading = (load: number): string => `Load ${load}`;
export const stepKey = (step: number): string => `Step ${step}`;

/** What stands in the card's column of keys beside a part of a correction. */
export const correctionKey = (
	correction: number,
	part: CorrectionPart,
): string =>
	`Correction ${correction} ${{ tone: "tone", foldedIn: "folded in", added: "added", takenOut: "scooped out" }[part]}`;

export const CORRECTION_PARTS = [
	"tone",
	"foldedIn",
	"added",
	"takenOut",
] as const;
export type CorrectionPart = (typeof CORRECTION_PARTS)[number];

/** Grams by pigment as one cell holds them: `Umber 20; Black 5`. */
export const addedText = (
	added: Readonly<Record<string, Typed>> = {},
): string =>
	Object.entries(added)
		.map(([pigment, grams]) => `${pigment} ${grams}`.trim())
		.join("; ");

const ADDED_TEXT = /^(?:(.*?)\s+)?(-?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?)\s*g?$/i;

/** The inverse; a part that has no number keeps its words, so that the answers can say so. */
export const addedIn = (typed: Typed): Record<string, Typed> =>
	Object.fromEntries(
		String(typed)
			.split(";")
			.map((part) => part.trim())
			.filter((part) => part !== "")
			.map((part) => {
				const [, pigment = "", grams] = ADDED_TEXT.exec(part) ?? [];
				return grams === undefined
					? [part, part]
					: [pigment, Number(grams.replace(",", "."))];
			}),
	);

const WEIGHED: Field = number("", {}, {});

/** All rows of a table, blank ones too. */
const tableIn = <F extends Fields>(
	fields: F,
	grid: Grid,
	units: UnitSystem,
): Row<F>[] => rowsIn(fields, grid, placeOf(fields, grid, units, TABLES));

type Rows = readonly object[];

/** The filled rows, and none at all where every row is blank. */
const filled = <K extends string, R extends object>(
	key: K,
	rows: readonly R[],
): Partial<Record<K, R[]>> => {
	const own = rows.filter((row) => !isEmpty(row));
	return (own.length > 0 ? { [key]: own } : {}) as Partial<Record<K, R[]>>;
};

/** For each row of a table, the place of the filled row among the filled ones. */
export const filledPlaces = (rows: Rows): (number | undefined)[] => {
	let next = 0;
	return rows.map((row) => (isEmpty(row) ? undefined : next++));
};

export const pieceRows = (grid: Grid, units: UnitSystem) =>
	tableIn(PIECE, grid, units);
export const knockoutRows = (grid: Grid, units: UnitSystem) =>
	tableIn(KNOCKOUT, grid, units);

export const workRows = (grid: Grid, units: UnitSystem) =>
	tableIn(WORK_ROW, grid, units);

/** Hours by the keys of their operations. */
function workIn(grid: Grid, units: UnitSystem): Pick<JobFile, "work"> {
	const typed = workRows(grid, units).flatMap(({ operation, ...hours }) =>
		isEmpty(hours) ? [] : [[operationKey(operation), hours] as const],
	);
	return typed.length > 0 ? { work: Object.fromEntries(typed) } : {};
}

/** The tones with what stands under the names of pigments, and these names; blank rows too. A dose under no name has none. */
export function toneTable(
	grid: Grid,
	units: UnitSystem,
): { pigments: string[]; rows: ToneInput[] } {
	const place = placeOf(TONE, grid, units);
	const own = Object.values(place.columns);
	const headings = grid[place.row] ?? [];
	const rows = rowsIn(TONE, grid, place).map((row, index): ToneInput => {
		const cells = grid[place.row + 1 + index] ?? [];
		const doses = cells.flatMap((cell, column) =>
			own.includes(column) || isBlank(cell)
				? []
				: [
						[
							String(headings[column] ?? "").trim(),
							typedIn(WEIGHED, cell) ?? "",
						] as const,
					],
		);
		return doses.length > 0
			? { ...row, doses: Object.fromEntries(doses) }
			: row;
	});
	return { pigments: place.others.map(([, name]) => name.trim()), rows };
}

/** The job, as far as its regions are given. */
export function jobIn(
	regions: Partial<Record<JobRegion, Grid>>,
	studio: StudioFile,
	units: UnitSystem,
): JobFile {
	const { head, pieces, tones, card, load, cure, cost, quote } = regions;
	const toned = tones ? toneTable(tones, units) : undefined;
	const look = tones ? listIn(LOOK, tones, units) : {};
	return {
		units,
		...(head && listIn(JOB, head, units)),
		...look,
		pieces: pieces
			? pieceRows(pieces, units).filter((row) => !isEmpty(row))
			: [],
		...(pieces && {
			...filled("cutouts", tableIn(CUTOUT, pieces, units)),
			...filled("knockouts", knockoutRows(pieces, units)),
		}),
		...(toned && toned.pigments.length > 0 && { pigments: toned.pigments }),
		tones: toned?.rows.filter((row) => !isEmpty(row)) ?? [],
		...(card && poursIn(card, ingredientsOf(studio, look.mix), units)),
		...(load && loadIn(load)),
		...(cure && {
			...listIn(CURE, cure, units),
			...filled("cureLog", tableIn(CURE_LOG, cure, units)),
		}),
		...(cost && {
			...listIn(PRICE, cost, units),
			whatIfs: PLANS.slice(1).map((plan) => listIn(WHAT_IF, cost, units, plan)),
			...workIn(cost, units),
			...filled("changes", tableIn(CHANGE, cost, units)),
			...filled("payments", tableIn(PAYMENT, cost, units)),
			goods: tableIn(GOODS, cost, units).filter((row) => !isEmpty(row)),
			...filled("travel", tableIn(TRAVEL, cost, units)),
		}),
		...(quote && listIn(QUOTE, quote, units)),
	};
}

/** Names of the ingredients in the order of the card's rows, ice last. */
export const ingredientsOf = (
	{ mixes }: StudioFile,
	mix: unknown,
): string[] => [
	...mixes
		.filter((row) => sameName(String(row.mix ?? ""), String(mix ?? "")))
		.map(({ ingredient }) => String(ingredient ?? ""))
		.slice(0, CARD_ROWS.weighed - 1),
	ICE,
];

/** The load that the card shows: one cell. */
function loadIn(grid: Grid): Pick<JobFile, "load"> {
	const load = typedIn(WEIGHED, grid[0]?.[0]);
	// A text stays: the answers say what is wrong with it.
	return load === undefined ? {} : { load: load as number };
}

/** What was typed of each load. */
function poursIn(
	grid: Grid,
	ingredients: readonly string[],
	units: UnitSystem,
): Pick<JobFile, "pours"> {
	const keys = new Map(
		grid.map((row, index) => [String(row[0] ?? "").trim(), index] as const),
	);
	const at = (key: string, column: number) =>
		typedIn(WEIGHED, grid[keys.get(key) ?? -1]?.[column]);
	const pours = Array.from({ length: MOST.pours }, (_, i): PourInput => {
		const load = i + 1;
		const heading = loadHeading(load);
		const column = columnUnder(heading, grid);
		const weighed = ingredients.flatMap((name, row) => {
			const place =
				row === ingredients.length - 1 ? CARD_ROWS.weighed : row + 1;
			const typed = at(weighedKey(place), column);
			return typed === undefined ? [] : [[name, typed] as const];
		});
		const steps = Array.from({ length: CARD_ROWS.steps }, (_, step) =>
			at(stepKey(step), column),
		).flatMap((typed, step) =>
			typed === undefined ? [] : [[String(step), typed] as const],
		);
		const corrections = withoutEnd(
			Array.from({ length: MOST.corrections }, (_, i): CorrectionInput => {
				const part = (key: CorrectionPart) =>
					at(correctionKey(i + 1, key), column);
				const added = part("added");
				return Object.fromEntries(
					Object.entries({
						tone: part("tone"),
						foldedIn: part("foldedIn"),
						takenOut: part("takenOut"),
						...(added !== undefined && { added: addedIn(added) }),
					}).filter(([, typed]) => typed !== undefined),
				);
			}),
		);
		return {
			load,
			...listIn(POUR, grid, units, heading),
			...(weighed.length > 0 && { weighed: Object.fromEntries(weighed) }),
			...(steps.length > 0 && { steps: Object.fromEntries(steps) }),
			...(corrections.length > 0 && { corrections }),
		};
	}).filter((pour) => Object.keys(pour).length > 1);
	return pours.length > 0 ? { pours } : {};
}

/** Without the empty rows behind the last one: those between keep their places. */
function withoutEnd<R extends object>(rows: readonly R[]): R[] {
	const last = rows.reduce((at, row, i) => (isEmpty(row) ? at : i), -1);
	return rows.slice(0, last + 1);
}
