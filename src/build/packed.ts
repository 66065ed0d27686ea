import { gzipSync } from "node:zlib";
import type { Plugin } from "esbuild";
import { workbook } from "../../templates/index";

/** The templates as one short text: a cell's call, which needs none of them, has the less to load. */
const packed = (): string =>
	gzipSync(JSON.stringify(workbook()), { level: 9 }).toString("base64");

/** Unpacks them with Apps Script's own service, once a call, for the calls that write a workbook. */
const unpacking = (): string => `
let found;
export const workbook = () =>
	(found ??= JSON.parse(Utilities.ungzip(Utilities.newBlob(Utilities.base64Decode(
		${JSON.stringify(packed())}), "application/x-gzip")).getDataAsString()));
`;

/** Puts the templates in as data, in place of the module that puts them together. */
export const packedTemplates: Plugin = {
	name: "packed-templates",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]templates[\\/]index\.ts$/ }, () => ({
			contents: unpacking(),
			loader: "js",
		}));
	},
};
