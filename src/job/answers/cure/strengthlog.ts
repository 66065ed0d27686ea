/** The strength to expect at each day's age, and today's by the log of temperatures. */
import { daysBetween } from "../../../calc/calendar";
import {
	ageDays,
	equivalentAgeH,
	type Interval,
	strengthShare,
} from "../../../calc/cure";
import {
	CURE_STEPS,
	type CureDays,
	type CureStep,
} from "../../../calc/curedays";
import { sum } from "../../../calc/sum";
import { CURE } from "../../fields/cure";
import { CURE_LOG } from "../../fields/pour";
import { isBlank } from "../../reading/cells";
import type { Given } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readRow,
	type Said,
	saidOf,
} from "../known";
import { cementOf } from "../mix";
import { readStarted } from "../startvalues";

/** Shares of the strength at 28 days. */
export interface StrengthAnswer {
	/** At the age of each step after the pour. */
	atSteps: Readonly<Record<Exclude<CureStep, "pour">, Known<number>>>;
	wanted: Known<number>;
	/** Days at 20 °C until the strength wanted. */
	wantedAfterDays: Known<number>;
	/** Hours since the pour, by the log. */
	loggedHours: Known<number>;
	/** Hours at 20 °C that are worth the same. */
	equivalentHours: Known<number>;
	byLog: Known<number>;
	/** Whether it is warm and old enough. */
	warm: Said;
}

/** ASTM C1074: 20 °C, and 5000 K for Type I cement. */
export const REFERENCE_C = 20;
export const Q_K = 5000;
/** Common practice, no source: colder mix hardens too slowly. */
const COLD_C = 5;
/** EN 1992-1-1, 3.1.2(6): the formula is not for the first three days. */
const YOUNG_H = 72;

export function strengthAnswer(
	given: Given,
	days: Known<CureDays>,
): StrengthAnswer {
	const cement = cementOf(given);
	const wanted = readStarted(CURE, "strengthWanted", given.job, given.units);
	const log = logOf(given);
	const equivalentHours = from(log, (rows) =>
		equivalentAgeH(rows, REFERENCE_C, Q_K),
	);
	const atStep = (step: CureStep) =>
		fromBoth(days, cement, (each, kind) =>
			strengthShare(daysBetween(each.pour, each[step]), kind),
		);
	return {
		atSteps: Object.fromEntries(
			CURE_STEPS.filter((step) => step !== "pour").map((step) => [
				step,
				atStep(step),
			]),
		) as StrengthAnswer["atSteps"],
		wanted,
		wantedAfterDays: fromBoth(wanted, cement, ageDays),
		loggedHours: from(log, (rows) => sum(rows.map(({ hours }) => hours))),
		equivalentHours,
		byLog: fromBoth(equivalentHours, cement, (hours, kind) =>
			strengthShare(hours / 24, kind),
		),
		warm: saidOf(warmOf(log, equivalentHours)),
	};
}

export function logOf({ job, units }: Given): Known<readonly Interval[]> {
	const rows = (job.cureLog ?? []).filter(
		({ hours, temperature }) => !isBlank(hours) || !isBlank(temperature),
	);
	if (rows.length === 0)
		return missing("type hours and temperatures in the log");
	const half = rows.findIndex(
		({ hours, temperature }) => isBlank(hours) || isBlank(temperature),
	);
	if (half >= 0)
		return look(
			`row ${half + 1} of the log is not whole: type its hours and its temperature`,
		);
	return all(
		rows.map((row) =>
			from(readRow(CURE_LOG, row, units), ({ hours = 0, temperature = 0 }) => ({
				hours,
				temperatureC: temperature,
			})),
		),
	);
}

function warmOf(
	log: Known<readonly Interval[]>,
	equivalentHours: Known<number>,
): Known<string> {
	if (!isKnown(log)) return log;
	if (log.is.some(({ temperatureC }) => temperatureC < COLD_C))
		return look(
			"colder than 5 °C (41 °F): keep it warm; what freezes young stays weak",
		);
	if (isKnown(equivalentHours) && equivalentHours.is < YOUNG_H)
		return missing(
			"younger than 3 days: test the piece, this formula is for later",
		);
	return isKnown(equivalentHours) ? is("fine") : equivalentHours;
}
