import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wholeOf } from "../../../src/job/answers/whole";
import { jobIn } from "../../../src/job/cells/jobcells";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	PRICE,
	TRAVEL,
	WHAT_IF,
	WORK,
} from "../../../src/job/fields/cost";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import {
	COST_MATERIALS,
	COST_SUMMARY,
	COST_WORK,
	SUMMARY_ROWS,
} from "../../../src/job/tabs/cost";
import { cost } from "../../../templates/cost/costtab";
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

const emptyJob = (units: JobFile["units"]): JobFile => ({
	units,
	pieces: [],
	tones: [],
});

/** What stands in the cells of a new job. */
const PRICE_STARTS = { priceFrom: "as planned", byCard: 1 };
const PLAN_STARTS = [
	{ margin: 0.3, hours: 0.9, materials: 1, change: 0 },
	{ margin: 0.35, hours: 1.15, materials: 1.05, change: 0.1 },
];
const HOURS_EACH: Readonly<Record<string, number>> = {
	template: 0.75,
	mold: 2,
	pour: 2.5,
	demold: 0.5,
	polish: 1.5,
	seal: 0.4,
	deliver: 4,
};
const GOODS_NAMES = [
	["Mold sheet", "sheet"],
	["Strips", "strip"],
	["Sealant", "tube"],
	["Release", "can"],
	["Knockouts", "piece"],
	["Cover sheet", "roll"],
	["Screws", "screw"],
].map(([what, unit]) => ({ what, unit }));

/** The job with what a new job's cells hold, where the file leaves it out. */
const withStarts = (job: JobFile): JobFile =>
	({
		...PRICE_STARTS,
		goods: GOODS_NAMES,
		...job,
		whatIfs: PLAN_STARTS.map((start, index) => ({
			...start,
			...job.whatIfs?.[index],
		})),
		work: Object.fromEntries(
			Object.entries(HOURS_EACH).map(([key, hoursEach]) => [
				key,
				{ hoursEach, ...job.work?.[key] },
			]),
		),
	}) as JobFile;

const readBack = (job: JobFile): JobFile => {
	const studio = starterStudio(job.units);
	const page = pageFor(cost, job, studio);
	return jobIn({ cost: gridOf(page, "cost") }, studio, job.units);
};

const anyWork = fc.dictionary(
	fc.constantFrom(...Object.keys(HOURS_EACH)),
	some(WORK),
);

const anyCost = fc.record(
	{
		whatIfs: fc.array(some(WHAT_IF), { minLength: 1, maxLength: 2 }),
		changes: rowsOf(CHANGE, MOST.changes),
		payments: rowsOf(PAYMENT, MOST.payments),
		goods: fc.oneof(fc.constant([]), rowsOf(GOODS, MOST.goods)),
		travel: rowsOf(TRAVEL, MOST.travel),
		work: anyWork,
	},
	{ requiredKeys: [] },
);

describe("typed cells", () => {
	test("read back as they were written, with what a new job begins with where nothing was typed", () => {
		fc.assert(
			fc.property(
				fc.constantFrom(...UNITS),
				some(PRICE),
				anyCost,
				(units, price, parts) => {
					const job = { ...emptyJob(units), ...price, ...parts } as JobFile;
					expect(readBack(job)).toEqual(withStarts(job));
					expect(readBack(withStarts(job))).toEqual(withStarts(job));
				},
			),
		);
	});

	test("hours beside a name that is no operation's are said", () => {
		const regions = jobRegions(demoJob("metric"));
		const renamed = regions.cost.map((row) =>
			row.map((cell) => (cell === "Seal" ? "Wax" : cell)),
		);
		const rows = answerOf(COST_WORK, { ...regions, cost: renamed }).slice(1);
		expect(rows[5]).toEqual(["", "", "", "", ""]);
		expect(rows[7]?.[3]).toBe("Look: there is no operation Wax");
	});
});

const priced = (job: JobFile): JobFile => ({
	...job,
	priceFrom: "tighter",
	byCard: 0.5,
	whatIfs: [{ margin: 0.28, change: -0.05 }],
	changes: [
		{ what: "Second cutout", price: 180, cost: 90, agreedOn: "2027-03-01" },
	],
	goods: [{ what: "Mold sheet", unit: "sheet", quantity: 7, packPrice: 55 }],
	travel: [{ what: "Ferry", amount: 120 }],
	work: { mold: { hours: 11 }, seal: { hoursEach: 0.5, worked: 3 } },
});

