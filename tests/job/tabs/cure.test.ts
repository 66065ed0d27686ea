import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobIn } from "../../../src/job/cells/jobcells";
import { CURE } from "../../../src/job/fields/cure";
import { CURE_LOG } from "../../../src/job/fields/pour";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import { dayOfSerial } from "../../../src/job/reading/days";
import { CURE_CALENDAR, CURE_FACTS } from "../../../src/job/tabs/cure";
import { tabInput } from "../../../src/job/tabs/tab";
import { cure } from "../../../templates/cure/curetab";
import { starterStudio } from "../../../templates/starterstudio";
import { expectSame, traceable } from "./traced";
import {
	answerOf,
	called,
	demoJob,
	gridOf,
	jobRegions,
	pageFor,
} from "./typedcells";
import { rowsOf, some } from "./typedvalues";

const UNITS = ["metric", "us"] as const;

/** What a new job begins with; the values are the ones that its help and the workbook of before name. */
const STARTS = {
	startsFrom: "pour date",
	strengthWanted: 0.7,
	bleeds: "no",
	sealerWaste: 0.1,
	pasteWaste: 0.3,
};

const readBack = (job: JobFile): JobFile => {
	const studio = starterStudio(job.units);
	const page = pageFor(cure, job, studio);
	return jobIn({ cure: gridOf(page, "cure") }, studio, job.units);
};

test("what is typed reads back as it was written, with what a new job begins with where nothing was typed", () => {
	fc.assert(
		fc.property(
			fc.constantFrom(...UNITS),
			some(CURE),
			fc.option(rowsOf(CURE_LOG, MOST.cureLog), { nil: undefined }),
			(units, row, cureLog) => {
				const job = {
					units,
					pieces: [],
					tones: [],
					...row,
					...(cureLog && { cureLog }),
				};
				expect(readBack(job)).toEqual({ ...STARTS, ...job });
			},
		),
	);
});

/** The demo on a day with wind, three days after the pour. */
const cast = (job: JobFile): JobFile => ({
	...job,
	strengthWanted: 0.6,
	...(job.units === "us"
		? { dryingAir: 80, dryingMix: 84, dryingWind: 10 }
		: { dryingAir: 27, dryingMix: 29, dryingWind: 16 }),
	dryingHumidity: 0.4,
	moistureLimit: 4,
	moistureReading: 3,
	sealerWaste: 0.15,
	pasteWaste: 0.25,
	cureLog:
		job.units === "us"
			? [
					{ hours: 24, temperature: 75 },
					{ hours: 60, temperature: 66 },
				]
			: [
					{ hours: 24, temperature: 24 },
					{ hours: 60, temperature: 19 },
				],
});

describe.each(UNITS)("answers in %s", (units) => {
	const studio = starterStudio(units);
	const job = cast(demoJob(units));
	const regions = jobRegions(job);
	const { settings } = studio;
	const { mix, pigments } = tabInput(regions);
	const values = answerOf(CURE_FACTS, regions).map(([value]) => value);
	const placeOf = (label: string) =>
		CURE_FACTS.shown.findIndex((fact) => fact.label === label);
	const fact = (label: string) => values[placeOf(label)];

	test("every number with a function's name is what that function gives of the shown cells", () => {
		const log = job.cureLog ?? [];
		const binder = mix.binderShare;
		if (!("is" in binder)) throw new Error("no binder");
		const own: Record<string, () => unknown> = {
			"Days at 20 °C (68 °F) to that strength: AGE_FOR_STRENGTH": () =>
				called("AGE_FOR_STRENGTH", job.strengthWanted, settings.cement),
			"By the log, share of 28 days: STRENGTH_AT_AGE": () =>
				called(
					"STRENGTH_AT_AGE",
					Number(fact("Hours at 20 °C (68 °F) worth the same")) / 24,
					settings.cement,
				),
			"Hours at 20 °C (68 °F) worth the same: EQUIVALENT_AGE": () =>
				called(
					"EQUIVALENT_AGE",
					log.map(({ hours }) => [hours]),
					log.map(({ temperature }) => [temperature]),
					"",
					"",
					units,
				),
			"Evaporation, {evaporation}: EVAPORATION_RATE": () =>
				called(
					"EVAPORATION_RATE",
					job.dryingAir,
					job.dryingHumidity,
					job.dryingMix,
					job.dryingWind,
					units,
				),
			"Sealer for all coats, {coating}: COATING_AMOUNT": () =>
				called(
					"COATING_AMOUNT",
					fact("To seal, {area}"),
					settings.sealer_coverage,
					settings.sealer_coats,
					job.sealerWaste,
					units,
				),
			"Paste, {volume}: VOID_FILL": () =>
				called(
					"VOID_FILL",
					fact("To seal, {area}"),
					settings.void_share,
					settings.void_depth,
					settings.skim,
					job.pasteWaste,
					units,
				),
			"Dry, {pigment}: PIGMENT_GRAMS": () =>
				called(
					"PIGMENT_GRAMS",
					fact("Paste, {mass}"),
					binder.is,
					fact("Mean dose of binder"),
					units,
				),
		};
		expect(Object.keys(own).sort()).toEqual(traceable(CURE_FACTS).sort());
		for (const [name, work] of Object.entries(own))
			expectSame(fact(name.slice(0, name.lastIndexOf(":"))), work());
	});

	test("the strength of each day is that of its age", () => {
		const rows = answerOf(CURE_CALENDAR, regions).slice(1);
		const pour = Number(rows[0]?.[1]);
		expect(dayOfSerial(pour)).toBe(job.pourDate);
		expect(rows).toHaveLength(7);
		for (const [, day, , , strength] of rows.slice(1))
			expectSame(
				strength,
				called("STRENGTH_AT_AGE", Number(day) - pour, settings.cement),
			);
	});

	test("the weekday is that of the day", () => {
		for (const [, day, weekday] of answerOf(CURE_CALENDAR, regions).slice(1))
			expect(weekday).toBe(
				new Date(`${dayOfSerial(Number(day))}T00:00:00Z`).toLocaleDateString(
					"en-US",
					{ weekday: "short", timeZone: "UTC" },
				),
			);
	});

	test("a pigment of the job has its four facts, and nothing stands where there is none", () => {
		const first = placeOf("Pigment");
		const names = values.filter(
			(_, row) => row >= first && (row - first) % 4 === 0,
		);
		expect(names.filter(Boolean)).toEqual(pigments.map(({ name }) => name));
		expect(values).toHaveLength(CURE_FACTS.shown.length);
	});

	test("what is missing is asked for", () => {
		const { dryingAir, cureLog, ...less } = job;
		const missing = answerOf(CURE_FACTS, jobRegions(less)).map(
			([value]) => value,
		);
		expect(missing[placeOf("Drying")]).toBe(
			"not known yet: type today's air temperature",
		);
		expect(missing[placeOf("Warm and old enough")]).toMatch(/^not known yet: /);
	});
});
