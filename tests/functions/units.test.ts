/** Metric and US answers are the same physical quantity: inputs converted by hand-kept factors, not by the product's. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { callFunction, registry } from "../../src/functions";
import type {
	CellParam,
	Param,
	SheetFunction,
} from "../../src/functions/declare";
import type { Quantity } from "../../src/job/reading/units";

// One US unit in the metric unit of the contract. NIST SP 811 (2008), appendix B.8: in, ft, lb, US gal, psi, mi exact or
// as the quotient of exact ones (1 lbf = 4.4482216152605 N).
const US_IN_METRIC: Record<Quantity, number> = {
	length: 25.4,
	area: 0.09290304,
	volume: 28.316846592,
	coating: 3.785411784,
	bead: 16.387064,
	mass: 0.45359237,
	pigment: 1,
	density: 0.45359237 / 0.028316846592,
	temperature: 5 / 9,
	degreeHours: 5 / 9,
	stress: 4.4482216152605 / (25.4 * 25.4),
	pressure: 4.4482216152605 / 0.09290304 / 1000,
	wind: 1.609344,
	evaporation: 0.45359237 / 0.09290304,
	coverage: 0.09290304 / 3.785411784,
};

const usOf = (value: number, unit: Quantity): number =>
	value / US_IN_METRIC[unit] + (unit === "temperature" ? 32 : 0);

const metricOf = (value: number, unit: Quantity): number =>
	(value - (unit === "temperature" ? 32 : 0)) * US_IN_METRIC[unit];

// Two forms each, as published in each system of units; their spread is held in the tests of their subjects.
const TWO_FORMS = ["EVAPORATION_RATE", "LIFT_LIMIT", "MODULUS_OF_RUPTURE"];

// Says lengths in words, in the person's own unit: tests/functions/mold.test.ts holds both.
const IN_WORDS = ["MOLD_PLAN"];

const withUnits = registry.filter(
	({ name, params }) =>
		params.units?.kind === "units" &&
		![...TWO_FORMS, ...IN_WORDS].includes(name),
);

type Change = (value: unknown, cell: CellParam<unknown>) => unknown;

/** The arguments with every cell passed through `change`. */
function changed(
	fn: SheetFunction,
	values: readonly unknown[],
	change: Change,
) {
	const params = Object.values(fn.params) as Param[];
	return values.map((value, index) => {
		const param = params[index];
		if (!param || param.kind === "units") return value;
		return mapped(value, (cell, column) => {
			const of =
				param.kind === "table"
					? (Object.values(param.columns)[column] ?? param.more)
					: param.kind === "list"
						? param.of
						: param;
			return of ? change(cell, of) : cell;
		});
	});
}

function mapped(
	value: unknown,
	cell: (value: unknown, column: number) => unknown,
): unknown {
	if (!Array.isArray(value)) return cell(value, 0);
	return value.map((row) =>
		Array.isArray(row) ? row.map(cell) : cell(row, 0),
	);
}

const isNumber = (value: unknown): value is number => typeof value === "number";

/** Column A of a piece is a length for every shape of the examples. */
const unitOf = (cell: CellParam<unknown>): Quantity | undefined =>
	cell.unit ??
	(cell.help.startsWith("A: first dimension") ? "length" : undefined);

const toUs: Change = (value, cell) => {
	const unit = unitOf(cell);
	return isNumber(value) && unit ? usOf(value, unit) : value;
};

const rows = (answer: unknown): unknown[][] =>
	(Array.isArray(answer) ? answer : [[answer]]) as unknown[][];

/** The answer in metric, cell by cell; the plan says its unit in the next column. */
function metricAnswer(fn: SheetFunction, answer: unknown): unknown[] {
	const { columns, unit } = fn.answer;
	return rows(answer).flatMap((row) =>
		row.map((value, index) => {
			const said = columns?.[Math.min(index, columns.length - 1)]?.unit ?? unit;
			if (row[index + 1] === "lb" && isNumber(value))
				return metricOf(value, "mass");
			if (value === "lb") return "kg";
			return isNumber(value) && said ? metricOf(value, said) : value;
		}),
	);
}

describe.each(withUnits.map((fn) => [fn.name, fn] as const))("%s", (_, fn) => {
	const params = Object.keys(fn.params);
	const call = (values: readonly unknown[], units: string) => {
		const args = [...values];
		while (args.length < params.length - 1) args.push("");
		args[params.length - 1] = units;
		return callFunction(fn, args);
	};
	// Examples may be in US units: bring them to metric first.
	const example = () => {
		const last = fn.example.values[params.length - 1];
		return last === "us"
			? changed(fn, fn.example.values, (value, cell) => {
					const unit = unitOf(cell);
					return isNumber(value) && unit ? metricOf(value, unit) : value;
				})
			: fn.example.values;
	};

	test("answers the same in metric and us to 1e-9", () => {
		fc.assert(
			fc.property(fc.double({ min: 1, max: 1.02, noNaN: true }), (factor) => {
				const metric = changed(fn, example(), (value, cell) =>
					isNumber(value) && unitOf(cell) ? value * factor : value,
				);
				const one = rows(call(metric, "metric")).flat();
				const other = metricAnswer(fn, call(changed(fn, metric, toUs), "us"));
				expect(other.length).toBe(one.length);
				one.forEach((value, index) => {
					const twin = other[index];
					if (!isNumber(value)) expect(String(twin)).toBe(value);
					else
						expect(Math.abs(Number(twin) - value)).toBeLessThanOrEqual(
							1e-9 * Math.max(1, Math.abs(value)),
						);
				});
			}),
			{ numRuns: 40, seed: 7 },
		);
	});
});
