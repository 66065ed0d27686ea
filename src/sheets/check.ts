/** A job held against the trade's arithmetic, so that one it refuses is never written. */
import { InputError } from "../calc/errors";
import { callFunction, functionNamed } from "../functions/index";
import type { UnitSystem } from "../template/job";
import type { Value } from "../template/plan";

type Rows = readonly (readonly Value[])[];

/** Calls a sheet function for its complaints alone; its sentences name the table. */
function check(name: string, table: string, args: unknown[]): void {
	const fn = functionNamed(name);
	if (!fn) throw new Error(`There is no function ${name}`);
	try {
		callFunction(fn, args);
	} catch (error) {
		if (!(error instanceof InputError)) throw error;
		const row = error.message.startsWith("row ") ? `${table} ` : "";
		throw new InputError(row + error.message);
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
 * Any mass and binder share will do: it is the table that is checked. A job without pigment has nothing to weigh.
 *
 * @throws InputError for tones that TONE_WEIGHTS refuses.
 */
export function checkTones(
	tones: Rows,
	pigments: readonly string[],
	units: UnitSystem,
): void {
	const filled = tones.filter((row) => row[1] !== "");
	if (pigments.length === 0 || filled.length < tones.length) return;
	check("TONE_WEIGHTS", "tones", [tones, [pigments], 1, 1, units]);
}
