/** Code.js as the platform runs it: an ES2020 script, evaluated anew for every call. */
import { type Node, parse } from "acorn";
import type { Realm } from "./contract";
import { isDate } from "./dates";

export interface Script {
	code: string;
	/** Names of the top-level functions, private ones (`name_`) too. */
	names: readonly string[];
}

/** What a loaded script can be asked: a function by name, with arguments of the host. */
export type Run = (
	name: string,
	args: readonly unknown[],
	services: Readonly<Record<string, unknown>>,
) => unknown;

function declaredName(statement: Node): string[] {
	const declared = statement as Node & { id?: { name: string } };
	return statement.type === "FunctionDeclaration" && declared.id
		? [declared.id.name]
		: [];
}

let last: Script | undefined;

/**
 * The script and its top-level functions; the same one again is not read again.
 *
 * @throws SyntaxError for what an ES2020 script does not have, such as class fields, private names and modules.
 */
export function readScript(code: string): Script {
	if (last?.code === code) return last;
	const program = parse(code, { ecmaVersion: 2020, sourceType: "script" });
	last = { code, names: program.body.flatMap(declaredName) };
	return last;
}

/** Private functions end in `_`: no cell and no panel may call them. */
export function isPublic(script: Script, name: string): boolean {
	return script.names.includes(name) && !name.endsWith("_");
}

/**
 * Turns values of the host into values of the script's own context, where `instanceof Array` and `Date` hold.
 * What `isKept` says yes to goes in as it is.
 */
export function adopter(
	realm: Realm,
	isKept: (value: object) => boolean = () => false,
): (value: unknown) => unknown {
	const list = realm.compile(["items"], "return Array.from(items);");
	const date = realm.compile(["time"], "return new Date(time);");
	const record = realm.compile(
		["entries"],
		"return Object.fromEntries(entries);",
	);
	const isPlain = (value: object) =>
		!isKept(value) && Object.getPrototypeOf(value) === Object.prototype;
	const adopt = (value: unknown): unknown => {
		if (Array.isArray(value)) return list(value.map(adopt));
		if (isDate(value)) return date(value.getTime());
		if (typeof value === "object" && value !== null && isPlain(value))
			return record(
				Object.entries(value).map(([key, item]) => [key, adopt(item)]),
			);
		return value;
	};
	return adopt;
}

/** Makes an Error of the script's own context, named as the platform names its own. */
export function thrower(realm: Realm): (message: string) => Error {
	const make = realm.compile(
		["message"],
		"return Object.assign(new Error(message), { name: 'Exception' });",
	);
	return (message) => make(message) as Error;
}

/**
 * The script compiled once in a realm; every call evaluates all of it again, so that nothing is kept between calls.
 *
 * @throws Error when a call leaves a new global variable behind: the platform would have forgotten it.
 */
export function loadScript(
	script: Script,
	realm: Realm,
	services: readonly string[],
): Run {
	const load = realm.compile(
		services,
		`${script.code}\n;return { ${script.names.join(", ")} };\n//# sourceURL=Code.js`,
	);
	const adopt = adopter(realm);
	const known = new Set(realm.globals());
	return (name, args, given) => {
		const functions = load(
			...services.map((service) => given[service]),
		) as Record<string, (...values: unknown[]) => unknown>;
		const called = script.names.includes(name) ? functions[name] : undefined;
		if (!called) throw new Error(`Script function not found: ${name}`);
		const answer = called(...args.map(adopt));
		const left = realm.globals().filter((global) => !known.has(global));
		if (left.length > 0)
			throw new Error(
				`${name} left the global variable ${left.join(", ")} behind`,
			);
		return answer;
	};
}
