import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";

const ROOT = join(import.meta.dirname, "../..");

/** What is made or fetched, not written. */
const NOT_WRITTEN = new Set([
	".git",
	"node_modules",
	"dist",
	"artifacts",
	"package-lock.json",
	".clasp.json",
]);

/** A file of the repository by its place in it, with `/` between folders. */
export interface Written {
	file: string;
	text: string;
}

function walk(folder: string): string[] {
	return readdirSync(folder)
		.filter((name) => !NOT_WRITTEN.has(name))
		.map((name) => join(folder, name))
		.flatMap((path) => (statSync(path).isDirectory() ? walk(path) : [path]));
}

/** Every file that somebody wrote. */
export const written = (): Written[] =>
	walk(ROOT)
		.filter((path) => !/\.(png|log)$/.test(path))
		.map((path) => ({
			file: relative(ROOT, path).split(sep).join("/"),
			text: readFileSync(path, "utf8"),
		}));
