/** The checks and the line of the Job tab, the days of the Jobs tab, and what the Pour log finds. */
import { describe, expect, test } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import { MOST_FOUND } from "../../../src/job/answers/wordsearch";
import { JOBS_ROW } from "../../../src/job/fields/jobline";
import { LOGGED } from "../../../src/job/fields/log";
import { SWATCH } from "../../../src/job/fields/swatch";
import type { JobFile } from "../../../src/job/jobfile";
import { serialDay } from "../../../src/job/reading/days";
import type { StudioFile } from "../../../src/job/studiofile";
import { JOBS_WORK } from "../../../src/job/tabs/jobswork";
import {
	COLORS_FOUND,
	POURS_COUNT,
	POURS_FOUND,
} from "../../../src/job/tabs/poursfound";
import { type TabAnswer, tabCells } from "../../../src/job/tabs/tab";
import { JOB_CHECKS, JOB_LINE } from "../../../src/job/tabs/wholejob";
import { checkBlocks } from "../../../templates/job/jobchecks";
import { starterStudio } from "../../../templates/starterstudio";
import { answerOf, demoJob, jobRegions, studioGrids } from "./typedcells";

const UNITS = ["metric", "us"] as const;

const settings = studioGrids(starterStudio("metric"), "metric").settings;

const labels = (fields: Readonly<Record<string, { label: string }>>) =>
	Object.values(fields).map(({ label }) =>
		label.replace("{length}", "mm").replace("{temperature}", "°C"),
	);

/** The rows of an answer worked out from the files. */
const rowsOf = (answer: TabAnswer, studio: StudioFile, job: JobFile) =>
	tabCells(answer, {
		...basisOf(studio, job),
		regions: {},
		units: job.units,
	}).slice(1);

describe.each(UNITS)("the checks, %s", (units) => {
	const job = demoJob(units);
	const rows = rowsOf(JOB_CHECKS, starterStudio(units), job);

	test("fit in their place", () => {
		const [room] =
			checkBlocks.find(({ slot }) => slot === "checks")?.size ?? [];
		expect(rows).toHaveLength(room ?? 0);
	});

	test("of tones, and of loads, are not known while there are none", () => {
		const unknownOf = (lacking: JobFile) =>
			rowsOf(JOB_CHECKS, starterStudio(units), lacking)
				.filter(([, say]) => String(say).startsWith("not known yet: "))
				.map(([what]) => what);
		expect(unknownOf({ ...job, tones: [] })).toEqual(
			expect.arrayContaining([
				"Pigment limit of every tone",
				"Every tone is enough to blend",
				"Every dose can be weighed to 5%",
				"Every pigment is on the Pigments tab",
				"Swatches match this mix and finish",
				"Neighboring tones can be told apart",
				"Tone shares add up to 100%",
			]),
		);
		expect(unknownOf({ ...job, pieces: [], cutouts: [] })).toEqual(
			expect.arrayContaining([
				"Every load is enough to blend",
				"Every tone is enough to blend",
				"Every dose can be weighed to 5%",
			]),
		);
	});

	test("say what is wrong first, then what is not known, then what is fine", () => {
		const rank = (say: unknown) =>
			String(say).startsWith("Look: ")
				? 0
				: String(say).startsWith("not known yet: ")
					? 1
					: say === "fine"
						? 2
						: Number.NaN;
		const ranks = rows.map(([, say]) => rank(say));
		expect(ranks).toEqual([...ranks].sort());
		const none = rowsOf(JOB_CHECKS, starterStudio(units), {
			...job,
			pieces: [],
		});
		expect(
			none.find(([what]) => what === "Everything calculates")?.[1],
		).not.toBe("fine");
	});
});

test.each(UNITS)(
	"checks and line follow from what is typed on the tabs, %s",
	(units) => {
		const job = {
			...demoJob(units),
			stage: "ordered",
			dueDate: "2026-06-30",
			payments: [{ for: "deposit", amount: 500, on: "2026-05-01" }],
			dryingAir: 20,
		};
		const studio = starterStudio(units);
		const regions = jobRegions(job);
		for (const answer of [JOB_CHECKS, JOB_LINE])
			expect(answerOf(answer, regions).slice(1)).toEqual(
				rowsOf(answer, studio, job),
			);
	},
);

