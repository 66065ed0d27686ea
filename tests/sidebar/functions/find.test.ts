import { describe, expect, test } from "vitest";
import { helpOf } from "../../../src/functions/help";
import { registry } from "../../../src/functions/index";
import { found } from "../../../src/sidebar/functions/find";
import { formulaText } from "../../../src/sidebar/functions/formula";

const all = registry.map(helpOf);
const names = (typed: string) => found(all, typed).map(({ name }) => name);

describe("finding a function by what it does", () => {
	test("nothing typed gives all of them in their order", () => {
		expect(names("  ")).toEqual(registry.map(({ name }) => name));
	});

	test.each([
		["piece_takeoff", "PIECE_TAKEOFF"],
		["pull off", "PULL_OFF_PLAN"],
		["grams of pigment", "PIGMENT_GRAMS"],
		["mixing density", "MIX_DENSITY"],
		["corners", "POLYGON_AREA"],
		["margin price", "PRICE_FOR_MARGIN"],
		["How much sealer do I need?", "COATING_AMOUNT"],
		["how many people to lift it", "PEOPLE_TO_LIFT"],
	])("%j finds %s first or among the first three", (typed, name) => {
		expect(names(typed).slice(0, 3)).toContain(name);
	});

	test("every word must be somewhere", () => {
		expect(names("pigment xylophone")).toEqual([]);
	});

	test("every function is found by its own summary", () => {
		for (const fn of all) expect(names(fn.summary)).toContain(fn.name);
	});
});

describe("the formula", () => {
	test.each([
		["NAME", ["1", "2"], ",", "=NAME(1, 2)"],
		["NAME", ["1", "2"], ";", "=NAME(1; 2)"],
		["NAME", ["1", "", "3", "", " "], ",", "=NAME(1, , 3)"],
		["NAME", [], ",", "=NAME()"],
	])("%s of %j with %j", (name, args, separator, formula) => {
		expect(formulaText(name, args, separator)).toBe(formula);
	});
});
