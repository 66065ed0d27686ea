/** A job file: everything that a person typed about one job, as plain JSON, and the check of one that comes in. */
import {
	CHANGE,
	type ChangeRow,
	GOODS,
	type GoodsRow,
	PAYMENT,
	type PaymentRow,
	PRICE,
	type PriceRow,
	QUOTE,
	type QuoteRow,
	TRAVEL,
	type TravelRow,
	WHAT_IF,
	type WhatIfRow,
	WORK,
	type WorkRow,
} from "./fields/cost";
import { CURE, type CureRow } from "./fields/cure";
import { number, share, type Typed, weight, whole, word } from "./fields/field";
import { JOB, type JobRow } from "./fields/job";
import {
	CUTOUT,
	type CutoutRow,
	KNOCKOUT,
	type KnockoutRow,
} from "./fields/openings";
import { PIECE, type PieceRow, pieceFields } from "./fields/piece";
import {
	ADDED,
	CORRECTION,
	type CorrectionRow,
	CURE_LOG,
	type CureLogRow,
	POUR,
	type PourRow,
} from "./fields/pour";
import { LOOK, type LookRow, TONE, type ToneRow } from "./fields/tone";
import { type Mistake, mistakesIn, type Shape } from "./mistakes";
import type { UnitSystem } from "./reading/units";

/** A tone with its dose of each pigment, in the basis in which the studio's Pigments tab states it. */
export interface ToneInput extends ToneRow {
	doses?: Readonly<Record<string, Typed>>;
}

/** What happened on pour day to one load. */
export interface PourInput extends PourRow {
	load: number;
	/** What the scale said for each ingredient, by its name; `Ice, crushed` for ice. */
	weighed?: Readonly<Record<string, Typed>>;
	/** What the scale said at each step by its number; 0 is the reserve. */
	steps?: Readonly<Record<string, Typed>>;
	/** In the order in which they were made. */
	corrections?: readonly CorrectionInput[];
}

/** What was done to a tone that came out too strong or too weak. */
export interface CorrectionInput extends CorrectionRow {
	/** Grams of each pigment as it goes on the scale. */
	added?: Readonly<Record<string, Typed>>;
}

/** Hours of each operation, by its key. */
type WorkInput = Readonly<Record<string, WorkRow>>;

export interface JobFile extends JobRow, LookRow, CureRow, PriceRow, QuoteRow {
	/** Free text about the file; not read. */
	about?: readonly string[];
	units: UnitSystem;
	pieces: readonly PieceRow[];
	cutouts?: readonly CutoutRow[];
	knockouts?: readonly KnockoutRow[];
	/** Names of the pigments that have a column, dosed or not. */
	pigments?: readonly string[];
	tones: readonly ToneInput[];
	pours?: readonly PourInput[];
	/** The load that the Pour card shows. */
	load?: number;
	cureLog?: readonly CureLogRow[];
	whatIfs?: readonly WhatIfRow[];
	changes?: readonly ChangeRow[];
	payments?: readonly PaymentRow[];
	work?: WorkInput;
	goods?: readonly GoodsRow[];
	travel?: readonly TravelRow[];
}

/** How many rows a workbook has room for. */
export const MOST = {
	pieces: 20,
	cutouts: 12,
	knockouts: 8,
	pigments: 4,
	tones: 6,
	pours: 8,
	corrections: 4,
	cureLog: 12,
	changes: 6,
	payments: 8,
	goods: 8,
	travel: 4,
	whatIfs: 2,
} as const;

const UNITS = word("Units", ["metric", "us"], { required: true });
export const LOAD = whole(
	"Load",
	{ required: true, once: true },
	{ min: 1, max: MOST.pours },
);

/** An amount as a scale said it. */
const WEIGHED = number("Weighed", { once: true });

/**
 * Dry pigment, in the basis in which the studio's Pigments tab states doses.
 *
 * Above twice the 10% of cement that ASTM C979 allows at most it is a slip: 1 typed for 1%.
 */
export const DOSE = share("Dose", {}, { max: 0.2 });

/** The parts of a job file by their keys. */
export const JOB_SHAPE: Shape = {
	fields: {
		units: UNITS,
		...JOB,
		...LOOK,
		...CURE,
		...PRICE,
		...QUOTE,
		load: whole("Load", { once: true }, { min: 1, max: MOST.pours }),
	},
	lists: {
		pieces: {
			of: { fields: PIECE, fieldsOf: ({ shape }) => pieceFields(shape) },
			least: 1,
			most: MOST.pieces,
		},
		cutouts: { of: { fields: CUTOUT }, most: MOST.cutouts },
		knockouts: { of: { fields: KNOCKOUT }, most: MOST.knockouts },
		tones: {
			of: { fields: TONE, values: { doses: DOSE } },
			least: 1,
			most: MOST.tones,
		},
		pours: {
			of: {
				fields: { load: LOAD, ...POUR },
				values: {
					weighed: weight("Weighed", { once: true }),
					steps: WEIGHED,
				},
				lists: {
					corrections: {
						of: { fields: CORRECTION, values: { added: ADDED } },
						most: MOST.corrections,
					},
				},
			},
			most: MOST.pours,
		},
		cureLog: { of: { fields: CURE_LOG }, most: MOST.cureLog },
		whatIfs: { of: { fields: WHAT_IF }, most: MOST.whatIfs },
		changes: { of: { fields: CHANGE }, most: MOST.changes },
		payments: { of: { fields: PAYMENT }, most: MOST.payments },
		goods: { of: { fields: GOODS }, most: MOST.goods },
		travel: { of: { fields: TRAVEL }, most: MOST.travel },
	},
	rowsByKey: { work: WORK },
	names: { pigments: MOST.pigments },
	free: ["about"],
};

/** What is wrong with the fields of a file, whatever studio it is for. */
export const fieldMistakes = (input: unknown): Mistake[] =>
	mistakesIn(input, JOB_SHAPE, {
		path: "",
		units: unitsOf(input),
		file: "the job",
	});

/** The units that a file says it is in, as far as they are any. */
export const unitsOf = (input: unknown): UnitSystem =>
	(input as { units?: unknown } | null)?.units === "us" ? "us" : "metric";
