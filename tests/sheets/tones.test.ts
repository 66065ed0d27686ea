/** The Tones tab of one slab with two tones, every number worked by hand beside it. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { BATCH, BINDER, hands, onScale, PARTS, slab } from "./onejob";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [slab]);
}, 120_000);
afterAll(() => desk.dispose());

const { value, number, sentence, type, errors } = hands(() => desk);
const TONES = "1 Tones";

describe("doses as the pigment's maker states them", {
	timeout: 60_000,
}, () => {
	test("of binder, a powder wetted with half a gram of water a gram", () => {
		expect(value(TONES, "B12")).toBe("fine");
		expect(value(TONES, "C15")).toBe("of binder");
		// A quarter of the batch, 4% of its binder; 1.5 g on the scale a gram of dry pigment.
		const dry = BATCH * 0.25 * BINDER * 0.04 * 1000;
		expect(number(TONES, "I17")).toBeCloseTo(dry * 1.5, 6);
		expect(number(TONES, "I23")).toBeCloseTo(dry, 6);
		expect(number(TONES, "I24")).toBeCloseTo(dry * 0.5, 6);
		expect(number(TONES, "I25")).toBeCloseTo(dry, 6);
		// Water that comes with it, of the mix: 1% of binder dry, half of it.
		expect(number(TONES, "J10")).toBeCloseTo(BINDER * 0.01 * 0.5, 12);
		expect(number(TONES, "G17")).toBeCloseTo(
			BATCH * 0.25 * (1 - BINDER * 0.01 * 0.5),
			9,
		);
		// Together on the scale: the batch and the dry pigment, since the water is the batch's own.
		expect(number(TONES, "H22")).toBeCloseTo(BATCH + dry / 1000, 9);
	});

	test("of cement, which is 46 of 54 parts of binder", async () => {
		await type([["Pigments", "D5", "cement"]]);
		expect(value(TONES, "C15")).toBe("of cement");
		const dry = BATCH * 0.25 * (46 / PARTS) * 0.04 * 1000;
		expect(number(TONES, "I23")).toBeCloseTo(dry, 6);
		// The limit is of cement too: 6% less the 4% as stated.
		expect(number(TONES, "M17")).toBeCloseTo(0.02, 12);
	});

	test("of the dry mix, fibers not counted: 46 + 8 + 46 parts", async () => {
		await type([
			["Pigments", "D5", "dry mix"],
			[TONES, "C17", "2%"],
		]);
		const dry = BATCH * 0.25 * (100 / PARTS) * 0.02 * 1000;
		expect(number(TONES, "I23")).toBeCloseTo(dry, 6);
		expect(number(TONES, "M17")).toBeCloseTo(0.06 - 0.02 * (100 / 46), 12);
		await type([
			["Pigments", "D5", "binder"],
			[TONES, "C17", "4%"],
		]);
	});

	test("a liquid with 40% pigment: weighed and bought as liquid, its water kept back", async () => {
		await type([
			["Pigments", "B5", "liquid"],
			["Pigments", "F5", ""],
		]);
		expect(value(TONES, "C24")).toBe("Look: share of pigment?");
		expect(value(TONES, "B12")).toMatch(/^Look: .*Pigments tab/);
		expect(sentence(TONES, "G16")).toMatch(/dose 1 is an error cell/);
		await type([["Pigments", "C5", "40%"]]);
		const dry = BATCH * 0.25 * BINDER * 0.04 * 1000;
		expect(number(TONES, "I17")).toBeCloseTo(dry / 0.4, 6);
		expect(number(TONES, "I25")).toBeCloseTo(dry / 0.4, 6);
		expect(number(TONES, "I24")).toBeCloseTo((dry * 0.6) / 0.4, 6);
		expect(number(TONES, "J10")).toBeCloseTo(BINDER * 0.01 * 1.5, 12);
		// The limit knows dry pigment only.
		expect(number(TONES, "M17")).toBeCloseTo(0.06 - 0.04 / (46 / 54), 12);
		await type([
			["Pigments", "B5", "powder"],
			["Pigments", "C5", ""],
			["Pigments", "F5", "0.5"],
		]);
	});
});

describe("mold lay-up", { timeout: 60_000 }, () => {
	test("tones the faces and edges to a depth, and says what that saves", async () => {
		await type([
			[TONES, "B8", "1 cm"],
			[TONES, "B9", "Plain"],
		]);
		// 1 m² and four edges of 1 m × 50 mm are 1.2 m²; 10 mm of it are 12 of 50 liters.
		expect(number(TONES, "J9")).toBeCloseTo(0.24, 12);
		const bucket = BATCH * BINDER * 0.01 * 1000;
		expect(number(TONES, "C31")).toBeCloseTo(bucket, 6);
		expect(number(TONES, "C32")).toBeCloseTo(bucket * 0.24, 6);
		expect(number(TONES, "G33")).toBeCloseTo(bucket * 0.76, 6);
		// 24 for 1000 g.
		expect(number(TONES, "H33")).toBeCloseTo(bucket * 0.76 * 0.024, 8);
	});

	test("gives each tone its share of the whole, the backing all that is behind", async () => {
		await type([[TONES, "B7", "mold lay-up"]]);
		expect(value(TONES, "B12")).toBe("fine");
		expect(number(TONES, "T16")).toBeCloseTo(0.75 * 0.24 + 0.76, 12);
		expect(number(TONES, "T17")).toBeCloseTo(0.25 * 0.24, 12);
		expect(number(TONES, "I23")).toBeCloseTo(
			BATCH * BINDER * 0.01 * 0.24 * 1000,
			6,
		);
		await type([[TONES, "B9", "Gone"]]);
		expect(value(TONES, "B12")).toBe("Look: choose the tone that backs it");
		await type([
			[TONES, "B9", ""],
			[TONES, "B8", ""],
		]);
		expect(value(TONES, "B12")).toBe("Look: type how deep the toned face is");
		expect(desk.errorAt(TONES, "G16")).toBeDefined();
		expect(desk.errorAt("1 Pour card", "C20")).toBeDefined();
		await type([[TONES, "B7", "bucket fold"]]);
		expect(errors()).toEqual([]);
	});
});

test("the sample is the smallest that both scales dose to 5%", async () => {
	// Two readings of each scale, d/√12 a reading; Deep is a quarter of the sample and takes 4% × 1.5 of its binder in grams.
	const gramsAKg = BINDER * 0.04 * 1.5 * 1000;
	const deep =
		(Math.sqrt(2) / Math.sqrt(12) / 0.05) * Math.hypot(0.1 / gramsAKg, 0.02);
	const sample = Math.ceil(deep / 0.25 / 0.02) * 0.02;
	expect(number(TONES, "K43")).toBeCloseTo(sample, 9);
	expect(number(TONES, "K44")).toBeCloseTo(sample, 9);
	const water = BINDER * 0.01 * 0.5;
	expect(number(TONES, "H38")).toBeCloseTo(
		onScale(sample * 0.25 * (1 - water), 0.02),
		9,
	);
	expect(number(TONES, "I38")).toBeCloseTo(
		onScale(sample * 0.25 * gramsAKg, 0.1),
		9,
	);
	// White cement, and water less what comes with the pigment, of 2 kg, in grams.
	await type([[TONES, "K45", "2"]]);
	expect(number(TONES, "M49")).toBeCloseTo(
		onScale((2000 * 46) / PARTS, 0.1),
		9,
	);
	expect(number(TONES, "M52")).toBeCloseTo(
		onScale(2000 * (15.5 / PARTS - water), 0.1),
		9,
	);
	await type([[TONES, "K45", "0.1"]]);
	expect(value(TONES, "L45")).toMatch(/^Look: too small/);
	await type([[TONES, "K45", ""]]);
}, 60_000);

test("bands halve with each fold, and blur from afar", () => {
	// 40 / 2³; an arcminute at 2 m is 0.582 mm: 40 / 2⁶ = 0.625 is wider, 40 / 2⁷ finer.
	expect(number(TONES, "B38")).toBe(5);
	expect(number(TONES, "B40")).toBe(7);
});

describe("expected colors", { timeout: 60_000 }, () => {
	const swatch = (row: number, cells: Record<string, string>) =>
		Object.entries({
			A: "White casting mix, invented",
			B: "cast",
			C: "bare",
			D: "dry",
			...cells,
		}).map(([column, text]) => ["Swatches", `${column}${row}`, text] as const);

	test("say so where there are none", async () => {
		const cells = desk
			.read("Swatches", "A5:M60")
			.flatMap((row, down) =>
				row.flatMap((cell, right) =>
					cell === "" || (down === 0 && (right < 4 || right === 12))
						? []
						: [
								[
									"Swatches",
									`${String.fromCharCode(65 + right)}${5 + down}`,
									"",
								] as const,
							],
				),
			);
		await type(cells);
		expect(value(TONES, "N16")).toBe("");
		expect(value(TONES, "Q16")).toBe(
			"no color: no swatch of this mix, finish, sealing and state",
		);
		expect(value(TONES, "N22")).toMatch(/^No swatch has a color yet/);
		expect(value(TONES, "B41")).toBe("");
	});

	test("come from the studio's swatches of the same kind", async () => {
		// Pair 7 of the CIEDE2000 test data (Sharma, Wu and Dalal 2005): 2.3669.
		await type([
			["Swatches", "E5", "Black"],
			["Swatches", "F5", "Umber"],
			...swatch(6, { F: "0", M: "50, 0, 0" }),
			...swatch(7, { F: "4%", M: "50, -1, 2" }),
			...swatch(8, { F: "4%", M: "20, 0, 0", C: "sealed" }),
			...swatch(9, { E: "2%", M: "30, 0, 0" }),
		]);
		expect(value(TONES, "N16")).toBe("#777777");
		expect(value(TONES, "O17")).toBe("Plain");
		expect(number(TONES, "P17")).toBeCloseTo(2.3669, 4);
		expect(value(TONES, "Q17")).toBe("seen close by, lost across the room");
		expect(value(TONES, "N22")).toBe(
			"2 of 4 swatches used; left out: 1 of another sealing, 1 with other pigments",
		);
		expect(value(TONES, "B41")).toMatch(/^#[0-9a-f]{6}$/);
	});

	test("are blank past the strongest swatch, and say it", async () => {
		await type([[TONES, "C17", "5%"]]);
		expect(value(TONES, "N17")).toBe("");
		expect(value(TONES, "Q17")).toBe(
			"no color: past the strongest swatch of Umber, 4% of binder",
		);
		expect(value(TONES, "N16")).toBe("#777777");
		expect(value(TONES, "B41")).toBe("needs every tone");
		await type([[TONES, "C17", "4%"]]);
	});
});

describe("what cannot be", { timeout: 60_000 }, () => {
	test.each([
		["C17", "200%", "4%", /between 0% and 100%, got 200%/, /^Look: a dose/],
		["C17", "dark", "4%", /must be a number, got "dark"/, /^Look: a dose/],
		["B17", "much", "25%", /must be a number, got "much"/, /^Look: a share/],
	])(
		"%s %s is said in words, and nothing is weighed by it",
		async (cell, bad, good, message, look) => {
			await type([[TONES, cell, bad]]);
			expect(sentence(TONES, "G16")).toMatch(message);
			expect(value(TONES, "B12")).toMatch(look);
			expect(value("1 Pour card", "A2")).toMatch(/^Look: on the Tones tab/);
			expect(desk.errorAt("1 Pour card", "C20")).toBeDefined();
			expect(desk.errorAt("1 Pour card", "A65")).toBeDefined();
			await type([[TONES, cell, good]]);
			expect(errors()).toEqual([]);
		},
	);

	test("a pigment that the studio does not have", async () => {
		await type([[TONES, "C14", "Moss"]]);
		expect(value(TONES, "B12")).toBe(
			"Look: a pigment is not on the Pigments tab: add it there",
		);
		expect(desk.errorAt(TONES, "G16")).toBeDefined();
		await type([[TONES, "C14", "Umber"]]);
		expect(errors()).toEqual([]);
	});

	test.each([
		["D5", "of the sand", "binder"],
		["C5", "140%", ""],
		["C5", "most", ""],
	])("%s of the Pigments tab as %s", async (cell, bad, good) => {
		await type([["Pigments", cell, bad]]);
		expect(value(TONES, "B12")).toMatch(/^Look: .*Pigments tab/);
		expect(desk.errorAt(TONES, "G16")).toBeDefined();
		expect(desk.errorAt("1 Pour card", "C20")).toBeDefined();
		await type([["Pigments", cell, good]]);
		expect(errors()).toEqual([]);
	});

	test("a mix that is not there", async () => {
		await type([[TONES, "B3", "Mud"]]);
		expect(value(TONES, "B12")).toMatch(/^Look: there is no mix/);
		expect(value("1 Pour card", "A2")).toMatch(/no mix of this name/);
		await type([[TONES, "B3", "White casting mix, invented"]]);
		expect(errors()).toEqual([]);
	});
});
