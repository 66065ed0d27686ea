/** How a sheet function is declared: one constant, from which stubs, checks, help and tests derive. */
import {
	type Limits,
	lengthIn,
	limited,
	numberIn,
	shareIn,
	textIn,
	wordIn,
} from "./cells";
import { type Quantity, toSi, type UnitSystem } from "./units";

/** What a cell shows; `""` is a blank cell. */
export type CellValue = number | string;

/** One cell's worth: how it is read and what a person is told about it. */
export interface CellParam<T> {
	kind: "cell";
	/** Says what it is, with an example. */
	help: string;
	unit?: Quantity;
	share?: boolean;
	words?: readonly string[];
	optional: boolean;
	/** What a blank means, in SI; absent when it means nothing. */
	blank?: T;
	read(name: string, cell: unknown, units: UnitSystem): T;
}

/** A column (or row) whose values belong together. */
export interface ListParam<T> {
	kind: "list";
	help: string;
	unit?: Quantity;
	share?: boolean;
	optional: boolean;
	of: CellParam<unknown>;
	/** Not compared in size with the other lists. */
	alone: boolean;
	/** A range of blanks is an empty list, no mistake. */
	mayBeEmpty: boolean;
	/** Although optional, a row of it needs the required ones. */
	decides: boolean;
	/** Never filled: carries the type of what `compute` gets. */
	type?: T;
}

/** Rows of named columns; columns of one kind may follow. */
export interface TableParam<T> {
	kind: "table";
	help: string;
	optional: boolean;
	columns: Readonly<Record<string, CellParam<unknown>>>;
	/** Reads every column after the named ones, as `more`. */
	more?: CellParam<unknown>;
	alone: boolean;
	type?: T;
}

export interface UnitsParam {
	kind: "units";
	help: string;
	optional: true;
}

export type Param =
	| CellParam<unknown>
	| ListParam<unknown>
	| TableParam<unknown>
	| UnitsParam;

type Read<P> =
	P extends CellParam<infer T>
		? T
		: P extends ListParam<infer T>
			? T[]
			: P extends TableParam<infer T>
				? T[]
				: never;

/** What `compute` gets: every argument but `units` by its name, read and in SI. */
export type Arguments<P> = { [K in keyof P]: Read<P[K]> };

export interface Column {
	text: string;
	unit?: Quantity;
}

/**
 * What comes back: a value, unless a shape says more. A value or `row`: one a call, or one a row where a scalar argument
 * is a column.
 * `column` and `table`: as many rows as `compute` says, or, with `beside`, one beside each row of that argument.
 */
export interface Answer {
	shape?: "row" | "column" | "table";
	text: string;
	unit?: Quantity;
	/** The columns of a `row` or `table`, left to right; later ones are like the last. */
	columns?: readonly Column[];
	beside?: string;
	/** A column comes back as a row where the argument `beside` was a row. */
	turns?: boolean;
}

export interface Example {
	/** Arguments as typed into a formula, without decimals, so that they read in every locale: `8%`, `A2:K6`. */
	shown: readonly string[];
	/** The same as the function receives them. */
	values: readonly unknown[];
	answer: unknown;
	/** How the answer comes about by hand, or where it is printed. */
	working: string;
}

export interface Declaration<P> {
	name: string;
	group: string;
	/** One line, reads well alone. */
	summary: string;
	/** What it does not cover, and whom to ask instead. */
	limits?: string;
	params: P;
	answer: Answer;
	example: Example;
	source: string;
	/** `rows`: which rows of the lists and tables that belong together were filled, from 1, for errors. */
	compute(
		args: Arguments<P>,
		units: UnitSystem,
		rows: readonly number[],
	): unknown;
}

export interface SheetFunction extends Omit<Declaration<unknown>, "params"> {
	params: Readonly<Record<string, Param>>;
}

export const sheetFunction = <P extends Record<string, Param>>(
	declaration: Declaration<P>,
): SheetFunction => declaration as unknown as SheetFunction;

interface Options<T> {
	/** What a blank means, in SI; makes the argument optional. */
	blank?: T;
	/** May be blank, and `compute` then gets undefined. */
	optional?: boolean;
}

type Maybe<T, O> = O extends { optional: true } ? T | undefined : T;

function cell<T, O extends Options<T>>(
	help: string,
	options: O | undefined,
	read: CellParam<T>["read"],
	more: Partial<CellParam<T>> = {},
): CellParam<Maybe<T, O>> {
	const optional = options?.optional === true || options?.blank !== undefined;
	return {
		kind: "cell",
		help,
		optional,
		blank: options?.blank,
		read,
		...more,
	} as CellParam<Maybe<T, O>>;
}

