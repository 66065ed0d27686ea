/** What a studio's swatches can be mixed to: the undosed mix and the pigments that have swatches of their own. */
import type { Channels, Lab } from "./color";
import { InputError, percent } from "./errors";
import { absorptions, mixedColor, type Strength } from "./kubelka";
import { withRounding } from "./rounding";
import { fitted, type Swatch } from "./swatches";
import { alone, type SwatchRow } from "./tonecolor";

export interface PalettePigment {
	/** Its column in the table of swatches. */
	column: number;
	strongest: number;
	strengths: readonly Strength[];
	/** The undosed one, then its own, weakest first. */
	swatches: readonly Swatch[];
}

export interface Palette {
	/** How many columns of doses the table has. */
	columns: number;
	undosed: Swatch;
	/** K/S of the undosed mix. */
	base: Channels;
	pigments: readonly PalettePigment[];
}

/**
 * The palette of a table of swatches.
 *
 * @throws InputError without an undosed swatch, or when no pigment has a swatch of its own.
 */
export function paletteOf(rows: readonly SwatchRow[]): Palette {
	const [undosed] = alone(rows, -1);
	if (!undosed)
		throw new InputError(
			"doses must have an undosed swatch (all doses 0): every recipe starts from it",
		);
	const columns = rows[0]?.doses.length ?? 0;
	const pigments = Array.from({ length: columns }, (_, column) => ({
		column,
		swatches: alone(rows, column),
	})).flatMap(({ column, swatches }): PalettePigment[] => {
		if (swatches.length < 2) return [];
		const { strongest, strengths } = fitted(swatches);
		return [{ column, strongest, strengths, swatches }];
	});
	if (pigments.length === 0)
		throw new InputError(
			"doses must have a swatch of at least one pigment alone, got none",
		);
	return {
		columns,
		undosed,
		base: absorptions(undosed.lab),
		pigments,
	};
}

/**
 * The color of doses of a palette, a column each.
 *
 * @throws InputError for a dose of a pigment without swatches, or past the strongest.
 */
export function dosedColor(palette: Palette, doses: readonly number[]): Lab {
	const used = dosedPigments(palette, doses, "the tone");
	return paletteColor(
		palette,
		used,
		used.map(({ column, strongest }) => (doses[column] ?? 0) / strongest),
	);
}

/** The pigments that have a dose. @throws InputError as `dosedColor` does, naming what has the doses. */
export const dosedPigments = (
	{ pigments }: Palette,
	doses: readonly number[],
	what: string,
): PalettePigment[] =>
	doses.flatMap((dose, column) => {
		if (dose <= 0) return [];
		const own = pigments.find((pigment) => pigment.column === column);
		if (!own)
			throw new InputError(
				`${what} has pigment in column ${column + 1}, of which there is no swatch of its own`,
			);
		if (dose > withRounding(own.strongest))
			throw new InputError(
				`${what} must have at most ${percent(own.strongest)}, the strongest swatch of the pigment in column ${column + 1}, got ${percent(dose)}`,
			);
		return [own];
	});

/** The color of some pigments of a palette, each as a share of its strongest swatch. */
export const paletteColor = (
	{ base }: Palette,
	pigments: readonly PalettePigment[],
	shares: readonly number[],
): Lab =>
	mixedColor(
		base,
		pigments.map(({ strengths }, i) => ({ strengths, u: shares[i] ?? 0 })),
	);
