import { describe, expect, test } from "vitest";
import {
	buyJson,
	costJson,
	quoteJson,
} from "../../../src/job/answers/money/moneyjson";
import { answersOf } from "./demofiles";

describe("printed answers", () => {
	test("are plain numbers", () => {
		const { cost, quote, buy } = answersOf("metric", {
			job: { payments: [{ for: "deposit", amount: 100 }] },
		});
		const { paid, deposit, balance, total } = quoteJson(quote);
		expect(paid).toBe(100);
		expect((paid ?? 0) + (deposit ?? 0) + (balance ?? 0)).toBeCloseTo(
			total ?? 0,
			9,
		);
		const printed = costJson(cost);
		expect(
			printed.lines.reduce((sum, { amount }) => sum + (amount ?? 0), 0),
		).toBeCloseTo(printed.cost ?? 0, 9);
		expect(quoteJson(quote).net).toBe(printed.price);
		expect(buyJson(buy)[0]).toMatchObject({
			name: "White cement",
			unit: "kg",
			reserved: null,
		});
	});

	test("are null where something is missing, never 0", () => {
		const { cost, quote, buy } = answersOf("metric", {
			settings: { labor_rate: "", sealer_coverage: "" },
		});
		expect(costJson(cost)).toMatchObject({
			cost: null,
			price: null,
			margin: null,
			state: "unknown",
		});
		expect(quoteJson(quote)).toMatchObject({
			net: null,
			tax: null,
			total: null,
			paid: 0,
			deposit: null,
			balance: null,
		});
		expect(buyJson(buy).find(({ name }) => name === "Sealer")).toMatchObject({
			needed: null,
			packs: null,
		});
	});
});
