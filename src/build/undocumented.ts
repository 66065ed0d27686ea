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

/** Help of an argument is a sentence; names, allowed words and units are shorter. */
const HELP_FROM = 24;

interface Cut {
	start: number;
	end: number;
	left: string;
}

/** Help texts of arguments, wherever a declaration is given them. */
const helpOf = (node: AnyNode): Cut[] =>
	node.type === "Literal" &&
	typeof node.value === "string" &&
	node.value.length >= HELP_FROM
		? [{ start: node.start, end: node.end, left: '""' }]
		: [];

/** Calls that read an argument, and so are told what it is. */
const ARGUMENT_CALLS = new Set([
	"length",
	"coordinate",
	"area",
	"volume",
	"mass",
	"pigment",
	"density",
	"temperature",
	"stress",
	"wind",
	"coverage",
	"number",
	"share",
	"text",
	"word",
	"custom",
	"table",
]);

function argumentHelp(node: AnyNode): Cut[] {
	if (node.type !== "CallExpression") return [];
	const { callee } = node;
	if (callee.type !== "Identifier" || !ARGUMENT_CALLS.has(callee.name))
		return [];
	return node.arguments.flatMap((argument) => helpOf(argument));
}

/** A module's JavaScript without what its declarations say to a reader. */
export function undocumented(typescript: string): string {
	const { code } = transformSync(typescript, { loader: "ts", charset: "utf8" });
	const tree = parse(code, { ecmaVersion: "latest", sourceType: "module" });
	const nodes = [...everyNode(tree)];
	const properties = nodes.flatMap(saidAbove);
	const inside = ({ start }: Cut) =>
		properties.some((whole) => start >= whole.start && start < whole.end);
	const help = nodes.flatMap(argumentHelp).filter((cut) => !inside(cut));
	const cuts: Cut[] = [
		...help,
		...properties.map(({ start, end }) => ({ start, end, left: "" })),
	];
	return cuts
		.sort((a, b) => b.start - a.start)
		.reduce(
			(text, { start, end, left }) =>
				text.slice(0, start) +
				left +
				(left ? text.slice(end) : text.slice(end).replace(/^\s*,/, "")),
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
