import { join } from "node:path";
import { build } from "esbuild";
import { indentByTabs } from "./body";
import { PRODUCT } from "./bundle";
import { escapeMarks } from "./escapemarks";

const ENTRY = join(import.meta.dirname, "../sidebar/main.tsx");

const preact = (file: string): string =>
	join(PRODUCT.root, "node_modules/preact", file);

/** The library as it was written: what its package gives out is minified. */
const READABLE = {
	"preact/hooks": preact("hooks/src/index.js"),
	"preact/jsx-runtime": preact("jsx-runtime/src/index.js"),
	preact: preact("src/index.js"),
};

/** One page with the panel's script and style inside, since Apps Script serves no other files. */
export async function bundlePanel(entry = ENTRY): Promise<string> {
	const result = await build({
		entryPoints: [entry],
		absWorkingDir: PRODUCT.root,
		bundle: true,
		write: false,
		outdir: "panel",
		format: "iife",
		platform: "browser",
		target: "es2020",
		charset: "utf8",
		legalComments: "none",
		// Without this mark each element stands behind a comment that says it may be left out.
		jsxSideEffects: true,
		alias: READABLE,
	});
	const text = (extension: string): string =>
		result.outputFiles.find(({ path }) => path.endsWith(extension))?.text ?? "";
	return page(indentByTabs(escapeMarks(text(".js"))), text(".css"));
}

const page = (script: string, style: string): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<base target="_top">
<title>Tonefold</title>
<style>
${style}</style>
</head>
<body>
<div id="panel"></div>
<script>
${script}</script>
</body>
</html>
`;
