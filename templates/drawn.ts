/** Drawings in cells: what the eye judges is shown to it, and stands as text or number beside. */
import type { Block } from "./plan";

/** Of bars and lines, as of a job's tabs. */
const BROWN = "#8a5a2b";

type Options = Readonly<Record<string, string>>;

/** Options as two columns put side by side, which read in every locale. */
const drawing = (data: string, options: Options): string =>
	`SPARKLINE(${data};HSTACK(VSTACK(${quoted(Object.keys(options))});VSTACK(${Object.values(options).join(";")})))`;

const quoted = (words: readonly string[]): string =>
	words.map((word) => `"${word}"`).join(";");

/** A drawing beside each of some cells for which this holds: a formula a row, as drawings do not spill. */
const beside = (
	at: string,
	cells: readonly string[],
	of: (cell: string) => readonly [holds: string, drawn: string],
): Block => ({
	at,
	look: "result",
	rows: cells.map((cell) => {
		const [holds, drawn] = of(cell);
		return [`=IF(${holds};${drawn};"")`];
	}),
});

/** Each of so many cells of a block. */
const each = (cells: string, rows: number): string[] =>
	Array.from({ length: rows }, (_, row) => `INDEX(${cells};${row + 1})`);

/** Cells painted in the colors that others hold as `#rrggbb`. */
export const painted = (at: string, colors: string, rows: number): Block =>
	beside(at, each(colors, rows), (color) => [
		`LEFT(${color};1)="#"`,
		drawing("1", { charttype: '"bar"', color1: color }),
	]);

/** Shares of a whole as bars. */
export const shareBars = (at: string, shares: string, rows: number): Block =>
	beside(at, each(shares, rows), (share) => [
		`ISNUMBER(${share})`,
		drawing(share, {
			charttype: '"bar"',
			max: "1",
			color1: `"${BROWN}"`,
		}),
	]);

/** Days as bars of one day each, from the first to the last; the parts have two colors in turn. */
export const dayBars = (at: string, days: readonly string[]): Block =>
	beside(at, days, (day) => [
		`N(${day})`,
		drawing(`HSTACK(${day}-${days[0]};1;${days[days.length - 1]}-${day})`, {
			charttype: '"bar"',
			color1: '"white"',
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
