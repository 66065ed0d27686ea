/** Impossible entries are refused at the cell, with a sentence; what may be is taken. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { choiceOf } from "../../templates/blocks";
import { JOB_FIELDS, nameOf } from "../job/everyfield";
import { cellOf, type Place } from "../job/found";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

const dose = () => {
	const [tab, at] = cellOf("Tones.tones", 1, 2);
	return [tab, at] as Place;
};

describe("a dose", () => {
	test.each(["1", "100%", "0.5", "some", "-0.01"])(
		"of %s is refused, and the sheet is as it was",
		(typed) => {
			const before = desk.state();
			expect(() => desk.type(...dose(), typed)).toThrow(
				/violates the data validation rules/,
			);
			expect(desk.state() === before).toBe(true);
			expect(desk.errors()).toEqual([]);
		},
	);

	test("of 2.5% or 0.03 is taken", () => {
		for (const typed of ["2.5%", "0.03"]) desk.type(...dose(), typed);
		expect(desk.read(...dose())).toEqual([[0.03]]);
	});
});

test.each([
	["Job.waste", "8"],
	["Job.stage", "sold"],
	["Job.crew", "-1"],
	["Cost.priceTyped", "-3"],
	["Cost.byCard", "half"],
	["Quote.priceAgreed", "much"],
	["Studio.deposit", "50"],
	["Studio.labor_rate", "-1"],
])("%s: %s is refused", (cell, typed) => {
	expect(() => desk.type(...(cellOf(cell) as Place), typed)).toThrow(
		/violates the data validation rules/,
	);
});

test("every number and share of a job has a rule with its sentence, and every word its list", () => {
	const bare = JOB_FIELDS.filter(({ field }) =>
		["number", "share", "money", "word"].includes(field.kind),
	).filter(({ field }) => {
		const [choice] = choiceOf(field, "A1");
		return !choice?.list && !(choice?.between && choice.help);
	});
	expect(bare.map(({ path }) => nameOf(path))).toEqual([]);
});
