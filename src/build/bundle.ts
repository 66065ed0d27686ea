import { join } from "node:path";
import { build } from "esbuild";
import type { SheetFunction } from "../functions/declare";
import { entryPoints } from "./entries";
import { packedTemplates } from "./packed";
import { entryStub, NAMESPACE, sheetStub } from "./stubs";
import { withoutDocumentation } from "./undocumented";

export interface CodeSources {
	/** Directory that the two modules are named from. */
	root: string;
	/** Module with `registry` and `callFunction`. */
	functions: string;
	/** Module whose exports are the entry points. */
	entries: string;
}

/** What the product is made of. */
export const PRODUCT: CodeSources = {
	root: join(import.meta.dirname, "../.."),
	functions: "./src/functions/index",
	entries: "./src/sheets/entries.ts",
};

/**
 * Names of quantities in SI, which `calc` ends with their unit: they stay inside the script, so short ones do as well.
 * What the panel sends or gets, and what templates say, has other names.
 */
export const INSIDE = /[a-z](Kg|M|M2|M3|C|KgPerM3|M2PerM3)$/;

const gathered = ({ functions, entries }: CodeSources): string => `
import { callFunction, registry } from "${functions}";
export * from "${entries}";
const byName = new Map(registry.map((fn) => [fn.name, fn]));
export const call = (name, args) => callFunction(byName.get(name), Array.from(args));
`;

/**
 * The script for Apps Script: everything inside one private global, then a plain top-level function, under its
 * help, for each thing that a cell, the menu or the panel calls. The bundler drops comments, so these are written here.
 */
export async function bundleCode(
	registry: readonly SheetFunction[],
	sources: CodeSources = PRODUCT,
): Promise<string> {
	const result = await build({
		stdin: {
			contents: gathered(sources),
			resolveDir: sources.root,
			loader: "ts",
		},
		bundle: true,
		write: false,
		format: "iife",
		globalName: NAMESPACE,
		platform: "neutral",
		mainFields: ["module", "main"],
		target: "es2020",
		charset: "utf8",
		legalComments: "none",
		// Every cell's call loads the whole script, so it is small; its lines stay short enough to find an error in.
		minify: true,
		mangleProps: INSIDE,
		lineLimit: 500,
		inject: [join(import.meta.dirname, "builtins.ts")],
		plugins: [withoutDocumentation, packedTemplates],
	});
	const entries = await entryPoints(join(sources.root, sources.entries));
	return [
		"/** @OnlyCurrentDoc */",
		result.outputFiles[0]?.text ?? "",
		...registry.map(sheetStub),
		...entries.map(entryStub),
	].join("\n");
}
