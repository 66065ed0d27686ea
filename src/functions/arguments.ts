/** The arguments that a sheet function may declare: how the cells of each are read, and what a person is told of it. */
import { lengthIn, numberIn, textIn, wordIn } from "../job/reading/cells";
import { type Limits, limited, shareIn } from "../job/reading/limits";
import { type Quantity, toSi, type UnitSystem } from "../job/reading/units";
import type { CellParam, ListParam, TableParam, UnitsParam } from "./declare";

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
) => {
	const limits = limitsOf(options, {});
	return cell<number, O>(
		help,
		options,
		(name, value) => shareIn(name, value, limits),
		{ share: true },
	);
};

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

/**
 * Rows of named columns. `compute` gets an object a row, with `row`, its place in the argument, for errors
 * and, with `more`, what follows the named columns as a list.
 */
export function table<C extends Columns>(
	help: string,
	columns: C,
	options?: Alone,
): TableParam<RowOf<C>>;
export function table<C extends Columns, M>(
	help: string,
	columns: C,
	options: Alone & { more: CellParam<M> },
): TableParam<RowOf<C> & { more: M[] }>;
export function table(
	help: string,
	columns: Columns,
	options: Alone & { more?: CellParam<unknown> } = {},
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

interface Alone {
	alone?: boolean;
	optional?: boolean;
}

type Columns = Record<string, CellParam<unknown>>;
type RowOf<C> = {
	[K in keyof C]: C[K] extends CellParam<infer T> ? T : never;
} & { row: number };

export const units = (): UnitsParam => ({
	kind: "units",
	help: "metric or us; blank is metric",
	optional: true,
});

interface Options<T> {
	/** What a blank means, in SI; makes the argument optional. */
	blank?: T;
	/** May be blank, and `compute` then gets undefined. */
	optional?: boolean;
}

type Maybe<T, O> = O extends { optional: true } ? T | undefined : T;

/** What declares a number with a unit, read in SI, of its usual limits unless the options say others. */
function quantity(unit: Quantity, usual: Limits) {
	const read = (name: string, value: unknown, units: UnitSystem) =>
		unit === "length"
			? lengthIn(name, value, units)
			: toSi(numberIn(name, value), unit, units);
	return <O extends Options<number> & Limits>(help: string, options?: O) => {
		const limits = limitsOf(options, usual);
		return cell<number, O>(
			help,
			options,
			(name, value, units) =>
				limited(name, read(name, value, units), value, limits, unit, units),
			{ unit },
		);
	};
}

function limitsOf(options: Limits | undefined, usual: Limits): Limits {
	const { above, min, below, max, whole } = options ?? {};
	const own = { above, min, below, max, whole };
	return Object.values(own).some((limit) => limit !== undefined) ? own : usual;
}

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
