import { expect, test } from "vitest";
import { readHelp } from "../../src/desk/page/help";

const CODE = `
/** Builds the menu. */
function onOpen() {}

/**
 * Grams of sand.
 * Dry sand only.
 *
 * @param {100} mass Sand as it comes, e.g. 100
 * @param {"metric"} units metric or us
 * @return dry sand
 * @customfunction
 */
function SAND(mass, units) {}
`;

test("a function's help is read from the comment above it", () => {
	expect(readHelp(CODE).get("SAND")).toEqual({
		about: "Grams of sand. Dry sand only.",
		params: [
			{ name: "mass", example: "100", detail: "Sand as it comes, e.g. 100" },
			{ name: "units", example: '"metric"', detail: "metric or us" },
		],
	});
});

test("what no cell calls has none", () => {
	expect([...readHelp(CODE).keys()]).toEqual(["SAND"]);
});
