import { InputError } from "./errors";

/**
 * Factor on every ingredient after a mis-weigh, so that proportions hold: max(1, largest weighed / planned).
 *
 * `weighed` is undefined where it is still to come.
 *
 * @throws InputError when something was weighed of which none was planned.
 */
export function rescaleFactor(
	ingredients: readonly {
		plannedKg: number;
		weighedKg: number | undefined;
		/** Where it stands, for the error. */
		row: number;
	}[],
): number {
	const factors = ingredients.map(({ plannedKg, weighedKg = 0, row }) => {
		if (plannedKg > 0) return weighedKg / plannedKg;
		if (weighedKg === 0) return 0;
		throw new InputError(
			`row ${row}: weighed must be blank where planned is 0, got ${weighedKg}`,
		);
	});
	return Math.max(1, ...factors);
}
