import type { Param, SheetFunction } from "../../src/functions/declare";
import { registry } from "../../src/functions/index";
import { milliseconds, ms, type Row, times } from "./row";
import { compiled, distCode, loaded } from "./script";

const ROWS = 1000;

/** What one function may take for a thousand rows, but for planners and the color fit. */
const LIMIT_MS = 50;

/** Their work grows with their table by nature: they have rows of their own above. */
const PLANNERS = new Set([
	"BOARDS_NEEDED",
	"MIXER_LOADS",
	"PULL_OFF_PLAN",
	"DOSE_FOR_COLOR",
	"PIGMENTS_FOR_COLOR",
]);

type Grid = readonly (readonly unknown[])[];

const grid = (value: unknown): Grid =>
	(Array.isArray(value) ? value : [value]).map((row) =>
		Array.isArray(row) ? row : [row],
	);

/** The rows over and over; of names, those after the first time round get a number, so that they stay different. */
function repeated(rows: Grid, names: boolean): unknown[][] {
	return Array.from({ length: ROWS }, (_, i) => {
		const [first, ...rest] = rows[i % rows.length] ?? [];
		const again = names && typeof first === "string" && i >= rows.length;
		return [again ? `${first} ${i}` : first, ...rest];
	});
}

/** Whether an argument grows with the table that is asked for. */
function grows(fn: SheetFunction, name: string, param: Param): boolean {
	if ((fn.answer.shape ?? "row") === "row") return param.kind === "cell";
	return (
		param.kind !== "cell" &&
		param.kind !== "units" &&
		(!param.alone || fn.answer.beside === name)
	);
}

/** The example's arguments, those that grow as a thousand rows; undefined when none does. */
function longArguments(fn: SheetFunction): unknown[] | undefined {
	const params = Object.entries(fn.params);
	const args = fn.example.values.map((value, i) => {
		const [name, param] = params[i] ?? [];
		if (!name || !param || !grows(fn, name, param)) return { value };
		if (param.kind === "cell")
			return { long: Array.from({ length: ROWS }, () => [value]) };
		return { long: repeated(grid(value), i === 0) };
	});
	if (!args.some((arg) => arg.long)) return undefined;
	return args.map((arg) => arg.long ?? arg.value);
}

/** A function's example in a fresh context, and a thousand rows in one call. */
export function functionRows(): Row[] {
	const code = distCode();
	const script = compiled(code);
	return registry.map((fn) => {
		const once = milliseconds(() => loaded(script)(fn.name, fn.example.values));
		return {
			what: `${fn.name}, load and call`,
			figure: ms(once),
			beside: longText(fn, loaded(script), once),
		};
	});
}

function longText(
	fn: SheetFunction,
	call: ReturnType<typeof loaded>,
	once: number,
): string {
	if (PLANNERS.has(fn.name)) return "a planner, see above";
	const args = longArguments(fn);
	if (!args) return "one answer for all rows";
	try {
		const first = milliseconds(() => call(fn.name, args), 1);
		const took =
			first > 1000 ? first : milliseconds(() => call(fn.name, args), 7);
		const over = took > LIMIT_MS ? `, more than ${LIMIT_MS} ms` : "";
		return `${ROWS} rows: ${ms(took)}, ${times(took, once)} its example${over}`;
	} catch (error) {
		return `${ROWS} rows: ${(error as Error).message}`;
	}
}
