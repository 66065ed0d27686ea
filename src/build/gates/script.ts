import {
	type CallExpression,
	type MemberExpression,
	type Program,
	parse,
} from "acorn";
import { TEMPLATES } from "../stubs";
import { freeNames } from "./globals";
import { everyNode } from "./tree";

/** ECMAScript 2020, the services that the two scopes reach, and the function of the other file. */
const KNOWN_GLOBALS = new Set(
	`undefined NaN Infinity isFinite isNaN parseFloat parseInt encodeURI encodeURIComponent decodeURI decodeURIComponent
	Object Function Boolean Symbol Error EvalError RangeError ReferenceError SyntaxError TypeError URIError
	Number BigInt Math Date String RegExp Array Map Set WeakMap WeakSet Promise Proxy Reflect JSON Intl
	ArrayBuffer DataView Int8Array Uint8Array Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array
	Float32Array Float64Array BigInt64Array BigUint64Array console
	SpreadsheetApp HtmlService PropertiesService LockService CacheService Utilities Session ScriptApp Logger ${TEMPLATES}`.split(
		/\s+/,
	),
);

/** Methods that came after ECMAScript 2020. */
const LATER_METHODS =
	/^(hasOwn|replaceAll|findLast|findLastIndex|toSorted|toReversed|toSpliced|with|fromAsync|groupBy|withResolvers|any|isWellFormed|toWellFormed)$/;

/** Complaints of a script's syntax and of the names it leans on. */
export function scriptComplaints(code: string): string[] {
	let program: Program;
	try {
		program = parse(code, {
			ecmaVersion: 2020,
			sourceType: "script",
			locations: true,
		});
	} catch (error) {
		return [`not an ES2020 script: ${(error as Error).message}`];
	}
	const unknown = [...freeNames(program)]
		.filter(([name]) => !KNOWN_GLOBALS.has(name))
		.map(([name, line]) => `line ${line}: Apps Script has no ${name}`);
	return [...unknown, ...nodeComplaints(program)];
}

function nodeComplaints(program: Program): string[] {
	return [...everyNode(program)].flatMap((node) => {
		const line = `line ${node.loc?.start.line}`;
		if (node.type === "ImportExpression")
			return [`${line}: Apps Script has no import()`];
		if (node.type === "MemberExpression" && propertyName(node) === "getContent")
			return [
				`${line}: getContent() gives a page without what looks like a comment`,
			];
		const later = node.type === "CallExpression" && laterMethod(node);
		return later ? [`${line}: .${later}() came after ES2020`] : [];
	});
}

const propertyName = ({ computed, property }: MemberExpression): string =>
	!computed && property.type === "Identifier" ? property.name : "";

/** The name of a called method that came too late; `at` only with a number, as the code's own objects have one. */
function laterMethod({ callee, arguments: [first] }: CallExpression): string {
	if (callee.type !== "MemberExpression") return "";
	const name = propertyName(callee);
	if (name !== "at") return LATER_METHODS.test(name) ? name : "";
	const counts =
		first?.type === "UnaryExpression" ||
		(first?.type === "Literal" && typeof first.value === "number");
	return counts ? name : "";
}