test.each(UNITS)(
	"the line has a cell for each heading of the Jobs tab, %s",
	(units) => {
		const job = demoJob(units);
		const [line = [], ...more] = rowsOf(JOB_LINE, starterStudio(units), job);
		expect(more).toEqual([]);
		expect(["job", ...Object.keys(line)]).toHaveLength(
			Object.keys(JOBS_ROW).length,
		);
		expect(line.slice(0, 3)).toEqual([job.client, job.title, "priced"]);
		expect(line[3]).toBe(serialDay(String(job.pourDate)));
	},
);

test("the days of work are read from the rows of the Jobs tab", () => {
	const cells = (row: Record<string, unknown>) =>
		Object.keys(JOBS_ROW).map((key) => row[key] ?? "");
	const jobs = [
		labels(JOBS_ROW),
		cells({}),
		cells({
			job: "14",
			title: "Kitchen",
			stage: "ordered",
			pour: serialDay("2026-05-11"),
			hours: 16,
			due: "not known yet: due date",
		}),
	];
	const rows = answerOf(JOBS_WORK, { settings, jobs });
	// From a week before the pour to the pour: 8 days of 2 hours.
	expect(rows).toEqual([
		["Day", "Pours", "Work", "Hours", "If ordered, hours", "Due"],
		...[4, 5, 6, 7, 8, 9, 10].map((day) => [
			serialDay(`2026-05-${String(day).padStart(2, "0")}`),
			0,
			"",
			2,
			0,
			"",
		]),
		[serialDay("2026-05-11"), 1, "pour Kitchen", 2, 0, ""],
	]);
});

describe("what the Pour log finds", () => {
	const pour = (heading: string, lots: string, more = {}) =>
		Object.keys(LOGGED).map(
			(key) => ({ heading, lots, ...more })[key as "lots"] ?? "",
		);
	const log = [
		labels(LOGGED),
		pour("Ada · Kitchen", "umber 2041"),
		pour("Ben · Basin", "black 7", { date: serialDay("2026-05-11") }),
		pour("", ""),
		pour("Ada · Basin", "black 7", { spread: "8 in" }),
	];
	const found = (find: string, pours = log) => ({
		count: answerOf(POURS_COUNT, { settings, find: [[find]], pours })[0]?.[0],
		rows: answerOf(POURS_FOUND, { settings, find: [[find]], pours }).slice(1),
	});

	test("has all words, in any order and place", () => {
		const { count, rows } = found("black ada");
		expect(count).toBe("1 found");
		expect(rows).toEqual([log[4]]);
		expect(found(" BASIN").rows).toEqual([log[2], log[4]]);
	});

	test("is nothing while nothing is looked for, and said to be none", () => {
		expect(found("")).toEqual({ count: "", rows: [] });
		expect(found("nobody")).toMatchObject({ count: "No pour has this." });
		expect(found("nobody").rows[0]?.[0]).toBe("none");
		expect(found("", log.slice(0, 1)).count).toMatch(/^No pour yet: /);
	});

	test("is the last of many", () => {
		const many = [
			labels(LOGGED),
			...Array.from({ length: 20 }, (_, i) => pour(`Ada ${i}`, "")),
		];
		const { count, rows } = found("ada", many);
		expect(count).toMatch(/^20 found/);
		expect(rows).toEqual(many.slice(-MOST_FOUND));
	});

	test("are colors with their doses under the pigments' names, as on Swatches", () => {
		const studio = starterStudio("metric");
		const { swatches } = studioGrids(studio, "metric");
		const [headings = [], ...rows] = answerOf(COLORS_FOUND, {
			settings,
			find: [["demo invented"]],
			swatches: swatches ?? [],
		});
		expect(headings.slice(0, 8)).toEqual([
			...labels(SWATCH).slice(0, 4),
			"Umber",
			"Black",
			"Ocher",
			"White",
		]);
		expect(rows).toHaveLength(12);
		expect(rows[1]?.slice(0, 8)).toEqual([
			"White casting mix, invented",
			"cast",
			"bare",
			"dry",
			0.01,
			"",
			"",
			"",
		]);
		expect(rows[1]?.[12]).toBe("#b8a591");
	});
});
