import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { READ_LENGTH } from "../../src/functions/lengths";

const read = (text: unknown, units?: string) =>
	callFunction(READ_LENGTH, [text, units]);

// Inch = 25.4 mm and foot = 12 in exactly (NIST SP 811, appendix B); the working stands beside each.
describe("a length as people write it", () => {
	test.each([
		[2440, "metric", 2440],
		["2440", "metric", 2440],
		[96, "us", 96],
		["8' 1/2\"", "us", 96.5], // 8 × 12 + 0.5
		["8'-0 1/2\"", "us", 96.5],
		["8'-0 1/2\"", "metric", 2451.1], // 96.5 × 25.4
		["8' 6", "us", 102], // after feet a bare number is inches
		["8'", "us", 96],
		["25 1/2", "us", 25.5],
		['25-1/2"', "metric", 647.7], // 25.5 × 25.4
		["25½", "us", 25.5],
		["⅜", "us", 0.375],
		["3/4", "us", 0.75],
		["650 mm", "metric", 650],
		["650mm", "us", 650 / 25.4],
		["2.4 m", "metric", 2400],
		["2,4 m", "metric", 2400],
		["65 cm", "metric", 650],
		["8 ft 3 in", "us", 99],
		["8 feet 3 inches", "us", 99],
		["8′ 0½″", "us", 96.5],
		["8’ 6”", "us", 102],
		["  2440  ", "metric", 2440],
		["12,5", "metric", 12.5],
		["1 1/2'", "us", 18],
	])("%j in %s is %d", (text, units, expected) => {
		expect(read(text, units)).toBeCloseTo(expected, 9);
	});

	test.each([
		["2,440", "type 2440 or 2.440"],
		["-20 mm", 'must be 0 mm or more, got "-20 mm"'],
		[-20, "must be 0 mm or more, got -20"],
		["abc", "is not a length"],
		["2 440", "is not a length"],
		["1,234,567", "is not a length"],
		["25 3/2", "is not a length"],
		["2'440", "is not a length"],
		["3/0", "is not a length"],
		["1e3", "is not a length"],
		["8' 6\" 2", "is not a length"],
		["", "text is blank"],
		[undefined, "text is blank"],
		[true, "must be a number, got TRUE"],
		["#N/A", "is an error cell (#N/A)"],
		[
			new Date(2026, 2, 4),
			"3/4 was read as a date: format the cell as plain text",
		],
		[Number.NaN, "must be a number"],
	])("%j is refused", (text, message) => {
		expect(() => read(text)).toThrow(message);
	});

	test("a unit in the text wins over the units of the sheet", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 100000 }), (mm) => {
				expect(Number(read(`${mm} mm`, "us")) * 25.4).toBeCloseTo(mm, 6);
			}),
		);
	});

	test("feet, inches and sixteenths add up", () => {
		fc.assert(
			fc.property(
				fc.nat(40),
				fc.nat(11),
				fc.integer({ min: 1, max: 15 }),
				(feet, inches, sixteenths) => {
					const text = `${feet}' ${inches} ${sixteenths}/16"`;
					expect(read(text, "us")).toBeCloseTo(
						feet * 12 + inches + sixteenths / 16,
						9,
					);
				},
			),
		);
	});
});
