import { readFileSync } from "node:fs";
import { type AnyNode, type Property, parse } from "acorn";
import { type Plugin, transformSync } from "esbuild";
import { everyNode } from "./gates/tree";

/** What a declaration says to a reader: in the script the comment above each stub says it, once. */
const SAID_ABOVE = new Set(["group", "summary", "limits", "example", "source"]);

function saidAbove(node: AnyNode): Property[] {
	if (node.type !== "CallExpression") return [];
	const [declaration] = node.arguments;
	const named =
		node.callee.type === "Identifier" && node.callee.name === "sheetFunction";
	if (!named || declaration?.type !== "ObjectExpression") return [];
	return declaration.properties.filter(
		(property): property is Property =>
			property.type === "Property" &&
			property.key.type === "Identifier" &&
			SAID_ABOVE.has(property.key.name),
	);
}

/** A module's JavaScript without what its declarations say to a reader. */
export function undocumented(typescript: string): string {
	const { code } = transformSync(typescript, { loader: "ts", charset: "utf8" });
	const tree = parse(code, { ecmaVersion: "latest", sourceType: "module" });
	return [...everyNode(tree)]
		.flatMap(saidAbove)
		.sort((a, b) => b.start - a.start)
		.reduce(
			(text, { start, end }) =>
				text.slice(0, start) + text.slice(end).replace(/^\s*,/, ""),
			code,
		);
}

/** Takes the readers' part out of every declaration that is bundled. */
export const withoutDocumentation: Plugin = {
	name: "without-documentation",
	setup({ onLoad }) {
		onLoad({ filter: /[\\/]src[\\/]functions[\\/]\w+\.ts$/ }, ({ path }) => ({
			contents: undocumented(readFileSync(path, "utf8")),
			loader: "js",
		}));
	},
};
