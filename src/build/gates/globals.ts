import type { AnyNode, Program } from "acorn";
import { parts } from "./tree";

const isFunction = (node: AnyNode): boolean =>
	/^(FunctionDeclaration|FunctionExpression|ArrowFunctionExpression)$/.test(
		node.type,
	);

/** Names bound by a parameter, a variable or a pattern. */
function bound(pattern: AnyNode | null): string[] {
	switch (pattern?.type) {
		case "Identifier":
			return [pattern.name];
		case "AssignmentPattern":
			return bound(pattern.left);
		case "RestElement":
			return bound(pattern.argument);
		case "ArrayPattern":
			return pattern.elements.flatMap(bound);
		case "ObjectPattern":
			return pattern.properties.flatMap((property) =>
				bound(property.type === "Property" ? property.value : property),
			);
		default:
			return [];
	}
}

/** Names of a function's `var`s, which no block holds. */
function hoisted(node: AnyNode): string[] {
	const own =
		node.type === "VariableDeclaration" && node.kind === "var"
			? node.declarations.flatMap(({ id }) => bound(id))
			: [];
	const inside = parts(node).filter((part) => !isFunction(part));
	return [...own, ...inside.flatMap(hoisted)];
}

/** Names declared by the statements of one block. */
function declared(node: AnyNode): string[] {
	if (node.type === "VariableDeclaration")
		return node.declarations.flatMap(({ id }) => bound(id));
	if (node.type === "FunctionDeclaration" || node.type === "ClassDeclaration")
		return bound(node.id);
	return [];
}

/** Names that a node makes known to everything inside it. */
function scope(node: AnyNode): string[] {
	const direct = parts(node).flatMap(declared);
	switch (node.type) {
		case "Program":
			return [...direct, ...hoisted(node)];
		case "FunctionDeclaration":
		case "FunctionExpression":
			return [
				"arguments",
				...bound(node.id ?? null),
				...node.params.flatMap(bound),
				...hoisted(node.body),
			];
		case "ArrowFunctionExpression":
			return [...node.params.flatMap(bound), ...hoisted(node.body)];
		case "ClassExpression":
			return bound(node.id ?? null);
		case "CatchClause":
			return bound(node.param ?? null);
		case "SwitchStatement":
			return node.cases.flatMap((one) => one.consequent.flatMap(declared));
		default:
			return direct;
	}
}

/** Names that a script uses and declares nowhere, with the line of their first use. */
export function freeNames(program: Program): Map<string, number> {
	const found = new Map<string, number>();
	const visit = (node: AnyNode, known: ReadonlySet<string>): void => {
		if (node.type === "Identifier" && !known.has(node.name))
			if (!found.has(node.name))
				found.set(node.name, node.loc?.start.line ?? 0);
		const names = scope(node);
		const inside = names.length ? new Set([...known, ...names]) : known;
		for (const part of parts(node)) visit(part, inside);
	};
	visit(program, new Set());
	return found;
}
