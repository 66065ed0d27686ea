/** How long the mix of a load still works, and when its last tone must be placed. */
import { workingTimeMin } from "../../../calc/cure";
import type { PourInput } from "../../jobfile";
import { clockOf } from "../../reading/days";
import type { Basis } from "../basis";
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
	/** Of the steps of the plan that are not weighed yet. */
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
	const stepMinutes = setting(given, "step_minutes");
	const plan = from(steps, (all) => all.filter(({ number }) => number > 0));
	return {
		workingMinutes,
		workingAt: saidOf(
			from(mix, () =>
				"missing" in measured
					? "at the temperature the mix should have"
					: "at the mix temperature measured",
			),
		),
		minutesLeft: fromBoth(
			plan,
			stepMinutes,
			(all, each) =>
				all.filter(({ weighed }) => weighed === null).length * each,
		),
		placeBy: fromBoth(waterIn, workingMinutes, (at, works) =>
			clockOf(at + works),
		),
		timeCheck: timeCheck(plan, stepMinutes, workingMinutes),
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

function timeCheck(
	plan: Known<readonly unknown[]>,
	stepMinutes: Known<number>,
	workingMinutes: Known<number>,
): Said {
	const takes = fromBoth(plan, stepMinutes, (all, each) => all.length * each);
	const enough = fromBoth(
		takes,
		workingMinutes,
		(take, works) => take <= works,
	);
	if (!isKnown(enough) || !isKnown(takes) || !isKnown(plan))
		return saidOf(from(enough, () => ""));
	return saidOf(
		enough.is
			? is("fine")
			: look(
					`${plan.is.length} steps take ${Math.round(takes.is)} minutes, longer than the mix works`,
				),
	);
}

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
