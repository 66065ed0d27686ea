/** A job held against the trade's arithmetic, so that one it refuses is never written. */
import { InputError } from "../calc/errors";
import { callFunction } from "../functions/call";
import type { SheetFunction } from "../functions/declare";
import { UPLIFT } from "../functions/handling";
import { MOLD_PLAN } from "../functions/mold";
import { PIECE_TAKEOFF, SLAB_VOLUME } from "../functions/takeoff";
import { TONE_WEIGHTS } from "../functions/tones";
import type { UnitSystem } from "../template/job";
import type { Value } from "../template/plan";

type Rows = readonly (readonly Value[])[];

/** The sentence with its table in front, where it does not begin with one: `row 2: …`, or `shape …` of a single row. */
function placed(sentence: string, table: string): string {
	if (/^(?:pieces|cutouts|knockouts|tones|pigments)\b/.test(sentence))
		return sentence;
	return sentence.startsWith("row ")
		? `${table} ${sentence}`
		: `${table}: ${sentence}`;
}

/** Calls a sheet function for its complaints alone. */
const check = (fn: SheetFunction, table: string, args: unknown[]): void => {
	answerOf(fn, table, args);
};

/** The answer of a sheet function, whose sentences name the table. */
function answerOf(fn: SheetFunction, table: string, args: unknown[]): unknown {
	try {
		return callFunction(fn, args);
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
	check(PIECE_TAKEOFF, "pieces", [
		pieces,
		cutouts.length > 0 ? cutouts : "",
		units,
	]);

/** @throws InputError for notches and drop edges that MOLD_PLAN refuses. */
export const checkMolds = (pieces: Rows, lie: Rows, units: UnitSystem): void =>
	check(MOLD_PLAN, "pieces", [pieces, lie, "", units]);

/** Any density will do. @throws InputError for knockouts without a size, or with one that cannot be. */
export function checkKnockouts(knockouts: Rows, units: UnitSystem): void {
	knockouts.forEach(
		([, , volume = "", a = "", b = "", depth = "", mass], i) => {
			const table = `knockouts row ${i + 1}`;
			const size =
				volume === ""
					? answerOf(SLAB_VOLUME, table, [a, b, depth, units])
					: volume;
			check(UPLIFT, table, [size, 1, mass === "" ? 0 : mass, units]);
		},
	);
}

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
	check(TONE_WEIGHTS, "tones", [table, [columns], 1, 1, units]);
}
