import * as engine from "@univerjs/engine-formula";
import { describe, expect, test } from "vitest";
import { paramHelp } from "../../src/build/help";
import { isSheetFunctionName } from "../../src/build/names";
import { sheetStub } from "../../src/build/stubs";
import {
	length,
	list,
	mass,
	number,
	share,
	units,
	word,
} from "../../src/functions/arguments";
import { registry } from "../../src/functions/index";

describe("an argument's help", () => {
	test.each([
		[mass("Mix, e.g. 100"), "Mix, e.g. 100 (kg, us: lb)"],
		[share("Waste", { blank: 0.08 }), "Waste (8% when blank)"],
		[number("Coats", { blank: 1 }), "Coats (1 when blank)"],
		[number("A", { optional: true }), "A (may be left out)"],
		[
			word(["good", "fair"], "Grip", { blank: "fair" }),
			"Grip (fair when blank)",
		],
		[length("Skim", { blank: 0.002 }), "Skim (mm, us: in; 2 mm when blank)"],
		[list(mass("Masses")), "Masses (kg, us: lb)"],
		[units(), "metric or us; blank is metric"],
	])("%j", (param, expected) => {
		expect(paramHelp(param)).toBe(expected);
	});
});

describe("every sheet function", () => {
	/** Built-in names of a spreadsheet, as the local engine lists them. */
	const builtIn = new Set(
		Object.entries(engine)
			.filter(([name]) => name.startsWith("FUNCTION_NAMES_"))
			.flatMap(([, names]) => Object.values(names as Record<string, string>)),
	);

	test("of a spreadsheet is known here", () => {
		expect(builtIn).toContain("VLOOKUP");
	});

	test.each(registry.map((fn) => [fn.name, fn] as const))(
		"%s has a name of its own and help that Sheets can show",
		(name, fn) => {
			expect(isSheetFunctionName(name)).toBe(true);
			expect(builtIn).not.toContain(name);
			const stub = sheetStub(fn);
			expect(stub.match(/^ \* @param \{[^{}]+\} \w+ \S/gm)).toHaveLength(
				Object.keys(fn.params).length,
			);
			expect(stub).not.toMatch(/undefined|NaN|\[object/);
		},
	);
});
