/**
 * What is known of a number: the number, or what is wrong, or what is still missing.
 *
 * Answers carry these three through the arithmetic, so that nothing is fine that was not computed from all it needs.
 */
import { InputError } from "../../calc/errors";
import type { Fields, Read, Row } from "../fields/field";
import { isBlank } from "../reading/cells";
import type { UnitSystem } from "../reading/units";

export type Known<T> =
	| { is: T }
	/** Something is wrong: a sentence. */
	| { look: string }
	/** Something is missing: what to type. */
	| { missing: string };

export type State = "fine" | "look" | "unknown";

/** What a person reads, and what it is to them. */
export interface Said {
	state: State;
	say: string;
}

export const is = <T>(value: T): Known<T> => ({ is: value });
export const look = (sentence: string): { look: string } => ({
	look: sentence,
});
export const missing = (what: string): { missing: string } => ({
	missing: what,
});

export const isKnown = <T>(known: Known<T>): known is { is: T } =>
	"is" in known;

/** The value, or null while it is not known. */
export const orNull = <T>(known: Known<T>): T | null =>
	isKnown(known) ? known.is : null;

/** What the work makes of a known value. What a person can correct in it becomes a look. */
export function from<A, B>(a: Known<A>, work: (a: A) => B): Known<B> {
	return isKnown(a) ? attempt(() => work(a.is)) : a;
}

/** What the work makes of two known values. */
export function fromBoth<A, B, C>(
	a: Known<A>,
	b: Known<B>,
	work: (a: A, b: B) => C,
): Known<C> {
	return from(all([a, b] as [Known<A>, Known<B>]), ([one, other]) =>
		work(one, other),
	);
}

/** What is known of something that is known only once something else is. */
export const flat = <T>(known: Known<Known<T>>): Known<T> =>
	isKnown(known) ? known.is : known;

/** All of them, once each is known; what is wrong goes before what is missing. */
export function all<T extends readonly unknown[]>(
	parts: { [K in keyof T]: Known<T[K]> },
): Known<T> {
	const list = parts as readonly Known<unknown>[];
	const wrong =
		list.find((part) => "look" in part) ??
		list.find((part) => "missing" in part);
	return wrong
		? (wrong as Known<T>)
		: is(list.map((part) => (part as { is: unknown }).is) as unknown as T);
}

/** The answer of the work; what a person can correct becomes a look. */
export function attempt<T>(work: () => T): Known<T> {
	try {
		return is(work());
	} catch (error) {
		if (error instanceof InputError) return look(error.message);
		throw error;
	}
}

/** `Look: …`, `not known yet: …`, or nothing where the value is known. */
export const saying = (known: Known<unknown>): string =>
	"look" in known
		? `Look: ${known.look}`
		: "missing" in known
			? `not known yet: ${known.missing}`
			: "";

/** As a cell shows it: the value, or what is wrong or missing. */
export const shown = <T>(known: Known<T>): T | string =>
	isKnown(known) ? known.is : saying(known);

/** The state of something that is fine once it is known. */
export const saidOf = (known: Known<string>): Said =>
	isKnown(known)
		? { state: "fine", say: known.is }
		: { state: "look" in known ? "look" : "unknown", say: saying(known) };

/** A record as the answers read it, or the first thing that is wrong with it. */
export function readRow<F extends Fields>(
	fields: F,
	row: Row<F>,
	units: UnitSystem,
): Known<Read<F>> {
	return attempt(
		() =>
			Object.fromEntries(
				Object.entries(fields).map(([key, field]) => {
					const typed = row[key];
					return [
						key,
						isBlank(typed)
							? undefined
							: field.read(nameOf(field.label), typed, units),
					];
				}),
			) as Read<F>,
	);
}

/** One field of a record. */
export function readField<F extends Fields, K extends keyof F & string>(
	fields: F,
	key: K,
	row: Row<F>,
	units: UnitSystem,
): Known<Exclude<Read<F>[K], undefined>> {
	const field = fields[key];
	if (!field) throw new Error(`There is no field ${key}`);
	const typed = row[key];
	if (isBlank(typed))
		return missing(field.wanted ? `type ${field.wanted}` : nameOf(field.label));
	return attempt(
		() =>
			field.read(nameOf(field.label), typed, units) as Exclude<
				Read<F>[K],
				undefined
			>,
	);
}

/** A field's label as a sentence calls it: without the unit. */
export const nameOf = (label: string): string =>
	label
		.replace(/, ?\{\w+\}.*$/, "")
		.replace(/^(.)(?=[a-z ])/, (letter) => letter.toLowerCase());
