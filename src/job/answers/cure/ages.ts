/** How old a piece is when it is carried: at demolding and at delivery, by the log of temperatures where there is one. */
import { daysBetween } from "../../../calc/calendar";
import { equivalentDays } from "../../../calc/cure";
import { daysFromPour } from "../../../calc/curedays";
import type { Given } from "../given";
import { from, fromBoth, is, type Known } from "../known";
import { calendarAnswer, waitingOf } from "./calendardays";
import { logOf, Q_K, REFERENCE_C } from "./strengthlog";

export const WHENS = ["demold", "delivery"] as const;
export type When = (typeof WHENS)[number];

const STEP = { demold: "demold", delivery: "deliver" } as const;

/** Days at 20 °C that are worth the same; days without a temperature in the log count as at 20 °C. */
export function handlingAges(given: Given): Record<When, Known<number>> {
	const { days } = calendarAnswer(given);
	// Without a date it is as old as the waiting times make it at least.
	const steps =
		"missing" in days
			? from(waitingOf(given), (waiting) =>
					daysFromPour("2001-01-01", waiting, {
						lastWeekday: 7,
						closedDays: [],
					}),
				)
			: days;
	const typed = logOf(given);
	const log = "missing" in typed ? is([]) : typed;
	const ageAt = (when: When) =>
		fromBoth(steps, log, (each, rows) =>
			equivalentDays(
				rows,
				daysBetween(each.pour, each[STEP[when]]),
				REFERENCE_C,
				Q_K,
			),
		);
	return { demold: ageAt("demold"), delivery: ageAt("delivery") };
}
