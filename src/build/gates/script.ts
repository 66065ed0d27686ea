import { type Program, parse } from "acorn";
import { freeNames } from "./globals";
import { everyNode } from "./tree";

/** ECMAScript 2020, and the services that the two scopes reach. */
const KNOWN_GLOBALS = new Set(
	`undefined NaN Infinity isFinite isNaN parseFloat parseInt encodeURI encodeURIComponent decodeURI decodeURIComponent
	Object Function Boolean Symbol Error EvalError RangeError ReferenceError SyntaxError TypeError URIError
	Number BigInt Math Date String RegExp Array Map Set WeakMap WeakSet Promise Proxy Reflect JSON Intl
	ArrayBuffer DataView Int8Array Uint8Array Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array
	Float32Array Float64Array BigInt64Array BigUint64Array console
	SpreadsheetApp HtmlService PropertiesService LockService CacheService Utilities Session ScriptApp Logger`.split(
		/\s+/,
	),
);

/** Methods that came after ECMAScript 2020. */
const LATER_METHODS =
	/^(at|hasOwn|replaceAll|findLast|findLastIndex|toSorted|toReversed|toSpliced|groupBy|any|isWellFormed|toWellFormed)$/;

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
		if (node.type !== "CallExpression") return [];
		const { callee } = node;
		const called =
			callee.type === "MemberExpression" &&
			callee.property.type === "Identifier" &&
			!callee.computed
				? callee.property.name
				: "";
		return LATER_METHODS.test(called)
			? [`${line}: .${called}() came after ES2020`]
			: [];
	});
}
