/** The table of tones and the names of its pigments, as several functions take them, checked as a whole. */
import { InputError, quoted } from "../calc/errors";
import { nameKey } from "../calc/names";
import type { Tone } from "../calc/tones";
import { list, number, share, table, text } from "./arguments";

export const TONES = table(
	"One row per tone, e.g. A2:D6: name, share of the batch, then a dose of each pigment",
	{
		name: text("Name of the tone, e.g. warm gray"),
		share: number("Share of the batch, or any weight, e.g. 60%", { min: 0 }),
	},
	{ more: share("dose", { blank: 0 }) },
);

export const PIGMENTS = list(
	text("Names of the pigments in the order of the doses, e.g. C1:D1"),
	{ alone: true, mayBeEmpty: true },
);

export const BINDER_IN_MIX = share("Binder in the undosed mix, e.g. 55%", {
	above: 0,
	max: 1,
});

/**
 * The names, when each is there once.
 *
 * @throws InputError when two are the same, whatever their case.
 */
export function unique(
	what: string,
	names: readonly string[],
): readonly string[] {
	const seen = new Map<string, number>();
	for (const [i, name] of names.entries()) {
		const first = seen.get(nameKey(name));
		if (first !== undefined)
			throw new InputError(
				`${what} must each have a name of their own, got ${quoted(name)} as number ${first + 1} and ${i + 1}`,
			);
		seen.set(nameKey(name), i);
	}
	return names;
}

interface ToneRow {
	name: string;
	share: number;
	more: readonly number[];
	row: number;
}

/**
 * The tones, a dose for each of the pigments.
 *
 * @throws InputError when a name comes twice, or when the columns of doses are not those of the pigments.
 */
export function tonesOf(
	rows: readonly ToneRow[],
	pigments: readonly string[],
): Tone[] {
	unique(
		"tones",
		rows.map(({ name }) => name),
	);
	return rows.map(({ name, share, more, row }) => {
		if (more.length < pigments.length)
			throw new InputError(
				`tones has ${more.length} columns of doses and pigments has ${pigments.length} names: they must be as many`,
			);
		const nameless = more.findIndex(
			(dose, i) => i >= pigments.length && dose > 0,
		);
		if (nameless >= 0)
			throw new InputError(
				`row ${row}: tones has a dose in column ${nameless + 3}, but pigments has only ${pigments.length === 1 ? "1 name" : `${pigments.length} names`}`,
			);
		return { name, share, doses: more.slice(0, pigments.length) };
	});
}

/**
 * The cells of one row that belongs to the columns of a table; nothing where it is blank.
 *
 * @throws InputError when there are more rows, or another number of columns.
 */
export function oneRowAsWide<T>(
	name: string,
	rows: readonly { more: readonly T[] }[],
	tableName: string,
	table: readonly { more: readonly unknown[] }[],
): readonly T[] {
	const [row, ...others] = rows;
	if (others.length > 0)
		throw new InputError(`${name} must be one row, got ${rows.length}`);
	const width = table[0]?.more.length ?? 0;
	if (row && table.length > 0 && row.more.length !== width)
		throw new InputError(
			`${tableName} has ${width} columns and ${name} has ${row.more.length}: they must be as many`,
		);
	return row?.more ?? [];
}

/** A longer table is a slip of the hand, and what compares every tone with every other would take too long. */
const MOST_TONES = 40;

/** @throws InputError for more tones than anybody folds; `what` is what they are too many for. */
export function notTooMany(tones: readonly unknown[], what: string): void {
	if (tones.length > MOST_TONES)
		throw new InputError(
			`tones must be at most ${MOST_TONES} rows for ${what}, got ${tones.length}`,
		);
}
