/** What the studio has to do day by day, over all jobs that are not delivered. */
import { InputError } from "../../calc/errors";
import { sum } from "../../calc/sum";
import type { Typed } from "../fields/field";
import type { JobsRow } from "../fields/jobline";
import { dayOfSerial, isDay, serialDay } from "../reading/days";
import { isOrdered } from "./money/agreed";

interface WorkDay {
	day: string;
	pours: number;
	/** What is done with which job, such as `pour Kitchen`. */
	work: readonly string[];
	/** Of jobs that are ordered. */
	hours: number;
	/** Of jobs that nobody ordered yet. */
	ifOrdered: number;
	/** Jobs that are due. */
	due: readonly string[];
}

/** Work of a job by the field of its day, in the order in which a day's work is named. */
const WORK = ["pour", "demold", "fill", "polish", "seal", "deliver"] as const;

/** Days that a job takes before its pour. */
const BEFORE_POUR = 7;

/** Days that the Jobs tab has room for. */
export const MOST_DAYS = 400;

const dayOf = (typed: Typed | undefined): number | undefined =>
	typeof typed === "string" && isDay(typed) ? serialDay(typed) : undefined;

/** A text that was typed, and nothing in place of one that is wrong or not known. */
const textOf = (typed: Typed = ""): string =>
	/^(Look:|not known yet|#)/.test(String(typed)) ? "" : String(typed).trim();

/** What a job is called: its title, else its client, else its number. */
const nameOf = ({ title, client, job = "", stage }: JobsRow): string =>
	(textOf(title) || textOf(client) || `job ${job}`) +
	(isOrdered(stage) ? "" : " (not ordered)");

/** Days from the first of a job's work to its delivery, and hours on each, spread evenly. */
function bookedOf({ pour, deliver, hours, stage }: JobsRow) {
	const poured = dayOf(pour);
	if (poured === undefined || typeof hours !== "number") return undefined;
	const first = poured - BEFORE_POUR;
	const last = Math.max(poured, dayOf(deliver) ?? poured);
	return {
		first,
		last,
		hours: hours / (last - first + 1),
		ordered: isOrdered(stage),
	};
}

/**
 * A row a day with something to do, the first day first.
 *
 * @throws InputError for more days than there is room for.
 */
export function workDays(rows: readonly JobsRow[]): WorkDay[] {
	const live = rows.filter(({ stage }) => stage !== "delivered");
	const booked = live.flatMap((row) => bookedOf(row) ?? []);
	const days = new Set<number>();
	const add = (day: number) => {
		if (days.size >= MOST_DAYS && !days.has(day))
			throw new InputError(
				`the jobs that are not delivered take more than ${MOST_DAYS} days: look for a wrong year, and set the stage of those that are delivered`,
			);
		days.add(day);
	};
	for (const row of live)
		for (const key of [...WORK, "due"] as const) {
			const day = dayOf(row[key]);
			if (day !== undefined) add(day);
		}
	for (const { first, last } of booked)
		for (let day = first; day <= last; day++) add(day);
	return [...days]
		.sort((one, other) => one - other)
		.map((day) => {
			const on = (key: (typeof WORK)[number] | "due") =>
				live.filter((row) => dayOf(row[key]) === day).map(nameOf);
			const hoursOf = (isCounted: boolean) =>
				sum(
					booked
						.filter(({ first, last }) => first <= day && day <= last)
						.filter(({ ordered }) => ordered === isCounted)
						.map(({ hours }) => hours),
				);
			return {
				day: dayOfSerial(day),
				pours: on("pour").length,
				work: WORK.flatMap((work) => on(work).map((job) => `${work} ${job}`)),
				hours: hoursOf(true),
				ifOrdered: hoursOf(false),
				due: on("due"),
			};
		});
}
