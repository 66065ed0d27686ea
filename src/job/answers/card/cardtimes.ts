/** How long the mix of a load still works, and when its last tone must be placed. */
import { workingTimeMin } from "../../../calc/cure";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { clockOf } from "../../reading/days";
import type { Basis } from "../basis";
import { type Given, setting } from "../given";
import {
	all,
	flat,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	type Said,
	saidOf,
} from "../known";
import type { CardStepsAnswer } from "./cardsteps";
import { pourField, pourOf } from "./loadpour";
import type { MixWaterAnswer } from "./mixwater";

export interface CardTimesAnswer {
	workingMinutes: Known<number>;
	/** Of which mix temperature the working time is. */
	workingAt: Said;
	/** Of mixing, the steps of the plan and placing, as far as they are still to come. */
	minutesLeft: Known<number>;
	/** A time like `9:40`. */
	placeBy: Known<string>;
	/** Whether the steps take no longer than the mix works. */
	timeCheck: Said;
	/** When the last tone was placed, in minutes after water in. */
	placedAfter: Known<number>;
	placedSay: Said;
	/** From water in to water in; the first load has none before it. */
	sinceLoadBefore?: Known<number>;
}

const A_DAY = 1440;

export function cardTimes(
	{ given }: Basis,
	pour: PourInput,
	{ mixC }: Pick<MixWaterAnswer, "mixC">,
	{ steps }: Pick<CardStepsAnswer, "steps">,
): CardTimesAnswer {
	const measured = pourField(given, pour, "mixTemperature");
	const ownC = "missing" in measured ? mixC : measured;
	const mix: Known<number> =
		"missing" in ownC ? missing("type the mix temperature") : ownC;
	const workingMinutes = workingTime(given, mix);
	const waterIn = pourField(given, pour, "waterInAt");
	const placedAfter = minutes(waterIn, pourField(given, pour, "lastPlacedAt"));
	const plan = from(steps, (all) => all.filter(({ number }) => number > 0));
	const takes = from(
		all([
			plan,
			setting(given, "mixing_minutes"),
			setting(given, "step_minutes"),
			setting(given, "placing_minutes"),
		] as [typeof plan, Known<number>, Known<number>, Known<number>]),
		([own, mixing, each, placing]): Takes => ({
			mixing,
			steps: own.length,
			dosing: own.length * each,
			placing,
		}),
	);
	return {
		workingMinutes,
		workingAt: saidOf(
			from(mix, () =>
				"missing" in measured
					? "at the temperature the mix should have"
					: "at the mix temperature measured",
			),
		),
		minutesLeft: fromBoth(plan, takes, (own, { mixing, dosing, placing }) => {
			const open = own.filter(({ weighed }) => weighed === null).length;
			return (
				(open === own.length ? mixing : 0) +
				(own.length > 0 ? (dosing * open) / own.length : 0) +
				("missing" in pourField(given, pour, "lastPlacedAt") ? placing : 0)
			);
		}),
		placeBy: fromBoth(waterIn, workingMinutes, (at, works) =>
			clockOf(at + works),
		),
		timeCheck: timeCheck(takes, workingMinutes),
		placedAfter,
		placedSay: saidOf(placedSay(placedAfter, workingMinutes)),
		...(pour.load > 1
			? {
					sinceLoadBefore: minutes(
						pourField(given, pourOf(given, pour.load - 1), "waterInAt"),
						waterIn,
					),
				}
			: {}),
	};
}

const workingTime = (given: Given, mix: Known<number>): Known<number> =>
	from(
		all([
			setting(given, "working_minutes"),
			setting(given, "working_temp"),
			mix,
		] as [Known<number>, Known<number>, Known<number>]),
		([trial, testedC, mixC]) =>
			workingTimeMin({ minutes: trial, testedC, mixC }),
	);

/** From one time of day to the next, past midnight too. */
const minutes = (begin: Known<number>, end: Known<number>): Known<number> =>
	fromBoth(begin, end, (from, to) => (((to - from) % A_DAY) + A_DAY) % A_DAY);

/** Minutes from water in to the last tone placed. */
interface Takes {
	mixing: number;
	steps: number;
	dosing: number;
	placing: number;
}

const timeCheck = (takes: Known<Takes>, workingMinutes: Known<number>): Said =>
	saidOf(
		flat(
			fromBoth(
				takes,
				workingMinutes,
				({ mixing, steps, dosing, placing }, works) => {
					const minutes = mixing + dosing + placing;
					return minutes <= works
						? is("fine")
						: look(
								`mixing ${plain(mixing)}, ${steps} steps ${plain(dosing)} and placing ${plain(placing)} take ${Math.round(minutes)} minutes, longer than the mix works (${Math.round(works)})`,
							);
				},
			),
		),
	);

function placedSay(
	placed: Known<number>,
	workingMinutes: Known<number>,
): Known<string> {
	const words = from(placed, (after) => `${after} minutes after water in`);
	return isKnown(words) &&
		isKnown(placed) &&
		isKnown(workingMinutes) &&
		placed.is > workingMinutes.is
		? look(words.is)
		: words;
}
