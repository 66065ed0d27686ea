/** What was ordered keeps its price, and nothing is both a piece and a change order. */
import { describe, expect, test } from "vitest";
import { checksOf } from "../../../src/job/answers/checks";
import { wholeOf } from "../../../src/job/answers/whole";
import type { JobFile } from "../../../src/job/jobfile";
import { starterStudio } from "../../../templates/starterstudio";
import { demoJob } from "./demofiles";

const said = (key: string, changed: Partial<JobFile>) => {
	const whole = wholeOf(starterStudio("metric"), {
		...demoJob("metric"),
		...changed,
	});
	return checksOf(whole).find((check) => check.key === key)?.say;
};

const AGREED = {
	stage: "ordered",
	priceAgreed: 3000,
	acceptedOn: "2027-01-20",
};

describe("the price of what was ordered", () => {
	test.each([
		{ stage: "ordered" },
		{ stage: "delivered" },
		{ acceptedOn: "2027-01-20" },
		{ stage: "ordered", priceTyped: 3000 },
	])("%j is to be typed", (changed) => {
		expect(said("agreed", changed)).toMatch(
			/^Look: type the price agreed on the Quote/,
		);
	});

	test.each([{}, { stage: "sampling" }, AGREED])("%j is fine", (changed) => {
		expect(said("agreed", changed)).toBe("fine");
	});
});

describe("a change order", () => {
	const piece = (name: string) => ({
		name,
		quantity: 1,
		shape: "rectangle",
		a: 900,
		b: 300,
		thickness: 30,
	});
	const withChange = (what: string, name: string, agreedOn = "2027-02-01") =>
		said("agreed", {
			...AGREED,
			pieces: [...demoJob("metric").pieces, piece(name)],
			changes: [{ what, price: 300, cost: 90, agreedOn }],
		});

	test.each([
		["Shelf", "shelf"],
		["A shelf for the hall", "Shelf"],
		["Two more shelves, 900 mm", "Shelf"],
		["Extra bench (hall)", "Bench"],
	])("%s beside the piece %s is said", (what, name) => {
		expect(withChange(what, name)).toBe(
			`Look: ${name} is a piece of this job, and a change order too: its cost is counted twice, and its price where none is agreed. Take it out of the pieces, or take out the change order`,
		);
	});

	test.each([
		["Second cutout in the bench", "Bench"],
		["Polish the bench higher", "Bench"],
		["Rush", "Bench"],
	])("%s beside the piece %s is another thing", (what, name) => {
		expect(withChange(what, name)).toBe("fine");
	});

	test("that is not agreed does not stand yet", () => {
		expect(withChange("Shelf", "Shelf", "")).toBe("fine");
	});
});

describe("payments", () => {
	test("of more than the quote comes to are said", () => {
		const payments = [{ for: "balance", amount: 3601 }];
		expect(said("paid", { ...AGREED, payments })).toBe(
			"Look: € 1.00 more was paid than the quote comes to",
		);
		expect(said("paid", AGREED)).toBe("fine");
	});

	test("of a quote that is not known are not fine", () => {
		const payments = [{ for: "deposit", amount: 100 }];
		const pieces = demoJob("metric").pieces.map((row) => ({ ...row, a: "" }));
		expect(said("paid", { payments, pieces })).toMatch(/^not known yet: /);
	});
});
