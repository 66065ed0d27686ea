import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Check } from "../../src/build/table";
import { callFunction, functionNamed } from "../../src/functions/index";
import { type Difference, differences } from "./difference";
import type { PublishedCase, PublishedFile } from "./published";

/** Files beside the data that say how it is read. */
const NOT_DATA = /^(published|difference|checks)\.ts$|\.test\.ts$/;

/** One case with the file it stands in. */
export interface Row {
	file: string;
	from: PublishedFile;
	row: PublishedCase;
}

/** Every published case, in the order of the files' names. */
export async function publishedRows(): Promise<Row[]> {
	const names = readdirSync(import.meta.dirname)
		.filter((name) => name.endsWith(".ts") && !NOT_DATA.test(name))
		.sort();
	const files = await Promise.all(names.map(read));
	return files.flatMap((from, i) =>
		from.cases.map((row) => ({ file: names[i] ?? "", from, row })),
	);
}

async function read(name: string): Promise<PublishedFile> {
	const path = pathToFileURL(join(import.meta.dirname, name)).href;
	const { published } = await import(/* @vite-ignore */ path);
	if (!published) throw new Error(`${name} has no published numbers`);
	return published;
}

/** How far the function's answer is from the published one, cell by cell. */
export function compared({ row }: Row): Difference[] {
	const fn = functionNamed(row.function);
	if (!fn) throw new Error(`there is no function ${row.function}`);
	return differences(callFunction(fn, row.args), row.expected, row.tolerance);
}

/** How every function fared against every source, for the document. */
export function checks(
	rows: readonly Row[],
	order: readonly string[],
): Check[] {
	const found = new Map<string, Check>();
	for (const each of rows) {
		const { from, row } = each;
		const status = row.status ?? from.status;
		const key = [row.function, from.source, status].join("\n");
		const check = found.get(key) ?? {
			function: row.function,
			source: from.source,
			status,
			cases: 0,
			largestDifference: undefined,
		};
		found.set(key, {
			...check,
			cases: check.cases + 1,
			largestDifference: larger(check.largestDifference, compared(each)),
		});
	}
	const place = (check: Check): number => order.indexOf(check.function);
	return [...found.values()].sort((a, b) => place(a) - place(b));
}

function larger(
	sofar: number | undefined,
	more: readonly Difference[],
): number | undefined {
	const numbers = more.flatMap(({ relative }) => relative ?? []);
	if (!numbers.length) return sofar;
	return Math.max(sofar ?? 0, ...numbers);
}
