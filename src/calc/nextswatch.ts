/** Which swatch to cast next, so that the tones are known best. */
import { castBands } from "./castband";
import type { Palette, PalettePigment } from "./palette";

export interface WantedTone {
	name: string;
	/** Of binder, a column each. */
	doses: readonly number[];
}

export type NextSwatch =
	/** A pigment without swatches, or with none as strong as a tone. */
	| { what: "strongest"; column: number; dose: number; tone: string }
	/** Nothing lies between undosed and strongest. */
	| { what: "middle"; column: number; dose: number; tone: string | undefined }
	/** No ladder takes the place of a cast of the tone. */
	| { what: "tone"; tone: string; doses: readonly number[] }
	| { what: "enough" };

/** Where a middle swatch tells most, of the strongest: simulated ladders of known truth. */
export const MIDDLE = 0.3;
/** What counts as between undosed and strongest: common practice, no source. */
const BETWEEN = [0.05, 0.9] as const;
/** A swatch within this of a tone's doses is the tone: common practice, no source. */
const SAME_DOSE = 0.05;

/**
 * The next swatch by a rule that was found as good as the best choice by covariances, on simulated ladders of known truth.
 *
 * First a pigment that is used with nothing in the middle, at 0.3 of its strongest swatch, where the tones are known least.
 * Then a tone of several pigments itself, unless it has been cast. Else another swatch would not tell much.
 */
export function nextSwatch(
	palette: Palette,
	tones: readonly WantedTone[],
	/** Doses of every swatch, mixed ones too. */
	cast: readonly (readonly number[])[],
): NextSwatch {
	for (const { name, doses } of tones)
		for (const [column, dose] of doses.entries()) {
			const own = palette.pigments.find((each) => each.column === column);
			if (dose > (own?.strongest ?? 0) * (1 + SAME_DOSE))
				return { what: "strongest", column, dose, tone: name };
		}
	const bandOf = castBands(palette);
	const middle = palette.pigments
		.filter((pigment) => !hasMiddle(pigment))
		.flatMap((pigment) => {
			const dose = MIDDLE * pigment.strongest;
			const uses =
				tones.length === 0
					? [{ name: "", doses: onlyOf(palette, pigment, dose) }]
					: tones.filter(({ doses }) => (doses[pigment.column] ?? 0) > 0);
			const [widest] = uses
				.map((tone) => ({ tone, band: bandOf(tone.doses) }))
				.sort((a, b) => b.band - a.band);
			if (!widest) return [];
			return [{ pigment, dose, widest }];
		})
		.sort((a, b) => b.widest.band - a.widest.band)[0];
	if (middle)
		return {
			what: "middle",
			column: middle.pigment.column,
			dose: middle.dose,
			tone: middle.widest.tone.name || undefined,
		};
	const mixed = tones.find(
		({ doses }) =>
			doses.filter((dose) => dose > 0).length > 1 &&
			!cast.some((each) => isSame(each, doses)),
	);
	return mixed
		? { what: "tone", tone: mixed.name, doses: mixed.doses }
		: { what: "enough" };
}

const hasMiddle = ({ swatches, strongest }: PalettePigment): boolean =>
	swatches.some(
		({ dose }) =>
			dose > BETWEEN[0] * strongest && dose < BETWEEN[1] * strongest,
	);

const onlyOf = (
	{ columns }: Palette,
	{ column }: PalettePigment,
	dose: number,
): number[] =>
	Array.from({ length: columns }, (_, i) => (i === column ? dose : 0));

const isSame = (one: readonly number[], other: readonly number[]): boolean =>
	other.every((dose, i) => Math.abs((one[i] ?? 0) - dose) <= SAME_DOSE * dose);
