/** A job held against the trade's arithmetic, so that one it refuses is never written. */
import { InputError } from "../calc/errors";
import { callFunction, functionNamed } from "../functions/index";
import type { UnitSystem } from "../template/job";
import type { Value } from "../template/plan";

type Rows = readonly (readonly Value[])[];

/** The sentence with its table in front, where it does not begin with one: `row 2: …`, or `shape …` of a single row. */
function placed(sentence: string, table: string): string {
	if (/^(?:pieces|cutouts|tones|pigments)\b/.test(sentence)) return sentence;
	return sentence.startsWith("row ")
		? `${table} ${sentence}`
		: `${table}: ${sentence}`;
}

/** Calls a sheet function for its complaints alone; its sentences name the table. */
function check(name: string, table: string, args: unknown[]): void {
	const fn = functionNamed(name);
	if (!fn) throw new Error(`There is no function ${name}`);
	try {
		callFunction(fn, args);
	} catch (error) {
		if (!(error instanceof InputError)) throw error;
		throw new InputError(placed(error.message, table));
	}
}

/** @throws InputError for pieces or cutouts that PIECE_TAKEOFF refuses. */
export const checkPieces = (
	pieces: Rows,
	cutouts: Rows,
	units: UnitSystem,
): void =>
	check("PIECE_TAKEOFF", "pieces", [
		pieces,
		cutouts.length > 0 ? cutouts : "",
		units,
	]);

/**
 * Any mass, binder share and, where there is none, pigment will do: it is the table that is checked.
 *
 * @throws InputError for tones that TONE_WEIGHTS refuses.
 */
export function checkTones(
	tones: Rows,
	pigments: readonly string[],
	units: UnitSystem,
): void {
	// a share that nobody has typed yet is no mistake
	if (tones.some(([, share]) => share === "")) return;
	const [table, columns] =
		pigments.length > 0
			? [tones, pigments]
			: [tones.map((row) => [...row, ""]), ["any"]];
	check("TONE_WEIGHTS", "tones", [table, [columns], 1, 1, units]);
}
