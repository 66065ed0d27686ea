/** What pigment the two ways of using the tones take: all of the mix toned, or a face of some depth. */
import { sameName } from "../../calc/names";
import { sum } from "../../calc/sum";
import { batchShares, type Tone } from "../../calc/tones";
import type { Basis } from "./basis";
import { all, from, fromBoth, is, type Known, missing } from "./known";

/** Pigment as it is bought. */
interface PigmentBought {
	/** Toned mix over all mix. */
	tonedShare: Known<number>;
	/** A pigment each. */
	pigmentsKg: Known<readonly number[]>;
	totalKg: Known<number>;
	cost: Known<number>;
}

interface LayUpAnswer {
	bucketFold: PigmentBought;
	layUp: PigmentBought;
	/** What the lay-up takes less. */
	saves: Omit<PigmentBought, "tonedShare">;
}

export function layUpAnswer(basis: Basis): LayUpAnswer {
	const { given, tones } = basis;
	const { typed, faceShare } = tones;
	const meanDoses = from(typed, (each) => {
		const shares = batchShares(each);
		return dosesOf(each).map((_, pigment) =>
			sum(each.map(({ doses }, i) => (shares[i] ?? 0) * (doses[pigment] ?? 0))),
		);
	});
	const backing = backingDoses(typed, String(given.job.backedWith ?? ""));
	const layUpDoses = from(
		all([meanDoses, backing, faceShare] as [
			typeof meanDoses,
			typeof backing,
			typeof faceShare,
		]),
		([face, back, share]) =>
			face.map((dose, i) => share * dose + (1 - share) * (back[i] ?? 0)),
	);
	const bucketFold = bought(basis, is(1), meanDoses);
	const layUp = bought(basis, faceShare, layUpDoses);
	return {
		bucketFold,
		layUp,
		saves: {
			pigmentsKg: fromBoth(
				bucketFold.pigmentsKg,
				layUp.pigmentsKg,
				(all, face) => all.map((kg, i) => kg - (face[i] ?? 0)),
			),
			totalKg: fromBoth(bucketFold.totalKg, layUp.totalKg, less),
			cost: fromBoth(bucketFold.cost, layUp.cost, less),
		},
	};
}

const less = (one: number, other: number): number => one - other;

const dosesOf = (tones: readonly Tone[]): readonly number[] =>
	tones[0]?.doses ?? [];

function backingDoses(
	typed: Known<readonly Tone[]>,
	name: string,
): Known<readonly number[]> {
	const backing = from(typed, (tones) =>
		tones.find((tone) => sameName(tone.name, name)),
	);
	return "is" in backing && !backing.is
		? missing("choose the tone that backs it")
		: from(backing, (tone) => tone?.doses ?? []);
}

/** Pigment as bought for mean doses of dry pigment. */
function bought(
	{ loads, mix, pigments }: Basis,
	tonedShare: Known<number>,
	doses: Known<readonly number[]>,
): PigmentBought {
	const binderKg = fromBoth(
		loads.batchKg,
		mix.binderShare,
		(batchKg, share) => batchKg * share,
	);
	const solids = all(pigments.map((pigment) => pigment.solids));
	const pigmentsKg = from(
		all([binderKg, doses, solids] as [
			typeof binderKg,
			typeof doses,
			typeof solids,
		]),
		([kg, each, pure]) => each.map((dose, i) => (kg * dose) / (pure[i] ?? 1)),
	);
	const costs =
		"is" in pigmentsKg
			? all(
					pigmentsKg.is.map((kg, i) =>
						kg > 0
							? from(
									pigments[i]?.pricePerGram ?? missing("a price"),
									(price) => kg * 1000 * price,
								)
							: is(0),
					),
				)
			: pigmentsKg;
	return {
		tonedShare,
		pigmentsKg,
		totalKg: from(pigmentsKg, sum),
		cost: from(costs, sum),
	};
}
