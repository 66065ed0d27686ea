/**
 * Google strips what looks like a comment from the scripts of a page, by some reports inside a string too. A script
 * passes when that leaves the same program, however crudely it is done.
 */
import { parse } from "acorn";
import { differentLine } from "./tokens";

const BLOCK = /\/\*[\s\S]*?\*\//g;
const LINE = /\/\/.*/g;

/** A script without its comments, and without the rest of a line or text that only looks like one. */
export const stripped = (script: string): string =>
	script.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "");

/** The ways to strip without reading the language: in one go, or one kind of comment after the other. */
const WAYS: readonly ((script: string) => string)[] = [
	stripped,
	(script) => script.replace(BLOCK, "").replace(LINE, ""),
	(script) => script.replace(LINE, "").replace(BLOCK, ""),
];

/** Complaints of a page's script that is not the same once it is stripped. */
export function strippedComplaints(script: string): string[] {
	try {
		parse(script, { ecmaVersion: 2020, sourceType: "module" });
	} catch (error) {
		return [`not an ES2020 script: ${(error as Error).message}`];
	}
	const lines = WAYS.map((strip) => differentLine(script, strip(script)));
	return [...new Set(lines)]
		.filter((line) => line !== undefined)
		.map((line) => `line ${line}: // or /* outside a comment`);
}
