/** The sample batch of the same tones, with what each tone and each ingredient takes. */
import { sum } from "../../calc/sum";
import { batchShares, type Tone, toneWeights } from "../../calc/tones";
import {
	atLeastOnScale,
	COVERAGE,
	massForDoseKg,
	onScale,
} from "../../calc/weighing";
import { LOOK } from "../fields/tone";
import type { Basis } from "./basis";
import { bareMasses, plannedOf } from "./card/mixmasses";
import { setting } from "./given";
import {
	all,
	from,
	fromBoth,
	isKnown,
	type Known,
	look,
	missing,
	orNull,
	readField,
	type Said,
	saidOf,
} from "./known";

/** A dose of a sample may be off by this share, at k = 2. */
const DOSE_OFF = 1 / 20;

/** Masses as the scales show them. */
interface SampleTone {
	name: string;
	undosedKg: number;
	/** With its water, a pigment each. */
	pigmentsKg: readonly number[];
}

interface SampleAnswer {
	/** Of which the scales dose every tone well enough. */
	smallestKg: Known<number>;
	/** The size to make: the typed one, or the smallest. */
	batchKg: Known<number>;
	verdict: Said;
	tones: Known<readonly SampleTone[]>;
	/** An ingredient each, to the gram scale. */
	ingredientsKg: Known<readonly number[]>;
}

interface Scales {
	mixKg: number;
	gramKg: number;
	/** What the gram scale takes. */
	gramMostKg: number;
}

/** Of the gram scale, as long as it takes the mass. */
const divisionKg = (kg: number, { mixKg, gramKg, gramMostKg }: Scales) =>
	kg <= gramMostKg ? gramKg : mixKg;

export function sampleAnswer(basis: Basis): SampleAnswer {
	const { given, tones, mix } = basis;
	const scales = fromBoth(
		setting(given, "mix_division"),
		setting(given, "gram_division"),
		(mixKg, gramKg): Scales => ({
			mixKg,
			gramKg,
			gramMostKg: orNull(setting(given, "gram_most")) ?? 0,
		}),
	);
	const smallestKg = smallestOf(basis, scales);
	const typed = readField(LOOK, "sampleMass", given.job, given.units);
	const batchKg = "missing" in typed ? smallestKg : typed;
	const bare = fromBoth(mix.ingredients, batchKg, bareMasses);
	const offKg = from(
		all([bare, batchKg, tones.pigmentWater] as [
			typeof bare,
			Known<number>,
			Known<number>,
		]),
		([{ freeWaterKg }, kg, held]) => freeWaterKg + kg * held,
	);
	const plannedKg = plannedOf(bare, offKg);
	return {
		smallestKg,
		batchKg,
		verdict: verdictOf(typed, smallestKg),
		tones: from(
			all([tones.asWeighed, plannedKg, batchKg, mix.binderShare, scales] as [
				typeof tones.asWeighed,
				typeof plannedKg,
				Known<number>,
				Known<number>,
				typeof scales,
			]),
			([wet, masses, kg, binderShare, own]) => {
				const massKg = sum(masses);
				return tonesOnScale(
					wet,
					{ massKg, binderShare: (binderShare * kg) / massKg },
					own,
				);
			},
		),
		ingredientsKg: fromBoth(plannedKg, scales, (masses, own) =>
			masses.map((kg) => onScale(kg, divisionKg(kg, own))),
		),
	};
}

/** The mix of which the least dose is known well enough, counted up to the whole batch. */
function smallestOf(
	{ tones, mix }: Basis,
	scales: Known<Scales>,
): Known<number> {
	const needed = from(
		all([tones.asWeighed, mix.binderShare, scales] as [
			typeof tones.asWeighed,
			Known<number>,
			typeof scales,
		]),
		([wet, binderShare, own]) => {
			const shares = batchShares(wet);
			const masses = wet.flatMap(({ doses }, i) =>
				doses
					.filter((dose) => dose > 0 && (shares[i] ?? 0) > 0)
					.map(
						(dose) =>
							massForDoseKg({
								uncertainty: DOSE_OFF / COVERAGE,
								dose,
								binderShare,
								pigmentDivisionKg: own.gramKg,
								massDivisionKg: own.mixKg,
							}) / (shares[i] ?? 1),
					),
			);
			return masses.map((kg) => atLeastOnScale(kg, own.mixKg));
		},
	);
	return isKnown(needed) && needed.is.length === 0
		? missing("a dose of pigment")
		: from(needed, (masses) => Math.max(...masses));
}

function verdictOf(typed: Known<number>, smallest: Known<number>): Said {
	if ("missing" in typed) return saidOf(from(smallest, () => ""));
	return saidOf(
		isKnown(typed) && isKnown(smallest) && typed.is < smallest.is
			? look("too small: a dose may be off by more than 5% (k = 2)")
			: fromBoth(typed, smallest, () => ""),
	);
}

const tonesOnScale = (
	tones: readonly Tone[],
	mix: { massKg: number; binderShare: number },
	{ mixKg, gramKg }: Scales,
): SampleTone[] =>
	toneWeights({ tones, ...mix }).map(({ undosedKg, pigmentsKg }, i) => ({
		name: tones[i]?.name ?? "",
		undosedKg: onScale(undosedKg, mixKg),
		pigmentsKg: pigmentsKg.map((kg) => onScale(kg, gramKg)),
	}));
