/** The sample batch of the same tones, with what each tone and each ingredient takes. */
import { sum } from "../../calc/sum";
import { batchShares, type Tone, toneWeights } from "../../calc/tones";
import { atLeastOnScale, massForDoseKg, onScale } from "../../calc/weighing";
import { LOOK } from "../fields/tone";
import type { Basis } from "./basis";
import { setting } from "./given";
import {
	all,
	from,
	fromBoth,
	isKnown,
	type Known,
	look,
	missing,
	readField,
	type Said,
	saidOf,
} from "./known";
import type { Ingredient } from "./mix";

/** A dose of a sample may be off by this share, one standard uncertainty of the scales' divisions. */
const DOSE_OFF = 1 / 20;

/** Masses as the scales show them. */
export interface SampleTone {
	name: string;
	undosedKg: number;
	/** With its water, a pigment each. */
	pigmentsKg: readonly number[];
}

export interface SampleAnswer {
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
	massDivisionKg: number;
	pigmentDivisionKg: number;
}

export function sampleAnswer(basis: Basis): SampleAnswer {
	const { given, tones, mix } = basis;
	const scales = fromBoth(
		setting(given, "mix_division"),
		setting(given, "gram_division"),
		(massDivisionKg, pigmentDivisionKg): Scales => ({
			massDivisionKg,
			pigmentDivisionKg,
		}),
	);
	const smallestKg = smallestOf(basis, scales);
	const typed = readField(LOOK, "sampleMass", given.job, given.units);
	const batchKg = "missing" in typed ? smallestKg : typed;
	const water = tones.pigmentWater;
	return {
		smallestKg,
		batchKg,
		verdict: verdictOf(typed, smallestKg),
		tones: from(
			all([tones.asWeighed, batchKg, mix.binderShare, water, scales] as [
				typeof tones.asWeighed,
				Known<number>,
				Known<number>,
				Known<number>,
				typeof scales,
			]),
			([wet, kg, binderShare, held, divisions]) =>
				tonesOnScale(
					wet,
					{ massKg: kg * (1 - held), binderShare: binderShare / (1 - held) },
					divisions,
				),
		),
		ingredientsKg: from(
			all([mix.ingredients, batchKg, water, scales] as [
				typeof mix.ingredients,
				Known<number>,
				Known<number>,
				typeof scales,
			]),
			([rows, kg, held, { pigmentDivisionKg }]) =>
				partsOf(rows, held).map((part) =>
					onScale(part * kg, pigmentDivisionKg),
				),
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
		([wet, binderShare, divisions]) => {
			const shares = batchShares(wet);
			const masses = wet.flatMap(({ doses }, i) =>
				doses
					.filter((dose) => dose > 0 && (shares[i] ?? 0) > 0)
					.map(
						(dose) =>
							massForDoseKg({
								uncertainty: DOSE_OFF,
								dose,
								binderShare,
								...divisions,
							}) / (shares[i] ?? 1),
					),
			);
			return masses.map((kg) => atLeastOnScale(kg, divisions.massDivisionKg));
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
			? look("too small: a dose is off by more than 5%")
			: fromBoth(typed, smallest, () => ""),
	);
}

const tonesOnScale = (
	tones: readonly Tone[],
	mix: { massKg: number; binderShare: number },
	{ massDivisionKg, pigmentDivisionKg }: Scales,
): SampleTone[] =>
	toneWeights({ tones, ...mix }).map(({ undosedKg, pigmentsKg }, i) => ({
		name: tones[i]?.name ?? "",
		undosedKg: onScale(undosedKg, massDivisionKg),
		pigmentsKg: pigmentsKg.map((kg) => onScale(kg, pigmentDivisionKg)),
	}));

/** Each ingredient as a share of the batch; what is all water gives way to the water of the pigment. */
function partsOf(rows: readonly Ingredient[], held: number): number[] {
	const whole = sum(rows.map(({ parts }) => parts));
	const isWater = ({ waterShare }: Ingredient) => waterShare === 1;
	const water = sum(rows.filter(isWater).map(({ parts }) => parts));
	return rows.map(
		(row) =>
			row.parts / whole - (isWater(row) ? (row.parts / water) * held : 0),
	);
}
