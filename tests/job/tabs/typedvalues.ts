/** Whatever people type into cells, by the kind of their field. */
import fc from "fast-check";
import type { Field, Fields, Typed } from "../../../src/job/fields/field";

export const words = fc
	.string({ minLength: 1, maxLength: 12 })
	.filter((text) => text.trim() !== "" && text !== "__proto__");

/** Without blanks around it, as names of pigments are read. */
export const names = words.map((text) => text.trim());

export const numbers = fc
	.double({ min: 0.001, max: 5000, noNaN: true })
	.map((value) => Number(value.toPrecision(6)));

const days = fc
	.integer({ min: 0, max: 4000 })
	.map((days) =>
		new Date(Date.UTC(2024, 0, 1 + days)).toISOString().slice(0, 10),
	);

const lengths = fc.oneof(
	numbers,
	fc.constantFrom("8 ft 1/2 in", "25-1/2 in", "2.4 m", "65 cm", "3/4"),
);

function typed({ kind, words: choices }: Field): fc.Arbitrary<Typed> {
	switch (kind) {
		case "word":
			return fc.constantFrom(...(choices ?? [""]));
		case "length":
			return lengths;
		case "day":
			return days;
		case "time":
			return fc.constantFrom("9:40", "14:05");
		case "text":
			return words;
		default:
			// A text in a cell for a number stays: the answers say what is wrong.
			return fc.oneof(numbers, fc.constantFrom("about 3"));
	}
}

/** Rows of a table, none of them blank. */
export const rowsOf = <F extends Fields>(fields: F, most: number) =>
	fc.array(
		some(fields).filter((row) => Object.keys(row).length > 0),
		{ minLength: 1, maxLength: most },
	);

/** Some of the fields. */
export const some = <F extends Fields>(fields: F) =>
	fc.record(
		Object.fromEntries(
			Object.entries(fields).map(([key, field]) => [key, typed(field)]),
		),
		{ requiredKeys: [] },
	);
