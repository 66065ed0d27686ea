/** Sheet functions asked as a cell asks them. */
import { callFunction } from "../../functions/call";
import type { SheetFunction } from "../../functions/declare";

/** The one number that comes back. */
export const numberOf = (fn: SheetFunction, ...args: unknown[]): number =>
	callFunction(fn, args) as number;

/** The rows that come back; a single value is one row of one. */
export const rowsOf = (fn: SheetFunction, ...args: unknown[]): number[][] => {
	const all = callFunction(fn, args);
	return (Array.isArray(all) ? all : [[all]]) as number[][];
};
