/** What `SPARKLINE` draws of its data and options, or the error that it answers. */

/** Values along a cell; in a column chart nothing stands for a value that cannot be drawn. */
export interface Bar {
	chart: "bar";
	values: number[];
	/** The whole width; their sum where nothing is said. */
	max: number;
	colors: [string, string];
	fromRight: boolean;
}

export interface Line {
	chart: "line";
	points: [x: number, y: number][];
	color: string;
	widthPx: number;
	from: [x: number, y: number];
	to: [x: number, y: number];
}

export interface Columns {
	chart: "column" | "winloss";
	values: (number | undefined)[];
	/** One a value. */
	colors: string[];
	from: number;
	to: number;
	/** Color of the line at 0. */
	axis?: string;
}

export type Drawing = Bar | Line | Columns;
export type DrawingError = "#VALUE!" | "#REF!" | "#N/A";

type Options = ReadonlyMap<string, unknown>;

/** From memory: no page says them. */
const DEFAULTS = { text: "#000000", bar: ["#a0c3ff", "#ff9900"] } as const;

const isBlank = (value: unknown) => value === "" || value === null;

/**
 * Options have any case; unknown ones are passed over, as blank cells and texts among the data are.
 *
 * @source support.google.com/docs/answer/3093289; errors as recorded in live Sheets by truecalc/core, google.tsv
 */
export function drawingOf(
	data: readonly (readonly unknown[])[],
	optionRows: readonly (readonly unknown[])[],
): Drawing | DrawingError {
	if (optionRows.some((row) => row.length !== 2)) return "#REF!";
	const options = new Map(
		optionRows.map(([key, value]) => [String(key).toLowerCase(), value]),
	);
	const chart = String(options.get("charttype") ?? "line").toLowerCase();
	switch (chart) {
		case "bar":
			return barOf(data.flat(), options);
		case "line":
			return lineOf(data, options);
		case "column":
		case "winloss":
			return columnsOf(chart, data.flat(), options);
		default:
			return "#VALUE!";
	}
}

function numberIn(options: Options, key: string): number | undefined {
	const value = options.get(key);
	if (value === undefined || isBlank(value)) return undefined;
	const number = Number(value);
	return Number.isFinite(number) ? number : undefined;
}

/** A color by `#rrggbb` or by its name. */
function colorIn<T>(options: Options, key: string, otherwise: T): string | T {
	const said = String(options.get(key) ?? "").trim();
	return /^(?:#(?:[0-9a-f]{3}){1,2}|[a-z]+)$/i.test(said) ? said : otherwise;
}

const isSaid = (options: Options, key: string) =>
	/^(?:true|1)$/i.test(String(options.get(key) ?? ""));

const numberOf = (value: unknown) =>
	typeof value === "number" && Number.isFinite(value) ? value : undefined;
const numbersOf = (data: readonly unknown[]) =>
	data.flatMap((value) => numberOf(value) ?? []);

function barOf(data: readonly unknown[], options: Options): Bar {
	const values = numbersOf(data).map((value) => Math.max(0, value));
	const sum = values.reduce((total, value) => total + value, 0);
	return {
		chart: "bar",
		values,
		max: numberIn(options, "max") ?? sum,
		colors: [
			colorIn(options, "color1", DEFAULTS.bar[0]),
			colorIn(options, "color2", DEFAULTS.bar[1]),
		],
		fromRight: isSaid(options, "rtl"),
	};
}

/** Numbers one after the other, or x and y side by side in two columns or two rows. */
function pointsOf(data: readonly (readonly unknown[])[]): [unknown, unknown][] {
	if (data.length > 1 && data.every((row) => row.length === 2))
		return data.map(([x, y]) => [x, y]);
	const [first = [], second] = data;
	if (data.length === 2 && second && first.length > 1)
		return first.map((x, i) => [x, second[i]]);
	return data.flat().map((y, i) => [i, y]);
}

function lineOf(
	data: readonly (readonly unknown[])[],
	options: Options,
): Line | DrawingError {
	if (data.flat().length < 2) return "#N/A";
	const points = pointsOf(data).flatMap(([x, y]): [number, number][] => {
		const [across, up] = [numberOf(x), numberOf(y)];
		return across === undefined || up === undefined ? [] : [[across, up]];
	});
	const reach = (axis: 0 | 1, of: "min" | "max") =>
		Math[of](...points.map((point) => point[axis]));
	const end = (axis: 0 | 1, of: "min" | "max") =>
		numberIn(options, `${axis === 0 ? "x" : "y"}${of}`) ?? reach(axis, of);
	return {
		chart: "line",
		points,
		color: colorIn(options, "color", DEFAULTS.text),
		widthPx: numberIn(options, "linewidth") ?? 1,
		from: [end(0, "min"), end(1, "min")],
		to: [end(0, "max"), end(1, "max")],
	};
}

function columnsOf(
	chart: Columns["chart"],
	data: readonly unknown[],
	options: Options,
): Columns {
	const values = data.map(numberOf);
	const known = numbersOf(data);
	const [low, high] = [Math.min(...known), Math.max(...known)];
	const color = colorIn(options, "color", DEFAULTS.text);
	const colorAt = (value: number | undefined, i: number): string => {
		const named = (key: string, applies: boolean) =>
			applies ? colorIn(options, key, undefined) : undefined;
		return (
			named("firstcolor", i === 0) ??
			named("lastcolor", i === values.length - 1) ??
			named("lowcolor", value === low) ??
			named("highcolor", value === high) ??
			named("negcolor", value !== undefined && value < 0) ??
			color
		);
	};
	return {
		chart,
		values:
			chart === "column"
				? values
				: values.map((value) => value && Math.sign(value)),
		colors: values.map(colorAt),
		from:
			chart === "winloss"
				? -1
				: (numberIn(options, "ymin") ?? Math.min(0, low)),
		to:
			chart === "winloss"
				? 1
				: (numberIn(options, "ymax") ?? Math.max(0, high)),
		axis: isSaid(options, "axis")
			? colorIn(options, "axiscolor", DEFAULTS.text)
			: undefined,
	};
}

const rounded = (value: number) => String(Number(value.toPrecision(4)));
const listed = (values: readonly (number | undefined)[]) =>
	values
		.map((value) => (value === undefined ? "nothing" : rounded(value)))
		.join(", ");

/** What is drawn, in words for whoever does not see it. */
export function drawingText(drawing: Drawing): string {
	switch (drawing.chart) {
		case "bar": {
			const parts = drawing.values.map(
				(value, i) => `${rounded(value)} in ${drawing.colors[i % 2]}`,
			);
			return `a bar of ${parts.join(", ")}, the whole being ${rounded(drawing.max)}`;
		}
		case "line": {
			const [first, last] = [drawing.points[0], drawing.points.at(-1)];
			return first && last
				? `a line of ${drawing.points.length} points in ${drawing.color}, from ${rounded(first[1])} at ${rounded(first[0])} to ${rounded(last[1])} at ${rounded(last[0])}`
				: "a line without points";
		}
		default:
			return `columns of ${listed(drawing.values)}`;
	}
}
