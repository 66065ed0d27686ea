/** From the pour to delivery: the calendar, the strength, drying, sealing and the paste for voids. */
import { CURE_STEPS, type CureStep } from "../../../calc/curedays";
import type { Basis } from "../basis";
import { from, orNull, type Said, saidOf } from "../known";
import { type CalendarAnswer, calendarAnswer } from "./calendardays";
import { type DryingAnswer, dryingAnswer } from "./drying";
import { type FinishingAnswer, finishingAnswer } from "./finishing";
import { moldTimeOf, oldEnoughOf } from "./moldtime";
import { type StrengthAnswer, strengthAnswer } from "./strengthlog";

export interface CureAnswer {
	calendar: CalendarAnswer;
	/** Whether it is out of the mold before it shrinks onto it. */
	moldTime: Said;
	/** Whether it is as old as it must be to leave the mold, by the log. */
	oldEnough: Said;
	strength: StrengthAnswer;
	drying: DryingAnswer;
	finishing: FinishingAnswer;
}

export function cureAnswer(basis: Basis): CureAnswer {
	const { given } = basis;
	const calendar = calendarAnswer(given);
	const strength = strengthAnswer(given, calendar.days);
	return {
		calendar,
		moldTime: saidOf(moldTimeOf(basis, calendar.days)),
		oldEnough: saidOf(oldEnoughOf(given, strength.equivalentHours)),
		strength,
		drying: dryingAnswer(given),
		finishing: finishingAnswer(basis),
	};
}

/** The day of each step, null while it is not known. */
export const cureDays = ({
	calendar,
}: CureAnswer): Record<CureStep, string | null> =>
	Object.fromEntries(
		CURE_STEPS.map((step) => [
			step,
			orNull(from(calendar.days, (days) => days[step])),
		]),
	) as Record<CureStep, string | null>;
