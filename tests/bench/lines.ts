import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../..");

/** The local workbook is apart: it is not part of what a studio runs. */
const APART = "src/desk";

/** Lines of TypeScript under a folder. */
function linesUnder(folder: string): number {
	return readdirSync(join(ROOT, folder), { withFileTypes: true })
		.map((entry) => {
			const path = `${folder}/${entry.name}`;
			if (entry.isDirectory()) return path === APART ? 0 : linesUnder(path);
			return /\.tsx?$/.test(path)
				? readFileSync(join(ROOT, path), "utf8").split("\n").length - 1
				: 0;
		})
		.reduce((sum, lines) => sum + lines, 0);
}

export const codeLines = (): number =>
	linesUnder("src") + linesUnder("templates");
