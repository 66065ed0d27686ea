/** The days of the job from the pour to delivery, and whether it is delivered in time. */
import { daysBetween, type Workweek } from "../../../calc/calendar";
import {
	type CureDays,
	daysFromPour,
	daysUntilDue,
	type Waiting,
} from "../../../calc/curedays";
import { CURE } from "../../fields/cure";
import { JOB } from "../../fields/job";
import { isBlank } from "../../reading/cells";
import { dayIn } from "../../reading/days";
import { type Given, setting } from "../given";
import {
	all,
	attempt,
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
import { readStarted } from "../startvalues";

export interface CalendarAnswer {
	startsFrom: Known<"pour date" | "due date">;
	days: Known<CureDays>;
	/** The last day on which each step may be; not known without a due date. */
	atTheLatest: Known<CureDays>;
	inTime: Said;
}

export function calendarAnswer(given: Given): CalendarAnswer {
	const { job, units } = given;
	const startsFrom = readStarted(CURE, "startsFrom", job, units);
	const pourDate = dateOf(given, "pourDate");
	const dueDate = dateOf(given, "dueDate");
	const rules = all<[Waiting, Workweek]>([waitingOf(given), workweekOf(given)]);
	const atTheLatest = from(
		all<[string, [Waiting, Workweek]]>([dueDate, rules]),
		([due, [waiting, week]]) => daysUntilDue(due, waiting, week),
	);
	const begin =
		isKnown(startsFrom) && startsFrom.is === "due date"
			? from(atTheLatest, ({ pour }) => pour)
			: isKnown(startsFrom)
				? pourDate
				: startsFrom;
	const days = from(
		all<[string, [Waiting, Workweek]]>([begin, rules]),
		([pour, [waiting, week]]) => daysFromPour(pour, waiting, week),
	);
	const timing = { startsFrom, pourDate, dueDate, days };
	return { startsFrom, days, atTheLatest, inTime: saidOf(inTimeOf(timing)) };
}

const dateOf = (
	{ job, units }: Given,
	key: "pourDate" | "dueDate",
): Known<string> => {
	const read = readField(JOB, key, job, units);
	return "missing" in read
		? missing(`type the ${read.missing} on the Job tab`)
		: read;
};

const LAST_WEEKDAY = {
	"Saturday and Sunday": 5,
	Sunday: 6,
	none: 7,
} as const;

function workweekOf(given: Given): Known<Workweek> {
	const closed = attempt(() =>
		(given.studio.closedDays ?? [])
			.filter((typed) => !isBlank(typed))
			.map((typed) => dayIn("a closed day", typed)),
	);
	return fromBoth(setting(given, "weekend"), closed, (off, closedDays) => ({
		lastWeekday: LAST_WEEKDAY[off],
		closedDays,
	}));
}

export const waitingOf = (given: Given): Known<Waiting> =>
	from(
		all<[number, number, number, number, number, number, number]>([
			setting(given, "demold_hours"),
			setting(given, "fill_days"),
			setting(given, "polish_days"),
			setting(given, "seal_days"),
			setting(given, "sealer_coats"),
			setting(given, "recoat_hours"),
			setting(given, "deliver_days"),
		]),
		([
			demoldHours,
			fillDays,
			polishDays,
			sealDays,
			coats,
			recoatHours,
			deliverDays,
		]) => ({
			demoldHours,
			fillDays,
			polishDays,
			sealDays,
			coats,
			recoatHours,
			deliverDays,
		}),
	);

interface Timing {
	startsFrom: CalendarAnswer["startsFrom"];
	pourDate: Known<string>;
	dueDate: Known<string>;
	days: Known<CureDays>;
}

/** `fine` once delivery is known to be in time. */
function inTimeOf({
	startsFrom,
	pourDate,
	dueDate,
	days,
}: Timing): Known<string> {
	if (!isKnown(startsFrom)) return startsFrom;
	if ("look" in pourDate) return pourDate;
	if (!isKnown(days)) return days;
	const { pour, deliver } = days.is;
	const isBackwards = startsFrom.is === "due date";
	if (!isBackwards && isKnown(pourDate) && pour !== pourDate.is)
		return look(
			"the pour date is a day off: the calendar begins on the next day of work",
		);
	if (!isKnown(dueDate)) return dueDate;
	const late = daysBetween(dueDate.is, deliver);
	if (late > 0)
		return look(`delivery would be ${dayCount(late)} after the due date`);
	const before = isKnown(pourDate) ? daysBetween(pour, pourDate.is) : 0;
	return isBackwards && before > 0
		? look(
				`to be in time the pour is ${dayCount(before)} before the Job's pour date`,
			)
		: is("fine");
}

const dayCount = (days: number): string =>
	days === 1 ? "1 day" : `${days} days`;
