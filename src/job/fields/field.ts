/**
 * How a field is declared: one constant for each thing that a person types about a job or the studio.
 *
 * From the constant follow the check of a file, the panel's entry, the heading that pasting understands, the cell with its
 * format, dropdown and note, and how the answers read it.
 */
import type { Shape } from "../../calc/shapes";
import { lengthIn, numberIn, textIn, wordIn } from "../reading/cells";
import { colorIn } from "../reading/colortext";
import { dayIn, minutesIn } from "../reading/days";
import { type Limits, limited, shareIn } from "../reading/limits";
import { type Quantity, toSi, type UnitSystem } from "../reading/units";
import { weightTyped } from "../reading/weights";

/** A value as it was typed: lengths may be texts, days are `2026-05-04`, times `9:40`, shares 0 to 1. */
export type Typed = string | number;

export type Kind =
	| "text"
	| "word"
	| "length"
	| "number"
	| "weight"
	| "share"
	| "money"
	| "day"
	| "time"
	| "color";

/** Lists of names that a field's name is chosen from. */
type NameList = "mixes" | "pigments" | "pieces" | "tones";

export interface Field<T = unknown> extends Options {
	/** Heading of its column or label of its cell; `{mass}` stands for the unit. */
	label: string;
	kind: Kind;
	unit?: Quantity;
	limits?: Limits;
	words?: readonly string[];
	/** What the answers get: in SI where it has a unit. @throws InputError with one sentence. */
	read(name: string, typed: unknown, units: UnitSystem): T;
}

interface Options {
	/** One line, for the cell's note and the panel's entry. */
	help?: string;
	/** What the panel asks for, where it is another word than the label. */
	asks?: string;
	/** What to type, where the answers miss it and the label reads badly in a sentence. */
	wanted?: string;
	/** A job's file must have it. */
	required?: true;
	/** Typed for one pour, client or agreement: a repeat order begins without it. */
	once?: true;
	/** Shapes that use it; all where nothing is said. */
	shapes?: readonly Shape[];
	/** Names to choose from. */
	from?: NameList;
	/** Other headings that pasting understands. */
	also?: readonly string[];
	/** Label that an earlier version of the workbook had. */
	formerly?: readonly string[];
	/** What a new job, or a new studio, begins with. */
	start?: Typed | Readonly<Record<UnitSystem, Typed>>;
}

export type Fields = Readonly<Record<string, Field>>;

/** What a file holds of a record: only what was typed. */
export type Row<F extends Fields> = { [K in keyof F]?: Typed };

/** What the answers read of a record: undefined where nothing was typed. */
export type Read<F extends Fields> = {
	[K in keyof F]: F[K] extends Field<infer T> ? T | undefined : never;
};

/** A field's key as sentences call it: `dropHeight` is `drop height`, `a` is `A`. */
export const wordOf = (key: string): string =>
	key.length === 1
		? key.toUpperCase()
		: key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const POSITIVE: Limits = { above: 0 };
const NOT_NEGATIVE: Limits = { min: 0 };

export const text = (label: string, options: Options = {}): Field<string> => ({
	...options,
	label,
	kind: "text",
	read: textIn,
});

export const word = <W extends string>(
	label: string,
	words: readonly W[],
	options: Options = {},
): Field<W> => ({
	...options,
	label,
	kind: "word",
	words,
	read: (name, typed) => wordIn(name, typed, words),
});

export const length = (
	label: string,
	options: Options = {},
	limits = POSITIVE,
): Field<number> => ({
	...options,
	label,
	kind: "length",
	unit: "length",
	limits,
	read: (name, typed, units) =>
		limited(name, lengthIn(name, typed, units), typed, limits, "length", units),
});

export const number = (
	label: string,
	options: Options & { unit?: Quantity } = {},
	limits: Limits = NOT_NEGATIVE,
): Field<number> => ({
	...options,
	label,
	kind: "number",
	limits,
	read(name, typed, units) {
		const { unit } = options;
		const value = numberIn(name, typed);
		const si = unit ? toSi(value, unit, units) : value;
		return limited(name, si, typed, limits, unit, units);
	},
});

/** A weight as a scale said it; read in the workbook's unit of mass. */
export const weight = (
	label: string,
	options: Options = {},
): Field<number> => ({
	...options,
	label,
	kind: "weight",
	limits: NOT_NEGATIVE,
	read: (name, typed, units) =>
		limited(
			name,
			weightTyped(name, typed, units),
			typed,
			NOT_NEGATIVE,
			undefined,
			units,
		),
});

export const whole = (
	label: string,
	options: Options = {},
	limits: Limits = NOT_NEGATIVE,
): Field<number> => number(label, options, { ...limits, whole: true });

export const temperature = (
	label: string,
	options: Options = {},
): Field<number> =>
	number(label, { ...options, unit: "temperature" }, { above: -273.15 });

export const share = (
	label: string,
	options: Options = {},
	limits: Limits = {},
): Field<number> => ({
	...options,
	label,
	kind: "share",
	limits,
	read: (name, typed) => shareIn(name, typed, limits),
});

export const money = (
	label: string,
	options: Options = {},
	limits: Limits = NOT_NEGATIVE,
): Field<number> => ({
	...options,
	label,
	kind: "money",
	limits,
	read: (name, typed, units) =>
		limited(name, numberIn(name, typed), typed, limits, undefined, units),
});

export const day = (label: string, options: Options = {}): Field<string> => ({
	...options,
	label,
	kind: "day",
	read: dayIn,
});

/** A time of day, read in minutes after midnight. */
export const time = (label: string, options: Options = {}): Field<number> => ({
	...options,
	label,
	kind: "time",
	read: minutesIn,
});

export const color = (
	label: string,
	options: Options = {},
): Field<ReturnType<typeof colorIn>> => ({
	...options,
	label,
	kind: "color",
	read: colorIn,
});
