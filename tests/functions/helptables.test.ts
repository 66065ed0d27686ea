/** The panel's page carries the help as tables; what is read out of them is what was put in. */
import { expect, test } from "vitest";
import { helpOf } from "../../src/functions/help";
import { helpFrom, tablesOf } from "../../src/functions/helptables";
import { registry } from "../../src/functions/index";

test("tables give back what was put in", () => {
	const all = registry.map(helpOf);
	expect(helpFrom(tablesOf(all))).toEqual(all);
});

test("a function without arguments takes none of the next one's", () => {
	const argument = {
		name: "mass",
		help: "Mix, e.g. 100",
		optional: false,
		facts: "kg",
		columns: "",
	};
	const fn = {
		group: "Mix",
		summary: "",
		limits: "",
		source: "",
		answer: "",
		example: { shown: [], answer: "", working: "" },
	};
	const all = [
		{ ...fn, name: "NONE", arguments: [] },
		{ ...fn, name: "ONE", arguments: [argument] },
	];
	const tables = tablesOf(all);
	expect(tables.functions.count).toEqual([0, 1]);
	expect(tables.arguments.name).toEqual(["mass"]);
	expect(helpFrom(tables)).toEqual(all);
});
