import { posix } from "node:path";
import type { Written } from "./files";
import { imports } from "./imports";

const ENDINGS = ["", ".ts", ".tsx", "/index.ts"];

/** Which files each file imports, types too; a package is none. */
function neighbors(files: readonly Written[]): Map<string, string[]> {
	const there = new Set(files.map(({ file }) => file));
	return new Map(
		files.map(({ file, text }) => [
			file,
			imports(text)
				.filter(({ from }) => from.startsWith("."))
				.map(({ from }) => posix.join(posix.dirname(file), from))
				.flatMap(
					(path) =>
						ENDINGS.map((end) => path + end).find((at) => there.has(at)) ?? [],
				),
		]),
	);
}

/** Files that lead back to themselves by their imports, a circle each: `a.ts > b.ts > a.ts`. */
export function circles(files: readonly Written[]): string[] {
	const next = neighbors(files);
	const done = new Set<string>();
	const found: string[] = [];
	const visit = (file: string, way: readonly string[]) => {
		const start = way.indexOf(file);
		if (start >= 0) found.push([...way.slice(start), file].join(" > "));
		if (start >= 0 || done.has(file)) return;
		for (const other of next.get(file) ?? []) visit(other, [...way, file]);
		done.add(file);
	};
	for (const { file } of files) visit(file, []);
	return found;
}
