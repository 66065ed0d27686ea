/**
 * The templates as one short text. The panel's page carries it, since each cell's call loads all of Code.js and needs
 * none of it.
 */
import type { Plugin } from "esbuild";
import { workbook } from "../../templates/index";
import { registry } from "../functions/index";
import { contractTab } from "./contract";
import { LETTERS_TO_BYTES, lettersOf } from "./letters";
import { gzipped } from "./zopfli";

const OPENING = '<script type="text/plain" id="workbook">';

/** An element for the panel's page that holds the templates; the browser does nothing with it. */
export async function carriedTemplates(): Promise<string> {
	const all = { ...workbook(), contract: contractTab(registry) };
	return `${OPENING}${lettersOf(await gzipped(JSON.stringify(all)))}</script>`;
}

/** Takes the templates out of the page with Apps Script's own services, once a call, for the calls that write. */
const UNPACKING = `
const packed = () =>
	HtmlService.createHtmlOutputFromFile("Panel").getContent().split(${JSON.stringify(OPENING)})[1].split("<")[0];
const bytesOf = ${LETTERS_TO_BYTES};
const signed = (bytes) => Array.from(new Int8Array(bytes));
let found;
export const workbook = () =>
	(found ??= JSON.parse(Utilities.ungzip(Utilities.newBlob(signed(bytesOf(packed())), "application/x-gzip"))
		.getDataAsString()));
`;

/** Puts the unpacking in place of the module that puts the templates together. */
export const packedTemplates: Plugin = {
	name: "packed-templates",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]templates[\\/]index\.ts$/ }, () => ({
			contents: UNPACKING,
			loader: "js",
		}));
	},
};
