import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { type BuildOptions, build } from "esbuild";

const HERE = import.meta.dirname;

const BROWSER: BuildOptions = {
	bundle: true,
	minify: true,
	platform: "browser",
	target: "es2022",
	define: { "process.env.NODE_ENV": '"production"' },
	loader: { ".woff2": "dataurl" },
	logLevel: "warning",
};

/**
 * Makes the page in a folder: `page.html`, `main.js` with its parts and styles, and `runner.js` for the panel.
 *
 * In parts, since 5 MB of the grid's hyphenation dictionaries are loaded only when asked for.
 */
export async function bundlePage(folder: string): Promise<void> {
	copyFileSync(join(HERE, "page.html"), join(folder, "page.html"));
	await Promise.all([
		build({
			...BROWSER,
			entryPoints: [join(HERE, "main.ts")],
			outdir: folder,
			format: "esm",
			splitting: true,
			legalComments: "linked",
		}),
		build({
			...BROWSER,
			entryPoints: [join(HERE, "runner.ts")],
			outfile: join(folder, "runner.js"),
			format: "iife",
			globalName: "standIn",
		}),
	]);
}