describe.each(UNITS)("answers in %s", (units) => {
	const studio = starterStudio(units);
	const { settings } = studio;
	const job = withStarts(priced(demoJob(units)));
	const regions = jobRegions(job);
	const summary = answerOf(COST_SUMMARY, regions);
	const rowNamed = (label: string) =>
		summary[COST_SUMMARY.shown.findIndex((row) => row.label === label)] ?? [];
	const share = (key: "tax" | "card_fee") => Number(settings[key]);

	test("margins and prices are what their functions give of the shown cells", () => {
		expect(traceable(COST_SUMMARY)).toEqual([
			"Margin: MARGIN_OF",
			"Price for the margin: PRICE_FOR_MARGIN",
			"Margin left: MARGIN_OF",
		]);
		expectSame(
			rowNamed("Margin")[0],
			called(
				"MARGIN_OF",
				rowNamed("Price without tax, with change orders")[0],
				rowNamed("Cost")[0],
			),
		);
		// half of what the client pays, tax too, is paid by card
		const fee = share("card_fee") * 0.5 * (1 + share("tax"));
		for (const plan of [0, 1, 2]) {
			expectSame(
				rowNamed("Price for the margin")[plan],
				called(
					"PRICE_FOR_MARGIN",
					rowNamed("Cost without card fee")[plan],
					Number(rowNamed("Margin wanted")[plan]) + fee,
				),
			);
			expectSame(
				rowNamed("Margin left")[plan],
				called(
					"MARGIN_OF",
					rowNamed("Price")[plan],
					rowNamed("Its cost")[plan],
				),
			);
		}
	});

	test("what a new job begins with counts where a file leaves it out", () => {
		const left = priced(demoJob(units));
		const { goods, work, whatIfs, ...more } = left;
		for (const file of [left, more as JobFile]) {
			const [whole, begun] = [file, withStarts(file)].map((one) =>
				wholeOf(studio, one),
			);
			expect(whole?.cost()).toEqual(begun?.cost());
			expect(whole?.buy()).toEqual(begun?.buy());
			expect(whole?.quote()).toEqual(begun?.quote());
		}
	});

	test("an agreed change order is in the price, and not in the price without", () => {
		const [price] = rowNamed("Price without tax, with change orders");
		expectSame(price, Number(rowNamed("Without change orders")[0]) + 180);
	});

	test("a plan counts what is typed of it, and else as it began", () => {
		expect(rowNamed("Three plans")).toEqual(["as planned", "tighter", "rush"]);
		expect(rowNamed("Margin wanted")).toEqual([settings.margin, 0.28, 0.35]);
		expect(rowNamed("Change to the price")).toEqual([0, -0.05, 0.1]);
	});

	test("the parts are all of the cost, and materials together are the first four", () => {
		const parts = summary.slice(SUMMARY_ROWS.parts + 1, SUMMARY_ROWS.plans);
		const amounts = parts.map(([amount]) => Number(amount));
		const total = (of: readonly number[]) => of.reduce((a, b) => a + b, 0);
		expectSame(amounts[4], total(amounts.slice(0, 4)));
		expectSame(amounts[11], total(amounts.slice(4, 11)));
		expectSame(total(parts.slice(4, 11).map(([, part]) => Number(part))), 1);
		// Ferry, and the change's own cost
		expect(amounts[8]).toBe(120);
		expect(amounts[10]).toBe(90);
	});

	test("hours typed go before those worked out, and cost the hourly rate", () => {
		const rows = answerOf(COST_WORK, regions).slice(1);
		expect(rows).toHaveLength(8);
		expect(rows[1]?.[3]).toBe(11);
		expect(rows[1]?.[4]).toBe(11 * Number(settings.labor_rate));
		// one delivery of 4 hours
		expect(rows[6]?.slice(0, 4)).toEqual(["job", 1, 4, 4]);
		const hours = rows
			.slice(0, 7)
			.reduce((sum, row) => sum + Number(row[3]), 0);
		expectSame(rows[7]?.[3], hours);
		expectSame(rows[7]?.[4], hours * Number(settings.labor_rate));
	});

	test("packs are what PACKS_TO_BUY gives of the shown cells", () => {
		expect(traceable(COST_MATERIALS)).toEqual(["Packs to buy: PACKS_TO_BUY"]);
		const rows = answerOf(COST_MATERIALS, regions).slice(1);
		const bought = rows.filter(
			(row) => Number(row[3]) > 0 && Number(row[4]) > 0,
		);
		expect(bought.length).toBeGreaterThan(4);
		for (const row of bought) {
			const [, , needed, pack, price, part, onHand, packs, toPay] = row;
			expectSame(packs, called("PACKS_TO_BUY", needed, onHand, pack));
			expectSame(part, (Number(needed) / Number(pack)) * Number(price));
			expectSame(toPay, Number(packs) * Number(price));
		}
		expect(rows[rows.length - 1]?.[0]).toBe("Total");
	});

	test("a job without pieces says what is not known", () => {
		const nothing = answerOf(COST_SUMMARY, jobRegions(emptyJob(units)));
		expect(nothing[0]?.[0]).toMatch(/^not known yet: /);
		expect(nothing[5]?.[0]).toMatch(/^not known yet: /);
	});
});
