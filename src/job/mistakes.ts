/** Checks plain data against the fields it should have: every mistake is one sentence that names the field. */
import { InputError } from "../calc/errors";
import type { Field, Fields, Kind } from "./fields/field";
import { isBlank } from "./reading/cells";
import type { UnitSystem } from "./reading/units";

/** What an object may hold. */
export interface Shape {
	fields: Fields;
	/** Lists of rows. */
	lists?: Readonly<Record<string, { of: Shape; most: number; least?: number }>>;
	/** Objects of rows of one kind. */
	rowsByKey?: Readonly<Record<string, Fields>>;
	/** Objects of values by names that nobody knows beforehand. */
	values?: Readonly<Record<string, Field>>;
	/** Lists of names, and how many there may be. */
	names?: Readonly<Record<string, number>>;
	/** What is not checked. */
	free?: readonly string[];
}

const isObject = (value: unknown): value is Record<string, unknown> =>
	typeof value === "object" && value !== null && !Array.isArray(value);

/** A value as a sentence shows it, cut short. */
function shown(value: unknown): string {
	const text = JSON.stringify(value) ?? String(value);
	return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

const keysOf = (shape: Shape): string[] => [
	...(shape.free ?? []),
	...[
		shape.fields,
		shape.lists,
		shape.rowsByKey,
		shape.values,
		shape.names,
	].flatMap((part) => Object.keys(part ?? {})),
];

/** Where the value stands in the file, and the units of its numbers. */
interface Place {
	/** Leads to the value, e.g. `pieces[2].`; blank for the file. */
	path: string;
	units: UnitSystem;
	/** What the file is called. */
	file: string;
}

/** What is wrong with an object, a sentence each. */
export function mistakesIn(
	value: unknown,
	shape: Shape,
	place: Place,
): string[] {
	const { path, file } = place;
	const allowed = keysOf(shape);
	if (!isObject(value))
		return [
			`${path.replace(/\.$/, "") || file} must be an object with ${allowed.join(", ")}`,
		];
	const each = <T>(
		part: Readonly<Record<string, T>> | undefined,
		check: (value: unknown, what: T, path: string) => string[],
	): string[] =>
		Object.entries(part ?? {}).flatMap(([key, what]) =>
			check(value[key], what, path + key),
		);
	return [
		...Object.keys(value)
			.filter((key) => !allowed.includes(key))
			.map(
				(key) =>
					`unknown field "${path}${key}": allowed are ${allowed.join(", ")}`,
			),
		...each(shape.fields, (typed, field, at) =>
			fieldMistakes(typed, field, at, place.units),
		),
		...each(shape.lists, (rows, list, at) =>
			listMistakes(rows, list, { ...place, path: at }),
		),
		...each(shape.rowsByKey, (rows, fields, at) =>
			membersOf(rows, at, (row, key) =>
				mistakesIn(row, { fields }, { ...place, path: `${at}.${key}.` }),
			),
		),
		...each(shape.values, (values, field, at) =>
			membersOf(values, at, (typed, key) =>
				fieldMistakes(typed, field, `${at}.${key}`, place.units),
			),
		),
		...each(shape.names, namesMistakes),
	];
}

function membersOf(
	value: unknown,
	path: string,
	check: (member: unknown, key: string) => string[],
): string[] {
	if (value === undefined || value === null) return [];
	if (!isObject(value)) return [`"${path}" must be an object`];
	return Object.entries(value).flatMap(([key, member]) => check(member, key));
}

function listMistakes(
	value: unknown,
	{ of, least = 0, most }: { of: Shape; most: number; least?: number },
	place: Place,
): string[] {
	const { path } = place;
	if (value === undefined || value === null)
		return least > 0 ? [`missing field "${path}"`] : [];
	if (!Array.isArray(value)) return [`"${path}" must be a list`];
	if (value.length < least) return [`"${path}" has no row`];
	if (value.length > most)
		return [`"${path}" has ${value.length} rows: there is room for ${most}`];
	return value.flatMap((row, index) =>
		mistakesIn(row, of, { ...place, path: `${path}[${index}].` }),
	);
}

function namesMistakes(value: unknown, most: number, path: string): string[] {
	if (value === undefined || value === null) return [];
	if (!Array.isArray(value) || value.some((name) => typeof name !== "string"))
		return [`"${path}" must be a list of names`];
	return value.length > most
		? [`"${path}" has ${value.length} names: there is room for ${most}`]
		: [];
}

const JSON_KINDS: Readonly<Record<Kind, readonly [is: string, words: string]>> =
	{
		text: ["string", "text"],
		word: ["string", "text"],
		length: ["number or string", "a number or a text"],
		number: ["number", "a number"],
		share: ["number", "a number from 0 to 1"],
		money: ["number", "a number"],
		day: ["string", "a day such as 2026-05-04"],
		time: ["string", "a time like 9:40"],
		color: ["string", "a color"],
	};

/** What is wrong with one value; blank is absent. */
function fieldMistakes(
	value: unknown,
	field: Field,
	path: string,
	units: UnitSystem,
): string[] {
	if (isBlank(value))
		return field.required === true ? [`missing field "${path}"`] : [];
	const [kinds, words] = JSON_KINDS[field.kind];
	if (!kinds.split(" or ").includes(typeof value))
		return [`"${path}" must be ${words}, got ${shown(value)}`];
	try {
		field.read(`"${path}"`, value, units);
		return [];
	} catch (error) {
		if (error instanceof InputError) return [error.message];
		throw error;
	}
}
