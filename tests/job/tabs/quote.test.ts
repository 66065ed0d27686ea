import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobIn } from "../../../src/job/cells/jobcells";
import { QUOTE } from "../../../src/job/fields/cost";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import { COST_SUMMARY } from "../../../src/job/tabs/cost";
import { QUOTE_LINES, SUM_KEYS } from "../../../src/job/tabs/quote";
import { quote } from "../../../templates/quote/quotetab";
import { starterStudio } from "../../../templates/starterstudio";
import { expectSame } from "./traced";
import { answerOf, demoJob, gridOf, jobRegions, pageFor } from "./typedcells";
import { some } from "./typedvalues";

const UNITS = ["metric", "us"] as const;

test("what is typed reads back as it was written", () => {
	fc.assert(
		fc.property(fc.constantFrom(...UNITS), some(QUOTE), (units, row) => {
			const job = { units, pieces: [], tones: [], ...row };
			const studio = starterStudio(units);
			const page = pageFor(quote, job, studio);
			expect(jobIn({ quote: gridOf(page, "quote") }, studio, units)).toEqual(
				job,
			);
		}),
	);
});

const quoted = (job: JobFile): JobFile => ({
	...job,
	quotedOn: "2027-01-20",
	changes: [
		{ what: "Second cutout", price: 180, cost: 90, agreedOn: "2027-03-01" },
		{ what: "Not agreed", price: 999 },
	],
	payments: [{ for: "deposit", amount: 1000, on: "2027-02-01" }],
});

/** Payments and repayments, parts of a cent too. */
const payments = fc.array(
	fc.record({
		for: fc.constantFrom("deposit", "balance", "change"),
		amount: fc
			.integer({ min: -500_000, max: 5_000_000 })
			.map((thousandths) => thousandths / 1000),
	}),
	{ minLength: 1, maxLength: MOST.payments },
);

/** Amounts beside their labels. */
const amountsOf = (rows: readonly (readonly unknown[])[]) =>
	new Map(rows.map((row) => [row[2], Number(row[3])] as const));

describe.each(UNITS)("answers in %s", (units) => {
	const job = quoted(demoJob(units));
	const regions = jobRegions(job);
	const rows = answerOf(QUOTE_LINES, regions).slice(1);
	const amounts = amountsOf(rows);
	const amount = (label: string) => amounts.get(label) ?? Number.NaN;
	const sum = (key: (typeof SUM_KEYS)[number]) =>
		rows[SUM_KEYS.indexOf(key)]?.[4];

	test("the lines make the price of the Cost tab, and tax makes the total", () => {
		const [[price] = []] = answerOf(COST_SUMMARY, regions);
		expect(amount("Without tax")).toBe(price);
		expectSame(amount("Without tax"), amount("Pieces as listed") + 180);
		expect(amounts.has("Not agreed")).toBe(false);
		const tax = units === "us" ? "Tax, 8.25%" : "Tax, 20%";
		expectSame(amount("Total"), amount("Without tax") + amount(tax));
	});

	test("what other tabs show is what the page shows", () => {
		expect(sum("total")).toBe(amount("Total"));
		expect(sum("paid")).toBe(1000);
		expect(sum("deposit_paid")).toBe(1000);
		expect(sum("balance_paid")).toBe(0);
		expect(sum("deposit")).toBe(amount("Still to pay to begin"));
		expect(sum("balance")).toBe(amount("Balance on delivery"));
		expectSame(sum("to_pay"), amount("Total") - 1000);
		// 30 days after 2027-01-20, counted from 1899-12-30: 2027-02-19
		expect(sum("holds_until")).toBe(46_437);
	});

	test("every piece has its line", () => {
		expect(rows.map(([text]) => text).filter(Boolean)).toHaveLength(
			job.pieces.length,
		);
	});

	test("paid, deposit and balance add up to the total, to the cent", () => {
		fc.assert(
			fc.property(payments, (paid) => {
				const own = answerOf(
					QUOTE_LINES,
					jobRegions({ ...job, payments: paid }),
				).slice(1);
				const cents = (key: (typeof SUM_KEYS)[number]) =>
					Math.round(Number(own[SUM_KEYS.indexOf(key)]?.[4]) * 100);
				expect(cents("paid") + cents("deposit") + cents("balance")).toBe(
					cents("total"),
				);
				expect(cents("deposit") + cents("balance")).toBe(cents("to_pay"));
			}),
			{ numRuns: 30 },
		);
	});
});
