/** What a cell gets of boards, sealant and sides; worked by hand, in both systems of units. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import type { SheetFunction } from "../../src/functions/declare";
import {
	BOARDS_NEEDED,
	FORM_DEFLECTION,
	SEALANT_BEAD,
} from "../../src/functions/formwork";

describe("SEALANT_BEAD", () => {
	// r² (1 − π/4) = 7.725666117691862 mm² at 6 mm; 7960 mm of corners of a 2000 × 600 × 40 top with an 800 × 500 cutout.
	test("61.4963 mL for that top", () => {
		expect(callFunction(SEALANT_BEAD, [7960, 6])).toBeCloseTo(
			61.49630229682722,
			9,
		);
	});

	test("a tube of 310 mL gives 40.126 m at 6 mm", () => {
		expect(callFunction(SEALANT_BEAD, [40125.98982113614, 6])).toBeCloseTo(
			310,
			9,
		);
	});

	test("in inches: 100 in at 1/4 in, 100 × 0.25² × 0.214602 = 1.341261 in³", () => {
		expect(callFunction(SEALANT_BEAD, [100, "1/4 in", "us"])).toBeCloseTo(
			1.3412614789,
			9,
		);
	});
});

describe("FORM_DEFLECTION", () => {
	// δ = 5ρghl⁴ / (64Et³) of a basin's side 300 deep, 18 mm board, E 1600 MPa, 2300 kg/m³
	test.each([
		[600, 7.342218424479166],
		[400, 1.4503147505144034],
		[300, 0.4588886515299479],
		[306.504550345826, 0.5],
	])("supports every %d mm: %d mm", (span, deflection) => {
		expect(
			callFunction(FORM_DEFLECTION, [span, 300, 18, 1600, 2300]),
		).toBeCloseTo(deflection, 9);
	});
});

describe("BOARDS_NEEDED", () => {
	const call = (parts: unknown[][], ...more: unknown[]) =>
		callFunction(BOARDS_NEEDED, [parts, ...more]) as (string | number)[][];

	// 5 × 411 + 4 × 3.2 = 2067.8 of 2070; 5 × 412 + 4 × 3.2 = 2072.8
	test.each([
		[411, 1],
		[412, 2],
	])(
		"five of 2800 × %d from a board of 2800 × 2070 take %d",
		(width, boards) => {
			const rows = call([["Side", 2800, width, 5]], 2800, 2070, 3.2);
			expect(rows).toHaveLength(5);
			expect(Math.max(...rows.map(([board]) => Number(board)))).toBe(boards);
		},
	);

	test("trim is off every edge: what lies on the board keeps it free", () => {
		// 2440 − 2 × 10 = 2420 and 1220 − 2 × 10 = 1200: two of 2420 × 598.5 with a cut of 3
		const rows = call([["Base", 2420, 598.5, 2]], 2440, 1220, 3, 10);
		expect(rows).toEqual([
			[1, "Base", 10, 10, 2420, 598.5],
			[1, "Base", 10, 611.5, 2420, 598.5],
		]);
	});

	test("a part may be turned, and lengths are read as people write them", () => {
		expect(call([["Base", `2'`, `8'`, 1]], `8'`, `4'`, "", "", "us")).toEqual([
			[1, "Base", 0, 0, 96, 24],
		]);
	});

	test("none of a part is no row", () => {
		expect(
			call(
				[
					["Base", 500, 400, 0],
					["Side", 2400, 60, 1],
				],
				2800,
				2070,
			),
		).toEqual([[1, "Side", 0, 0, 2400, 60]]);
	});
});

test.each<[SheetFunction, unknown[], string]>([
	[
		BOARDS_NEEDED,
		[
			[
				["Base", 900, 600, 1],
				["Front side", 3050, 60, 1],
			],
			2800,
			2070,
		],
		'row 2: "Front side" (3050 × 60 mm) is larger than a board (2800 × 2070 mm)',
	],
	[
		BOARDS_NEEDED,
		[[["Base", 2800, 600, 1]], 2800, 2070, 3, 10],
		'row 1: "Base" (2800 × 600 mm) is larger than a board (2780 × 2050 mm without its trim)',
	],
	[
		BOARDS_NEEDED,
		[[["Base", 900, 600, 1]], 2800, 2070, -3],
		"kerf must be 0 mm or more, got -3",
	],
	[
		BOARDS_NEEDED,
		[[["Base", 900, 600, 1]], 2800, 2070, 3, 1035],
		"trim must be below half of the board (2800 × 2070 mm)",
	],
	[
		BOARDS_NEEDED,
		[[["Base", 900, 0, 1]], 2800, 2070],
		"row 1: width must be above 0 mm, got 0",
	],
	[
		BOARDS_NEEDED,
		[[["Base", 900, 600, 501]], 2800, 2070],
		"parts must be 500 or less together, got 501",
	],
	[SEALANT_BEAD, [1000, 0], "radius must be above 0 mm, got 0"],
	[
		FORM_DEFLECTION,
		[400, 300, 18, 0, 2300],
		"modulus must be above 0 MPa, got 0",
	],
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
