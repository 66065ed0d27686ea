/**
 * How a sheet function is declared: one constant, from which all else follows. The shortest is in `lengths.ts`.
 *
 * `index.ts` lists the constants. The build makes of each a stub that a cell can call, under the help that Sheets shows.
 * The stub calls `callFunction` (`call.ts`), which reads the arguments by their declaration, computes in SI, and turns the
 * answer back. The panel's help, the README's table and the tests of all functions read the same constants.
 */
import type { Quantity, UnitSystem } from "../job/reading/units";

interface Declaration<P> {
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

/** What a cell shows; `""` is a blank cell. */
export type CellValue = number | string;
