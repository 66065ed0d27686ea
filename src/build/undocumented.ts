import { readFileSync } from "node:fs";
import {
	type AnyNode,
	type CallExpression,
	type Identifier,
	type Property,
	parse,
} from "acorn";
import { type Plugin, transformSync } from "esbuild";
import { everyNode } from "./gates/tree";

/** What a declaration says to a reader: in the script the comment above each stub says it, once. */
const SAID_ABOVE = new Set(["group", "summary", "limits", "example", "source"]);

interface Edit {
	start: number;
	end: number;
	/** What stands there instead; nothing, with the comma behind it, when absent. */
	instead?: string;
}

const calls = (node: AnyNode, name: (name: string) => boolean): boolean =>
	node.type === "CallExpression" &&
	node.callee.type === "Identifier" &&
	name(node.callee.name);

/** The fields of an object whose names a test picks. */
const fields = (
	node: AnyNode,
	picked: (name: string) => boolean,
): Property[] =>
	node.type === "ObjectExpression"
		? node.properties.filter(
				(property): property is Property =>
					property.type === "Property" &&
					property.key.type === "Identifier" &&
					picked(property.key.name),
			)
		: [];

/** The fields of a declaration that only a reader needs, and of its answer what the columns are called. */
function readersFields(node: AnyNode): Edit[] {
	if (!calls(node, (name) => name === "sheetFunction")) return [];
	const [declaration] = (node as CallExpression).arguments;
	if (!declaration) return [];
	const answers = fields(declaration, (name) => name === "answer");
	return [
		...fields(declaration, (name) => SAID_ABOVE.has(name)),
		...answers
			.flatMap(({ value }) => [...everyNode(value)])
			.flatMap((part) => fields(part, (name) => name === "text")),
	];
}

const isText = (node: AnyNode): boolean =>
	node.type === "TemplateLiteral" ||
	(node.type === "Literal" && typeof node.value === "string");

/** Names in a module of what declares an argument: `mass`, `share`, `table` …, and functions of its own that take a help. */
const declaring = (nodes: readonly AnyNode[]): Set<string> =>
	new Set(
		nodes.flatMap((node) => {
			if (node.type === "ImportDeclaration")
				return node.source.value === "./arguments"
					? node.specifiers.map(({ local }) => local.name)
					: [];
			return node.type === "VariableDeclarator" && takesHelp(node.init)
				? [(node.id as Identifier).name]
				: [];
		}),
	);

const takesHelp = (node: AnyNode | null | undefined): boolean =>
	node?.type === "ArrowFunctionExpression" &&
	node.params[0]?.type === "Identifier" &&
	node.params[0].name === "help";

/** The helps of arguments, but for the one that names the columns of `more` in an error. */
function helps(nodes: readonly AnyNode[]): Edit[] {
	const names = declaring(nodes);
	const named = new Set(
		nodes.flatMap((node) =>
			node.type === "Property" &&
			node.key.type === "Identifier" &&
			node.key.name === "more"
				? [node.value as AnyNode]
				: [],
		),
	);
	return nodes
		.filter((node) => !named.has(node))
		.filter((node) => calls(node, (name) => names.has(name)))
		.flatMap((node) => (node as CallExpression).arguments.filter(isText))
		.map(({ start, end }) => ({ start, end, instead: '""' }));
}

function edited(code: string, edits: readonly Edit[]): string {
	const backwards = [...edits].sort((a, b) => b.start - a.start);
	return backwards.reduce((text, { start, end, instead }) => {
		const after = text.slice(end);
		return (
			text.slice(0, start) +
			(instead ?? "") +
			(instead === undefined ? after.replace(/^\s*,/, "") : after)
		);
	}, code);
}

/** A module's JavaScript without what its declarations say to a reader. */
export function undocumented(typescript: string): string {
	const { code } = transformSync(typescript, { loader: "ts", charset: "utf8" });
	const tree = parse(code, { ecmaVersion: "latest", sourceType: "module" });
	const nodes = [...everyNode(tree)];
	return edited(code, [...nodes.flatMap(readersFields), ...helps(nodes)]);
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
