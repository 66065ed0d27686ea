/** An impossible entry in any typed cell of a job: no answer fails, none goes blank without a word, and somewhere it is said. */
import { describe, expect, test } from "vitest";
import type { Field, Typed } from "../../src/job/fields/field";
import type { JobFile } from "../../src/job/jobfile";
import { tabAnswers } from "../../src/job/tabs";
import type { Cell } from "../../src/job/tabs/tab";
import { having, JOB_FIELDS, nameOf } from "./everyfield";
import { answerOf, demoJob, jobRegions } from "./tabs/typedcells";

/** A job in which every table has a row. */
const FULL: JobFile = {
	...demoJob("metric"),
	stage: "ordered",
	quotedOn: "2027-01-10",
	priceAgreed: 4000,
	acceptedOn: "2027-01-20",
	faceDepth: 12,
	changes: [{ what: "Niche", price: 90, cost: 20, agreedOn: "2027-02-01" }],
	payments: [{ for: "deposit", amount: 100, on: "2027-02-01" }],
	work: { template: { hoursEach: 1, hours: 3, worked: 2 } },
	goods: [
		{ what: "Sealant", unit: "tube", quantity: 4, pack: 1, packPrice: 7 },
	],
	travel: [{ what: "Van", amount: 60 }],
	whatIfs: [{ margin: 0.3 }, { hours: 1.2 }],
	cureLog: [{ hours: 12, temperature: 21 }],
	dryingAir: 20,
	dryingHumidity: 0.6,
	dryingMix: 20,
	dryingWind: 1,
	moistureLimit: 3,
	moistureReading: 2,
	pours: [
		{
			load: 1,
			weighed: { Water: 20 },
			steps: { 1: 3 },
			dryTemperature: 18,
			waterTemperature: 12,
			mixTemperature: 20,
			waterInAt: "9:00",
			lastPlacedAt: "9:30",
		},
	],
};

/** What no such field can be. */
function impossible({ kind, words, limits }: Field): Typed[] {
	if (words) return ["no such word"];
	switch (kind) {
		case "text":
		case "color":
			return [];
		case "day":
		case "time":
		case "length":
			return ["someday"];
		case "share":
			return ["some", limits?.max === undefined ? 7 : limits.max * 100];
		default:
			return limits?.min === undefined && limits?.above === undefined
				? ["some"]
				: ["some", -9e9];
	}
}

const ENTRIES = JOB_FIELDS.filter(
	({ path }) => nameOf(path) !== "units" && !nameOf(path).endsWith(".load"),
).flatMap(({ path, field }) =>
	impossible(field).map((typed) => ({ name: nameOf(path), path, typed })),
);

const cellsOf = (job: JobFile): Record<string, Cell[][]> => {
	const regions = jobRegions(job);
	return Object.fromEntries(
		tabAnswers.map((answer) => [answer.name, answerOf(answer, regions)]),
	);
};

const BEFORE = cellsOf(FULL);

describe("an impossible entry", () => {
	test.each(ENTRIES)("$name: $typed", ({ path, typed }) => {
		const after = cellsOf(having(FULL, path, typed));
		const texts = Object.values(after).flat(2).map(String);
		expect(texts.some((text) => text.startsWith("Look:"))).toBe(true);
		// What was agreed is still on the quote, unless the entry is a part of it.
		if (!["priceAgreed", "changes", "payments"].includes(String(path[0])))
			expect(after.QUOTE_LINES?.map((row) => row[3])).toEqual(
				BEFORE.QUOTE_LINES?.map((row) => row[3]),
			);
		for (const [name, rows] of Object.entries(BEFORE)) {
			const now = after[name] ?? [];
			const isShown = (row: Cell[] = []) => row.some((cell) => cell !== "");
			const gone = rows.filter((row, at) => isShown(row) && !isShown(now[at]));
			const says = now
				.flat()
				.some((cell) => /^(Look:|not known yet:)/.test(String(cell)));
			if (says) continue;
			expect(gone, name).toEqual([]);
		}
	});
});
