/** Arguments as ranges, and what a person's hand does to one that was right. */
import fc from "fast-check";
import { cell, number } from "./cells";

/** A row a list, as Sheets passes a range; one cell comes as its value. */
export type Argument = unknown;

type Grid = readonly (readonly unknown[])[];

const MANY_ROWS = 10_000;

export const gridOf = (value: Argument): Grid =>
	(Array.isArray(value) ? value : [value]).map((row) =>
		Array.isArray(row) ? row : [row],
	);

const argumentOf = (grid: Grid): Argument =>
	grid.length === 1 && grid[0]?.length === 1 ? grid[0][0] : grid;

const transposed = (grid: Grid): Grid =>
	(grid[0] ?? []).map((_, column) => grid.map((row) => row[column]));

/** The rows over and over; names get a number, since many must differ. */
const repeated = (grid: Grid, rows: number): Grid =>
	Array.from({ length: rows }, (_, i) =>
		(grid[i % grid.length] ?? []).map((value, column) =>
			typeof value === "string" && column === 0 && i >= grid.length
				? `${value} ${i}`
				: value,
		),
	);

const withCell = (grid: Grid, at: number, value: unknown): Grid => {
	const width = grid[0]?.length ?? 1;
	const place = at % (grid.length * width);
	return grid.map((row, r) =>
		row.map((old, c) => (r * width + c === place ? value : old)),
	);
};

/** Rows and columns of whatever cells there may be, and now and then very many rows. */
export const wildRange = fc
	.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 12 }))
	.chain(([columns, rows]) =>
		fc.array(
			fc.array(fc.oneof(cell, number), {
				minLength: columns,
				maxLength: columns,
			}),
			{ minLength: rows, maxLength: rows },
		),
	)
	.map((grid) => argumentOf(grid));

const size = fc.oneof(
	{ weight: 20, arbitrary: fc.integer({ min: 1, max: 30 }) },
	{ weight: 2, arbitrary: fc.integer({ min: 30, max: 300 }) },
	{ weight: 1, arbitrary: fc.constant(MANY_ROWS) },
);

/** Changes that a person's hand makes to an argument that was right. */
export const slip: fc.Arbitrary<(argument: Argument) => Argument> = fc.oneof(
	{
		weight: 8,
		arbitrary: fc.tuple(fc.nat(), fc.oneof(cell, number)).map(
			([at, value]) =>
				(argument: Argument) =>
					argumentOf(withCell(gridOf(argument), at, value)),
		),
	},
	{
		weight: 4,
		arbitrary: fc
			.tuple(fc.nat(), fc.double({ min: 0.01, max: 100, noNaN: true }))
			.map(([at, times]) => (argument: Argument) => {
				const grid = gridOf(argument);
				const old = grid.flat()[at % grid.flat().length];
				return argumentOf(
					typeof old === "number" && Math.abs(old) < 1e300
						? withCell(grid, at, old * times)
						: grid,
				);
			}),
	},
	{
		weight: 3,
		arbitrary: size.map(
			(rows) => (argument: Argument) =>
				argumentOf(repeated(gridOf(argument), rows)),
		),
	},
	{
		weight: 2,
		arbitrary: fc
			.tuple(size, fc.array(fc.tuple(fc.nat(), number), { maxLength: 20 }))
			.map(
				([rows, changes]) =>
					(argument: Argument) =>
						argumentOf(
							changes.reduce(
								(grid, [at, value]) => withCell(grid, at, value),
								repeated(gridOf(argument), Math.min(rows, 300)),
							),
						),
			),
	},
	{
		weight: 1,
		arbitrary: fc.constant((argument: Argument) =>
			argumentOf(transposed(gridOf(argument))),
		),
	},
	{
		weight: 1,
		arbitrary: cell.map(
			(value) => (argument: Argument) =>
				argumentOf(gridOf(argument).map((row) => [...row, value])),
		),
	},
	{
		weight: 1,
		arbitrary: fc.constant((argument: Argument) =>
			argumentOf([
				...gridOf(argument),
				gridOf(argument)[0]?.map(() => "") ?? [],
			]),
		),
	},
	{ weight: 1, arbitrary: fc.constant(() => "") },
);
