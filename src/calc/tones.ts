/** Pigment dosing. A dose is dry pigment as a share of binder; undosed mix is mix before pigment. */
import { InputError, percent } from "./errors";
import { sum } from "./sum";

export interface Tone {
	name: string;
	/** Relative weight: only its ratio to the other tones' counts. */
	share: number;
	/** A dose a pigment, in the order of the pigments. */
	doses: readonly number[];
}

export interface Dosing {
	/** Undosed mix. */
	massKg: number;
	/** Binder in the undosed mix. */
	binderShare: number;
}

/** Dry pigment, kg: undosed mix × binder share × dose. */
export const pigmentKg = ({
	massKg,
	binderShare,
	dose,
}: Dosing & { dose: number }): number => massKg * binderShare * dose;

/** What the scale shows of a dosed mix, kg: undosed mix × (1 + binder share × total dose). */
export const dosedKg = ({
	massKg,
	binderShare,
	dose,
}: Dosing & { dose: number }): number => massKg * (1 + binderShare * dose);

/** The undosed mix in what the scale shows, kg. */
export const undosedKg = ({
	massKg,
	binderShare,
	dose,
}: Dosing & { dose: number }): number => massKg / (1 + binderShare * dose);

/**
 * The part of the batch that each tone takes; the parts add up to 1.
 *
 * @throws InputError when every share is 0.
 */
export function batchShares(tones: readonly Tone[]): number[] {
	const total = sum(tones.map(({ share }) => share));
	if (total > 0) return tones.map(({ share }) => share / total);
	throw new InputError("share must be above 0 for at least one tone, got 0");
}

interface ToneWeight {
	undosedKg: number;
	/** Pigment included. */
	scaleKg: number;
	pigmentsKg: number[];
}

/**
 * What to weigh of mix and of each pigment, a tone each.
 *
 * @throws InputError when every share is 0.
 */
export function toneWeights({
	tones,
	massKg,
	binderShare,
}: Dosing & { tones: readonly Tone[] }): ToneWeight[] {
	const shares = batchShares(tones);
	return tones.map(({ doses }, i) => {
		const mix = { massKg: massKg * (shares[i] ?? 0), binderShare };
		return {
			undosedKg: mix.massKg,
			scaleKg: dosedKg({ ...mix, dose: sum(doses) }),
			pigmentsKg: doses.map((dose) => pigmentKg({ ...mix, dose })),
		};
	});
}

interface Change extends Dosing {
	doseNow: number;
	doseWanted: number;
}

function wantedAboveZero(doseWanted: number): void {
	if (doseWanted <= 0)
		throw new InputError("dose_wanted must be above 0%, got 0%");
}

/**
 * Pigment to add to a tone that is too light, kg: U × binder share × (wanted − now), U = mass / (1 + binder share × now).
 *
 * `massKg` is what the scale shows now, pigment included.
 *
 * @throws InputError when the wanted dose is 0 or below the dose now.
 */
export function pigmentToDeepenKg({
	massKg,
	binderShare,
	doseNow,
	doseWanted,
}: Change): number {
	wantedAboveZero(doseWanted);
	if (doseWanted < doseNow)
		throw new InputError(
			`dose_wanted must be ${percent(doseNow)} (dose_now) or more, got ${percent(doseWanted)}: pigment cannot be taken out, MIX_TO_LIGHTEN tells the mix to fold in`,
		);
	const mix = undosedKg({ massKg, binderShare, dose: doseNow });
	return pigmentKg({ massKg: mix, binderShare, dose: doseWanted - doseNow });
}

/**
 * Undosed mix to fold into a tone that is too dark, kg: U × (now / wanted − 1), U = mass / (1 + binder share × now).
 *
 * `massKg` is what the scale shows now, pigment included.
 *
 * @throws InputError when the wanted dose is 0 or above the dose now.
 */
export function mixToLightenKg({
	massKg,
	binderShare,
	doseNow,
	doseWanted,
}: Change): number {
	wantedAboveZero(doseWanted);
	if (doseWanted > doseNow)
		throw new InputError(
			`dose_wanted must be ${percent(doseNow)} (dose_now) or less, got ${percent(doseWanted)}: PIGMENT_TO_DEEPEN tells the pigment to add`,
		);
	const mix = undosedKg({ massKg, binderShare, dose: doseNow });
	return mix * (doseNow / doseWanted - 1);
}
