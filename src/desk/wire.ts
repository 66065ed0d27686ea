/**
 * What `google.script.run` lets through.
 *
 * @source developers.google.com/apps-script/guides/html/communication; a returned Date: enuchi/React-Google-Apps-Script#28
 */
import { isDate } from "./dates";

export type Wire =
	| null
	| boolean
	| number
	| string
	| Wire[]
	| { [key: string]: Wire };

/** Found a Date where none may be. */
class DateFound extends Error {}

function isRecord(value: unknown): value is Record<string, unknown> {
	return Object.prototype.toString.call(value) === "[object Object]";
}

function copied(value: unknown, path: string, above: readonly unknown[]): Wire {
	const refuse = () =>
		new Error(`Failed due to illegal value in property: ${path}`);
	if (value === null || value === undefined) return null;
	if (typeof value === "string" || typeof value === "boolean") return value;
	if (typeof value === "number" && Number.isFinite(value)) return value;
	if (isDate(value)) throw new DateFound(refuse().message);
	if (above.includes(value)) throw refuse();
	const inside = [...above, value];
	if (Array.isArray(value))
		return Array.from(value, (item, index) =>
			copied(item, `${path}.${index}`, inside),
		);
	if (!isRecord(value)) throw refuse();
	return Object.fromEntries(
		Object.entries(value)
			.filter(([, item]) => item !== undefined)
			.map(([key, item]) => [key, copied(item, `${path}.${key}`, inside)]),
	);
}

/** Arguments on their way to the script. @throws Error for a Date, a function, a circle, NaN. */
export function sentArguments(args: readonly unknown[]): Wire[] {
	return args.map((arg, index) => copied(arg, String(index), []));
}

/** An answer on its way to the panel: with a Date anywhere in it all of it arrives as null. */
export function sentAnswer(answer: unknown): Wire {
	try {
		return copied(answer, "result", []);
	} catch (error) {
		if (error instanceof DateFound) return null;
		throw error;
	}
}
