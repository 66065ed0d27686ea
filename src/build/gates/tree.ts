import type { AnyNode } from "acorn";

const isNode = (value: unknown): value is AnyNode =>
	typeof (value as AnyNode | null)?.type === "string";

/** Names of members and labels are no names of variables. */
const NAME_KEYS: Record<string, string> = {
	MemberExpression: "property",
	Property: "key",
	MethodDefinition: "key",
	LabeledStatement: "label",
	BreakStatement: "label",
	ContinueStatement: "label",
};

function isOnlyName(node: AnyNode, key: string): boolean {
	if (node.type === "MetaProperty") return true;
	return NAME_KEYS[node.type] === key && !("computed" in node && node.computed);
}

/** The parts of a syntax node, without names that only look like variables. */
export function parts(node: AnyNode): AnyNode[] {
	return Object.entries(node)
		.filter(([key]) => !isOnlyName(node, key))
		.flatMap(([, value]) => (Array.isArray(value) ? value : [value]))
		.filter(isNode);
}

/** A node and everything in it. */
export function* everyNode(node: AnyNode): Generator<AnyNode> {
	yield node;
	for (const part of parts(node)) yield* everyNode(part);
}
