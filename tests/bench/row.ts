/** One line of the table. */
export interface Row {
	what: string;
	/** With its unit. */
	figure: string;
	/** What it is beside: a ratio, a limit, a bound. */
	beside: string;
}

/** Milliseconds that this process has worked since a moment: a machine has other work too, which no clock leaves out. */
export function worked(since: NodeJS.CpuUsage): number {
	const { user, system } = process.cpuUsage(since);
	return (user + system) / 1000;
}

/** Milliseconds of work that a run takes: the quickest of some. */
export function milliseconds(run: () => unknown, times = 15): number {
	const all = Array.from({ length: times }, () => {
		const started = process.cpuUsage();
		run();
		return worked(started);
	});
	return Math.min(...all);
}

export const ms = (value: number): string =>
	`${value.toFixed(value < 10 ? 2 : 0)} ms`;

/** `3.2 ×` */
export const times = (value: number, of: number): string =>
	`${Number((value / of).toPrecision(2))} ×`;

/** Numbers from 0 to 1 that are the same on every run (Numerical Recipes' generator). */
export function numbers(seed: number): () => number {
	let state = seed;
	return () => {
		state = (1664525 * state + 1013904223) % 2 ** 32;
		return state / 2 ** 32;
	};
}

/** The rows as one table of columns as wide as they need. */
export function asTable(rows: readonly Row[]): string {
	const heads = { what: "What", figure: "Figure", beside: "Beside it" };
	const all = [heads, ...rows];
	const wide = (key: keyof Row): number =>
		Math.max(...all.map((row) => row[key].length));
	const [what, figure] = [wide("what"), wide("figure")];
	return all
		.map((row) =>
			`${row.what.padEnd(what)}  ${row.figure.padStart(figure)}  ${row.beside}`.trimEnd(),
		)
		.join("\n");
}
