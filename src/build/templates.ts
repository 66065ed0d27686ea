import type { Plugin } from "esbuild";
import { TEMPLATES } from "./stubs";

/** Stands in the script for the module that puts the templates together, and asks the other file once a call. */
const ASKING = `
let found;
export const workbook = () => (found ??= ${TEMPLATES}().workbook());
`;

/** Leaves the templates to a file of their own. */
export const templatesApart: Plugin = {
	name: "templates-apart",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]templates[\\/]index\.ts$/ }, () => ({
			contents: ASKING,
			loader: "js",
		}));
	},
};

/** The templates say which answers stand where: how they are computed stands in the script, and is not bundled twice. */
export const withoutAnswers: Plugin = {
	name: "without answers",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]job[\\/]answers[\\/]/ }, async ({ path }) => ({
			contents: Object.entries(await import(path))
				.map(([name, value]) => `export const ${name} = ${dataOf(value)};`)
				.join("\n"),
			loader: "js",
		}));
	},
};

/** A constant as it is; a function that the templates do not call as nothing. */
const dataOf = (value: unknown): string => JSON.stringify(value) ?? "undefined";
