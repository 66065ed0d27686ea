/** The day of each step from the pour to delivery, and the last day on which it may be. */
import {
	dayAfter,
	daysBetween,
	type Workweek,
	workdayFrom,
	workdayUntil,
} from "./calendar";

export const CURE_STEPS = [
	"pour",
	"demold",
	"fill",
	"polish",
	"seal",
	"lastCoat",
	"deliver",
] as const;

export type CureStep = (typeof CURE_STEPS)[number];

export type CureDays = Readonly<Record<CureStep, string>>;

/** The least time between the steps. */
export interface Waiting {
	demoldHours: number;
	/** After the pour, like the next two. */
	fillDays: number;
	polishDays: number;
	sealDays: number;
	coats: number;
	recoatHours: number;
	/** After the last coat. */
	deliverDays: number;
}

/** Coats that take this long together are put on in one day. */
const COATING_HOURS = 8;

const demoldDays = ({ demoldHours }: Waiting): number =>
	Math.ceil(demoldHours / 24);

/** Days from the first coat to the last. */
export function coatingDays({ coats, recoatHours }: Waiting): number {
	const hours = (coats - 1) * recoatHours;
	return hours <= COATING_HOURS ? 0 : Math.ceil(hours / 24);
}

const latest = (days: readonly string[]): string =>
	days.reduce((last, day) => (daysBetween(last, day) > 0 ? day : last));

const earliest = (days: readonly string[]): string =>
	days.reduce((first, day) => (daysBetween(first, day) < 0 ? day : first));

/**
 * Each step on the first workday on which it can be, from the pour on.
 *
 * Voids are filled once the piece is out of the mold, it is polished the day after at the earliest, and sealed the day
 * after that.
 *
 * @throws InputError when there is no workday within 60 days.
 */
export function daysFromPour(
	pourDay: string,
	waiting: Waiting,
	week: Workweek,
): CureDays {
	const on = (...notBefore: string[]) => workdayFrom(latest(notBefore), week);
	const pour = on(pourDay);
	const demold = on(dayAfter(pour, demoldDays(waiting)));
	const fill = on(demold, dayAfter(pour, waiting.fillDays));
	const polish = on(dayAfter(fill, 1), dayAfter(pour, waiting.polishDays));
	const seal = on(dayAfter(polish, 1), dayAfter(pour, waiting.sealDays));
	const lastCoat = on(dayAfter(seal, coatingDays(waiting)));
	const deliver = on(dayAfter(lastCoat, waiting.deliverDays));
	return { pour, demold, fill, polish, seal, lastCoat, deliver };
}

/**
 * Each step on the last workday on which it may be, back from the day of delivery.
 *
 * @throws InputError when there is no workday within 60 days.
 */
export function daysUntilDue(
	dueDay: string,
	waiting: Waiting,
	week: Workweek,
): CureDays {
	const on = (...notAfter: string[]) => workdayUntil(earliest(notAfter), week);
	const deliver = on(dueDay);
	const lastCoat = on(dayAfter(deliver, -waiting.deliverDays));
	const seal = on(dayAfter(lastCoat, -coatingDays(waiting)));
	const polish = on(dayAfter(seal, -1));
	const fill = on(dayAfter(polish, -1));
	const demold = on(fill);
	const pour = on(
		dayAfter(demold, -demoldDays(waiting)),
		dayAfter(fill, -waiting.fillDays),
		dayAfter(polish, -waiting.polishDays),
		dayAfter(seal, -waiting.sealDays),
	);
	return { pour, demold, fill, polish, seal, lastCoat, deliver };
}
