/** When it may be sealed, how much sealer that takes, and the paste for its voids with its pigment. */
import { coatingM3, voidFillM3 } from "../../../calc/finish";
import { sum } from "../../../calc/sum";
import { pigmentKg } from "../../../calc/tones";
import { CURE } from "../../fields/cure";
import { type Given, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readField,
	type Said,
	saidOf,
} from "../known";
import { overPieces } from "../loads";
import type { MixAnswers } from "../mix";
import type { PieceAnswer } from "../pieces";
import type { PigmentAnswer } from "../pigments";
import { readStarted } from "../startvalues";
import { meanDoses, type TonesAnswer } from "../tones";

/** Amounts for all pieces, in SI. */
export interface FinishingAnswer {
	/** By the moisture reading. */
	dryEnough: Said;
	finishM2: Known<number>;
	sealerM3: Known<number>;
	pasteM3: Known<number>;
	pasteKg: Known<number>;
	/** Of each pigment of the job, in their order. */
	pastePigments: readonly PastePigment[];
}

export interface PastePigment {
	name: string;
	/** Mean dose of binder of all tones. */
	dose: Known<number>;
	dryKg: Known<number>;
	boughtKg: Known<number>;
}

interface FinishingInputs {
	given: Given;
	mix: MixAnswers;
	pieces: readonly PieceAnswer[];
	pigments: readonly PigmentAnswer[];
	tones: TonesAnswer;
}

export function finishingAnswer(inputs: FinishingInputs): FinishingAnswer {
	const { given, mix, pieces } = inputs;
	const finishM2 = from(
		overPieces(given, pieces, ({ sizes, quantity }) =>
			fromBoth(sizes, quantity, (size, count) => size.finishM2 * count),
		),
		sum,
	);
	const pasteM3 = pasteOf(given, finishM2);
	const pasteKg = fromBoth(
		pasteM3,
		mix.densityKgPerM3,
		(volume, density) => volume * density,
	);
	return {
		dryEnough: saidOf(dryEnoughOf(given)),
		finishM2,
		sealerM3: sealerOf(given, finishM2),
		pasteM3,
		pasteKg,
		pastePigments: pastePigmentsOf(inputs, pasteKg),
	};
}

function dryEnoughOf({ job, units }: Given): Known<string> {
	const limit = readField(CURE, "moistureLimit", job, units);
	const reading = readField(CURE, "moistureReading", job, units);
	if ("missing" in limit && "missing" in reading)
		return missing("type limit and reading");
	if ("missing" in limit) return missing("type the limit");
	if ("missing" in reading) return missing("type the reading");
	const both = all<[number, number]>([limit, reading]);
	if (!isKnown(both)) return both;
	const [allowed, read] = both.is;
	return read > allowed
		? look("too damp to seal: air on both faces, read again")
		: is("by this reading, yes");
}

const sealerOf = (given: Given, finishM2: Known<number>): Known<number> =>
	from(
		all<[number, number, number, number]>([
			finishM2,
			setting(given, "sealer_coverage"),
			setting(given, "sealer_coats"),
			readStarted(CURE, "sealerWaste", given.job, given.units),
		]),
		([areaM2, coverageM2PerM3, coats, waste]) =>
			coatingM3({ areaM2, coverageM2PerM3, coats, waste }),
	);

const pasteOf = (given: Given, finishM2: Known<number>): Known<number> =>
	from(
		all<[number, number, number, number, number]>([
			finishM2,
			setting(given, "void_share"),
			setting(given, "void_depth"),
			setting(given, "skim"),
			readStarted(CURE, "pasteWaste", given.job, given.units),
		]),
		([areaM2, voidShare, depthM, skimM, waste]) =>
			voidFillM3({ areaM2, voidShare, depthM, skimM, waste }),
	);

function pastePigmentsOf(
	{ mix, pigments, tones }: FinishingInputs,
	pasteKg: Known<number>,
): PastePigment[] {
	const doses = seenDoses(tones);
	return pigments.map(({ name, solids }, i) => {
		const dose = from(doses, (each) => each[i] ?? 0);
		const dryKg = from(
			all<[number, number, number]>([pasteKg, mix.binderShare, dose]),
			([massKg, binderShare, share]) =>
				pigmentKg({ massKg, binderShare, dose: share }),
		);
		return {
			name,
			dose,
			dryKg,
			boughtKg: fromBoth(dryKg, solids, (dry, share) => dry / share),
		};
	});
}

/** Tones without any share show no color together. */
function seenDoses(tones: TonesAnswer): Known<readonly number[]> {
	const { typed } = tones;
	return isKnown(typed) && sum(typed.is.map(({ share }) => share)) === 0
		? missing("give each tone its share")
		: meanDoses(tones);
}
