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
