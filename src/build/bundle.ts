import { join } from "node:path";
import { type BuildOptions, build } from "esbuild";
import type { SheetFunction } from "../functions/declare";
import { tabAnswers } from "../job/tabs/index";
import type { TabAnswer } from "../job/tabs/tab";
import { bodyOf } from "./body";
import { entryPoints } from "./entries";
import { entryStub, NAMESPACE, sheetStub, TEMPLATES, tabStub } from "./stubs";
import { templatesApart, withoutAnswers } from "./templates";

interface CodeSources {
	/** Directory that the two modules are named from. */
	root: string;
	/** Module with `registry` and `callFunction`. */
	functions: string;
	/** Answers of tabs, for which the first module has `callTab`. */
	tabs?: readonly TabAnswer[];
	/** Module whose exports are the entry points. */
	entries: string;
}

/** What the product is made of. */
export const PRODUCT: CodeSources = {
	root: join(import.meta.dirname, "../.."),
	functions: "./src/functions/index",
	tabs: tabAnswers,
	entries: "./src/sheets/entries.ts",
};

const gathered = ({ functions, tabs, entries }: CodeSources): string => `
import { callFunction, registry } from "${functions}";
export * from "${entries}";
const byName = new Map(registry.map((fn) => [fn.name, fn]));
export const call = (name, args) => callFunction(byName.get(name), Array.from(args));
${tabs ? callOfTab(functions) : ""}`;

const callOfTab = (functions: string): string => `
import { callTab } from "${functions}";
export const callOfTab = (name, args) => callTab(name, Array.from(args));
`;

/**
 * The language's objects as names of the script's own: a host may look at each use of a global, and one lookup then
 * costs as much as the arithmetic behind it.
 */
const OWN = "Math, Number, Object, String, Array";

/** A module as Apps Script takes it: readable, in the language of 2020. */
async function bundled(
	contents: string,
	root: string,
	more: BuildOptions = {},
): Promise<string> {
	const result = await build({
		...more,
		stdin: {
			contents,
			resolveDir: root,
			sourcefile: "src/build/bundle.ts",
			loader: "ts",
		},
		absWorkingDir: PRODUCT.root,
		bundle: true,
		write: false,
		format: "esm",
		platform: "neutral",
		mainFields: ["module", "main"],
		target: "es2020",
		charset: "utf8",
		legalComments: "none",
	});
	return bodyOf(result.outputFiles[0]?.text ?? "");
}

/**
 * The script for Apps Script: everything inside one private global, then a plain top-level function, under its
 * help, for each thing that a cell, the menu or the panel calls. The bundler drops comments, so these are written here.
 */
export async function bundleCode(
	registry: readonly SheetFunction[],
	sources: CodeSources = PRODUCT,
): Promise<string> {
	const body = await bundled(gathered(sources), sources.root, {
		plugins: [templatesApart],
	});
	const entries = await entryPoints(join(sources.root, sources.entries));
	return [
		"/** @OnlyCurrentDoc */",
		`var ${NAMESPACE} = ((${OWN}) => {\n${body}\n})(${OWN});\n`,
		...registry.map(sheetStub),
		...(sources.tabs ?? []).map(tabStub),
		...entries.map(entryStub),
	].join("\n");
}

/** The tabs of a workbook as the body of a function, which no cell calls: each cell's call loads all files. */
export async function bundleTemplates(): Promise<string> {
	const body = await bundled(
		'export { workbook } from "./templates/index";',
		PRODUCT.root,
		{ plugins: [withoutAnswers] },
	);
	return `/** The tabs of a workbook as data. */\nfunction ${TEMPLATES}() {\n${body}\n}\n`;
}
