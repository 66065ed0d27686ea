import { posix } from "node:path";
import type { Written } from "./files";

interface Import {
	from: string;
	/** Gone once the types are checked. */
	typeOnly: boolean;
}

/** A floor's neighbors: folders, packages, and folders it may know the types of. */
export interface Floor {
	folders?: readonly string[];
	types?: readonly string[];
	packages?: RegExp;
}

const FROM =
	/^\s*(?:import|export)\s+(type\s)?(?:[\w*{}\s,$]+?\sfrom\s*)?["']([^"'$]+)["']/gm;
const CALLED = /\b(?:import|require)\(\s*["']([^"'$]+)["']/g;

const withoutComments = (text: string): string =>
	text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");

/** What a source file imports, in any form. */
export function imports(text: string): Import[] {
	const code = withoutComments(text);
	return [
		...[...code.matchAll(FROM)].map(([, type, from = ""]) => ({
			from,
			typeOnly: type !== undefined,
		})),
		...[...code.matchAll(CALLED)].map(([, from = ""]) => ({
			from,
			typeOnly: false,
		})),
	];
}

const isIn = (path: string, places: readonly string[]): boolean =>
	places.some((place) => path === place || path.startsWith(`${place}/`));

/** The imports of a file that its floor does not allow, as sentences. */
export function violations(
	{ file, text }: Written,
	table: Readonly<Record<string, Floor>>,
): string[] {
	const floor = Object.keys(table).find((name) => isIn(file, [name]));
	if (!floor) return [`${file} is on no floor`];
	const { folders = [], types = [], packages } = table[floor] ?? {};
	return imports(text)
		.filter(({ from, typeOnly }) => {
			if (!from.startsWith(".")) return !packages?.test(from);
			const path = posix.join(posix.dirname(file), from);
			if (isIn(path, [floor, ...folders])) return false;
			return !(typeOnly && isIn(path, types));
		})
		.map(({ from }) => `${file} may not import ${from}`);
}
