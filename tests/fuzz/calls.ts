/** Calls of a sheet function: wild ones, and its own example with something wrong in it. */
import fc from "fast-check";
import type { SheetFunction } from "../../src/functions/declare";
import { cell } from "./cells";
import { type Argument, gridOf, slip, wildRange } from "./slips";

export interface Call {
	fn: SheetFunction;
	args: Argument[];
}

/** What fills an argument that the example leaves out. */
const more = (fn: SheetFunction): fc.Arbitrary<Argument>[] =>
	Object.values(fn.params)
		.slice(fn.example.values.length)
		.map(({ kind }) =>
			kind === "units"
				? fc.constantFrom<Argument>(undefined, "us", "metric", "", "US")
				: fc.oneof(fc.constant(undefined), fc.constant(""), cell, wildRange),
		);

/** The example, one to three of its arguments changed. */
const slipped = (fn: SheetFunction): fc.Arbitrary<Argument[]> =>
	fc
		.tuple(
			fc.array(fc.tuple(fc.nat(), slip), { minLength: 1, maxLength: 3 }),
			fc.boolean(),
			fc.tuple(...more(fn)),
		)
		.map(([slips, whole, rest]) => {
			const args = [...fn.example.values];
			for (const [at, change] of slips) {
				const place = at % args.length;
				args[place] = change(args[place]);
			}
			return whole ? [...args, ...rest] : args;
		});

const wild = ({ params }: SheetFunction): fc.Arbitrary<Argument[]> =>
	fc.array(fc.oneof(cell, wildRange), {
		maxLength: Object.keys(params).length + 1,
	});

const shownValue = (value: unknown): string => {
	const text =
		value instanceof Date
			? `date ${value.toISOString()}`
			: JSON.stringify(value);
	return text === undefined ? "" : Object.is(value, -0) ? "-0" : text;
};

const shownArgument = (argument: Argument): string => {
	if (!Array.isArray(argument)) return cut(shownValue(argument));
	const rows = gridOf(argument).map((row) => row.map(shownValue).join(", "));
	return cut(`{${rows.slice(0, 40).join(" | ")}} (${rows.length} rows)`);
};

const cut = (text: string): string =>
	text.length > 1500 ? `${text.slice(0, 1500)}… (${text.length} signs)` : text;

/** The call as a person would write it, long ranges cut. */
export const shownCall = ({ fn, args }: Call): string =>
	`${fn.name}(${args.map(shownArgument).join("; ")})`;

/** Calls of a function, most of them nearly right, so that they reach its arithmetic. */
export const calls = (fn: SheetFunction): fc.Arbitrary<Call> =>
	fc
		.oneof(
			{ weight: 4, arbitrary: slipped(fn) },
			{ weight: 1, arbitrary: wild(fn) },
		)
		.map((args) => {
			const call = { fn, args };
			return Object.defineProperty(call, fc.toStringMethod, {
				value: () => shownCall(call),
			});
		});
