import { readFileSync } from "node:fs";
import { type AnyNode, parse } from "acorn";
import type { Plugin } from "esbuild";
import { parts } from "./gates/tree";
import { undocumented } from "./undocumented";

/** Places of the calls that run when a module is loaded: those inside functions do not. */
function callsOnLoad(node: AnyNode): number[] {
	if (/Function/.test(node.type)) return [];
	const own =
		node.type === "CallExpression" && node.callee.type === "Identifier"
			? [node.start]
			: [];
	return [...own, ...parts(node).flatMap(callsOnLoad)];
}

/** A module's JavaScript with every call on load marked as one that may be left out where its answer is not used. */
export function pure(javascript: string): string {
	const tree = parse(javascript, {
		ecmaVersion: "latest",
		sourceType: "module",
	});
	return callsOnLoad(tree)
		.sort((one, other) => other - one)
		.reduce(
			(text, at) => `${text.slice(0, at)}/* @__PURE__ */ ${text.slice(at)}`,
			javascript,
		);
}

/** Leaves out what a declaration says to a reader, and every declaration that nobody asks for: they only declare. */
export const onlyWhatIsCalled: Plugin = {
	name: "only-what-is-called",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]src[\\/]functions[\\/]\w+\.ts$/ }, ({ path }) => ({
			contents: pure(undocumented(readFileSync(path, "utf8"))),
			loader: "js",
		}));
	},
};
