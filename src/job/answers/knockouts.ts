/** Formers in the mold, and what keeps each from floating in fluid mix. */
import { upliftKg } from "../../calc/handling";
import { slabVolumeM3 } from "../../calc/takeoff";
import type { Read } from "../fields/field";
import { KNOCKOUT } from "../fields/openings";
import type { Given } from "./given";
import {
	fromBoth,
	isKnown,
	type Known,
	missing,
	readRow,
	type Said,
	saying,
} from "./known";
import type { MixAnswers } from "./mix";

/** In SI. */
export interface KnockoutAnswer {
	volumeM3: Known<number>;
	/** Mass that must hold each down. */
	upliftKg: Known<number>;
	/** The same for all of them in one piece. */
	upliftAllKg: Known<number>;
	verdict: Said;
}

export const knockoutAnswers = (
	{ job, units }: Given,
	mix: MixAnswers,
): KnockoutAnswer[] =>
	(job.knockouts ?? []).map((row) => {
		const read = readRow(KNOCKOUT, row, units);
		const volumeM3 = volumeOf(read);
		const uplift = fromBoth(
			fromBoth(read, volumeM3, ({ mass = 0 }, volume) => ({ mass, volume })),
			mix.densityKgPerM3,
			({ mass, volume }, densityKgPerM3) =>
				upliftKg({ volumeM3: volume, densityKgPerM3, formerKg: mass }),
		);
		return {
			volumeM3,
			upliftKg: uplift,
			upliftAllKg: fromBoth(
				uplift,
				read,
				(each, { count = 1 }) => each * count,
			),
			verdict: verdictOf(
				fromBoth(uplift, read, (each, { held = 0 }) => held >= each),
			),
		};
	});

function volumeOf(read: Known<Read<typeof KNOCKOUT>>): Known<number> {
	if (!isKnown(read)) return read;
	const { volume, a, b, depth } = read.is;
	if (volume !== undefined) return { is: volume };
	if (a === undefined || b === undefined || depth === undefined)
		return missing("its volume, or A, B and depth");
	return {
		is: slabVolumeM3({ lengthM: a, widthM: b, thicknessM: depth }),
	};
}

function verdictOf(held: Known<boolean>): Said {
	if (!isKnown(held))
		return {
			state: "look" in held ? "look" : "unknown",
			say: saying(held),
		};
	return held.is
		? { state: "fine", say: "stays down" }
		: { state: "look", say: "Look: it would float" };
}
