/** Drawings in cells: what the eye judges is shown to it, and stands as text or number beside. */
import type { Block } from "./plan";

/** Of bars and lines, as of a job's tabs. */
const BROWN = "#8a5a2b";
const CLEAR = "#ffffff";

type Options = Readonly<Record<string, string>>;

/** Options as two columns put side by side, which read in every locale. */
const drawing = (data: string, options: Options): string =>
	`SPARKLINE(${data};HSTACK(VSTACK(${quoted(Object.keys(options))});VSTACK(${Object.values(options).join(";")})))`;

const quoted = (words: readonly string[]): string =>
	words.map((word) => `"${word}"`).join(";");

/** A drawing beside each of some cells for which this holds. */
const beside = (
	at: string,
	cells: string,
	rows: number,
	[holds, drawn]: readonly [holds: string, drawn: string],
): Block => ({
	at,
	look: "result",
	size: [rows, 1],
	rows: [[`=MAP(${cells};LAMBDA(x_;IF(${holds};${drawn};"")))`]],
});

/** Cells painted in the colors that others hold as `#rrggbb`. */
export const painted = (at: string, colors: string, rows: number): Block =>
	beside(at, colors, rows, [
		'LEFT(x_;1)="#"',
		drawing("1", { charttype: '"bar"', color1: "x_" }),
	]);

/** Shares of a whole as bars. */
export const shareBars = (at: string, shares: string, rows: number): Block =>
	beside(at, shares, rows, [
		"ISNUMBER(x_)",
		drawing("x_", {
			charttype: '"bar"',
			max: "1",
			color1: `"${BROWN}"`,
		}),
	]);

/** Days as bars of one day each, from the first to the last. */
export const dayBars = (
	at: string,
	days: string,
	rows: number,
	[first, last]: readonly [first: string, last: string],
): Block =>
	beside(at, days, rows, [
		"ISNUMBER(x_)",
		// parts have two colors in turn
		drawing(`HSTACK(x_-${first};1;${last}-x_)`, {
			charttype: '"bar"',
			color1: `"${CLEAR}"`,
			color2: `"${BROWN}"`,
		}),
	]);

/** A line of one column of numbers against another, from 0 to `most`. */
export const curve = (
	at: string,
	across: string,
	up: string,
	most: string,
): Block => ({
	at,
	look: "result",
	rows: [
		[
			`=IF(COUNT(${up})<2;"";${drawing(`HSTACK(${across};${up})`, {
				charttype: '"line"',
				linewidth: "2",
				ymin: "0",
				ymax: most,
				color: `"${BROWN}"`,
			})})`,
		],
	],
});
