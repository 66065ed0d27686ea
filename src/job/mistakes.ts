/** Checks plain data against the fields it should have: every mistake is one sentence that names the field. */
import { InputError } from "../calc/errors";
import type { Field, Fields, Kind } from "./fields/field";
import { isBlank } from "./reading/cells";
import type { UnitSystem } from "./reading/units";

/** What is wrong, and where. */
export interface Mistake {
	/** Leads to the field, e.g. `pieces[2].a`; blank for the file. */
	path: string;
	say: string;
}

/** What an object may hold. */
export interface Shape {
	fields: Fields;
	/** Of one row, where what it holds decides. */
	fieldsOf?(row: Readonly<Record<string, unknown>>): Fields;
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

/** What is wrong with an object; each sentence names its field. */
export function mistakesIn(
	value: unknown,
	shape: Shape,
	place: Place,
): Mistake[] {
	const { path, file } = place;
	const allowed = keysOf(shape);
	if (!isObject(value))
		return wrong(
			path.replace(/\.$/, ""),
			`${path.replace(/\.$/, "") || file} must be an object with ${allowed.join(", ")}`,
		);
	const each = <T>(
		part: Readonly<Record<string, T>> | undefined,
		check: (value: unknown, what: T, path: string) => Mistake[],
	): Mistake[] =>
		Object.entries(part ?? {}).flatMap(([key, what]) =>
			check(value[key], what, path + key),
		);
	return [
		...Object.keys(value)
			.filter((key) => !allowed.includes(key))
			.map((key) => ({
				path: path + key,
				say: `unknown field "${path}${key}": allowed are ${allowed.join(", ")}`,
			})),
		...each(shape.fieldsOf?.(value) ?? shape.fields, (typed, field, at) =>
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

const wrong = (path: string, say: string): Mistake[] => [{ path, say }];

function membersOf(
	value: unknown,
	path: string,
	check: (member: unknown, key: string) => Mistake[],
): Mistake[] {
	if (value === undefined || value === null) return [];
	if (!isObject(value)) return wrong(path, `"${path}" must be an object`);
	return Object.entries(value).flatMap(([key, member]) => check(member, key));
}

function listMistakes(
	value: unknown,
	{ of, least = 0, most }: { of: Shape; most: number; least?: number },
	place: Place,
): Mistake[] {
	const { path } = place;
	if (value === undefined || value === null)
		return least > 0 ? wrong(path, `missing field "${path}"`) : [];
	if (!Array.isArray(value)) return wrong(path, `"${path}" must be a list`);
	if (value.length < least) return wrong(path, `"${path}" has no row`);
	if (value.length > most)
		return wrong(
			path,
			`"${path}" has ${value.length} rows: there is room for ${most}`,
		);
	return value.flatMap((row, index) =>
		mistakesIn(row, of, { ...place, path: `${path}[${index}].` }),
	);
}

function namesMistakes(value: unknown, most: number, path: string): Mistake[] {
	if (value === undefined || value === null) return [];
	if (!Array.isArray(value) || value.some((name) => typeof name !== "string"))
		return wrong(path, `"${path}" must be a list of names`);
	return value.length > most
		? wrong(
				path,
				`"${path}" has ${value.length} names: there is room for ${most}`,
			)
		: [];
}

const JSON_KINDS: Readonly<Record<Kind, readonly [is: string, words: string]>> =
	{
		text: ["string", "text"],
		word: ["string", "text"],
		length: ["number or string", "a number or a text"],
		number: ["number", "a number"],
		weight: ["number or string", "a number or a text"],
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
): Mistake[] {
	if (isBlank(value))
		return field.required === true
			? wrong(path, `missing field "${path}"`)
			: [];
	const [kinds, words] = JSON_KINDS[field.kind];
	if (!kinds.split(" or ").includes(typeof value))
		return wrong(path, `"${path}" must be ${words}, got ${shown(value)}`);
	const sentence = sentenceOf(() => field.read(`"${path}"`, value, units));
	return sentence === undefined ? [] : wrong(path, sentence);
}

/** The sentence for what a person can correct in `work`; undefined when all is well. */
export function sentenceOf(work: () => unknown): string | undefined {
	try {
		work();
		return undefined;
	} catch (error) {
		if (error instanceof InputError) return error.message;
		throw error;
	}
}

/** True for data that has the lists, rows and objects of the shape, no more of them than there is room for; fields may hold anything. */
export function isShaped(value: unknown, shape: Shape): boolean {
	if (!isObject(value)) return false;
	const absent = (key: string) =>
		value[key] === undefined || value[key] === null;
	return (
		Object.entries(shape.lists ?? {}).every(
			([key, { of, least = 0, most }]) => {
				const rows = value[key];
				if (absent(key)) return least === 0;
				return (
					Array.isArray(rows) &&
					rows.length <= most &&
					rows.every((row) => isShaped(row, of))
				);
			},
		) &&
		Object.keys({ ...shape.values, ...shape.rowsByKey }).every(
			(key) => absent(key) || isObject(value[key]),
		) &&
		Object.keys(shape.names ?? {}).every(
			(key) => absent(key) || namesMistakes(value[key], 1e9, key).length === 0,
		)
	);
}