/** A number with a unit, in SI; above 0 unless the options say otherwise. */
const quantity =
	(unit: Quantity, usual: Limits) =>
	<O extends Options<number> & Limits>(help: string, options?: O) => {
		const limits = limitsOf(options, usual);
		return cell<number, O>(
			help,
			options,
			(name, value, units) => {
				const si =
					unit === "length"
						? lengthIn(name, value, units)
						: toSi(numberIn(name, value), unit, units);
				return limited(name, si, value, limits, unit, units);
			},
			{ unit },
		);
	};

function limitsOf(options: Limits | undefined, usual: Limits): Limits {
	const { above, min, below, max, whole } = options ?? {};
	const own = { above, min, below, max, whole };
	return Object.values(own).some((limit) => limit !== undefined) ? own : usual;
}

const POSITIVE = { above: 0 };

export const length = quantity("length", POSITIVE);
/** A length that may be 0 or negative, e.g. a coordinate. */
export const coordinate = quantity("length", {});
export const area = quantity("area", POSITIVE);
export const volume = quantity("volume", POSITIVE);
export const mass = quantity("mass", POSITIVE);
export const pigment = quantity("pigment", POSITIVE);
export const density = quantity("density", POSITIVE);
export const temperature = quantity("temperature", { min: -273.15 });
export const stress = quantity("stress", POSITIVE);
export const wind = quantity("wind", { min: 0 });
export const coverage = quantity("coverage", POSITIVE);

/** A number without a unit. */
export const number = <O extends Options<number> & Limits>(
	help: string,
	options?: O,
) => {
	const limits = limitsOf(options, {});
	return cell<number, O>(help, options, (name, value, units) =>
		limited(name, numberIn(name, value), value, limits, undefined, units),
	);
};

/** A share, 0 to 1, which a cell shows as a percentage. */
export const share = <O extends Options<number> & Limits>(
	help: string,
	options?: O,
) =>
	cell<number, O>(
		help,
		options,
		(name, value) => shareIn(name, value, limitsOf(options, {})),
		{ share: true },
	);

/** A name, or another text. */
export const text = <O extends Options<string>>(help: string, options?: O) =>
	cell<string, O>(help, options, textIn);

/** One of some words. */
export const word = <W extends string, O extends Options<W>>(
	words: readonly W[],
	help: string,
	options?: O,
) =>
	cell<W, O>(help, options, (name, value) => wordIn(name, value, words), {
		words,
	});

/** Something else a cell may hold, e.g. a color. */
export const custom = <T, O extends Options<T>>(
	help: string,
	read: CellParam<T>["read"],
	options?: O,
) => cell<T, O>(help, options, read);

/** A column or row of such cells; `alone` when its size is its own. */
export const list = <T>(
	of: CellParam<T>,
	options: Partial<
		Record<"alone" | "optional" | "mayBeEmpty" | "decides", boolean>
	> = {},
): ListParam<T> => ({
	kind: "list",
	help: of.help,
	unit: of.unit,
	share: of.share,
	optional: options.optional === true || of.optional,
	of,
	alone: options.alone === true,
	mayBeEmpty: options.mayBeEmpty === true,
	decides: options.decides === true,
});

type Columns = Record<string, CellParam<unknown>>;
type RowOf<C> = {
	[K in keyof C]: C[K] extends CellParam<infer T> ? T : never;
} & { row: number };

/**
 * Rows of named columns. `compute` gets an object a row, with `row`, its place in the argument, for errors
 * and, with `more`, what follows the named columns as a list.
 */
export function table<C extends Columns>(
	help: string,
	columns: C,
	options?: { alone?: boolean; optional?: boolean },
): TableParam<RowOf<C>>;
export function table<C extends Columns, M>(
	help: string,
	columns: C,
	options: { more: CellParam<M>; alone?: boolean; optional?: boolean },
): TableParam<RowOf<C> & { more: M[] }>;
export function table(
	help: string,
	columns: Columns,
	options: {
		more?: CellParam<unknown>;
		alone?: boolean;
		optional?: boolean;
	} = {},
): TableParam<unknown> {
	return {
		kind: "table",
		help,
		columns,
		more: options.more,
		optional: options.optional === true,
		alone: options.alone === true,
	};
}

export const units = (): UnitsParam => ({
	kind: "units",
	help: "metric or us; blank is metric",
	optional: true,
});
