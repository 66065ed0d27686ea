/** From the pour to delivery: the calendar, the strength, drying, sealing and the paste for voids. */
import { CURE_STEPS, type CureStep } from "../../../calc/curedays";
import type { Basis } from "../basis";
import { from, orNull } from "../known";
import { type CalendarAnswer, calendarAnswer } from "./calendardays";
import { type DryingAnswer, dryingAnswer } from "./drying";
import { type FinishingAnswer, finishingAnswer } from "./finishing";
import { type StrengthAnswer, strengthAnswer } from "./strengthlog";

export interface CureAnswer {
	calendar: CalendarAnswer;
	strength: StrengthAnswer;
	drying: DryingAnswer;
	finishing: FinishingAnswer;
}

export function cureAnswer(basis: Basis): CureAnswer {
	const calendar = calendarAnswer(basis.given);
	return {
		calendar,
		strength: strengthAnswer(basis.given, calendar.days),
		drying: dryingAnswer(basis.given),
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
