/**
 * The demo job on the built files, every number worked by hand here: plain arithmetic on the demo's own dimensions, the
 * mix's parts and the studio's settings, nothing of `src/`.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";

let desk: Desk;
beforeAll(async () => {
	desk = await openHeadlessDesk("dist");
	await desk.choose("Use in this workbook");
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

const value = (tab: string, cell: string) => desk.read(tab, cell)[0]?.[0];
const number = (tab: string, cell: string) => Number(value(tab, cell));
async function type(tab: string, cell: string, text: string) {
	desk.type(tab, cell, text);
	await desk.settle();
}

const WASTE = 1.08;
// Parts by mass of the demo's mix over specific gravity; 2% air. ACI 211.1: density = Σm / Σ(m / SG·1000) × (1 − air).
const PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 1.4 + 0.7;
const DENSITY =
	(PARTS /
		((46 / 3.1 +
			8 / 2.4 +
			46 / 2.65 +
			15.5 / 1 +
			0.9 / 1.07 +
			1.4 / 1.3 +
			0.7 / 1.3) /
			1000)) *
	0.98;
const BINDER = (46 + 8) / PARTS;

// L of 2150 × 1480 less 1500 × 830, sink 480 × 390, 30 thick; drop 60 below, 3600 long, 30 thick. m³.
const BAR_FACE = 2.15 * 1.48 - 1.5 * 0.83 - 0.48 * 0.39;
const BAR = BAR_FACE * 0.03 + 0.06 * 3.6 * 0.03;
const VANITY = (0.98 * 0.52 - (Math.PI * 0.36 ** 2) / 4) * 0.03;
const TABLE = ((Math.PI * 0.9 ** 2) / 4) * 0.028;
// Outside less inside, less the drain through a floor of 22 mm.
const BASIN =
	0.46 * 0.34 * 0.13 -
	(0.46 - 0.044) * (0.34 - 0.044) * (0.13 - 0.022) -
	((Math.PI * 0.045 ** 2) / 4) * 0.022;

/** To the division of a scale. */
const onScale = (amount: number, division: number) =>
	Math.round(amount / division) * division;

// The starter's pigments are wetted with half a gram of water a gram: the gram scale shows 1.5 g a gram of dry pigment.
const WETTED = 1.5;
// Sand 25% with 1.5%, Bark 15% with 4% + 0.5%, Slate 20% with 2% of binder; half as much water comes with it.
const PIGMENT_WATER =
	(0.25 * 0.015 + 0.15 * (0.04 + 0.005) + 0.2 * 0.02) * BINDER * 0.5;

// Load 1 is the bar. The pigment's water is held back from the mixer; 3% of what is in it stays undosed, to the 20 g of
// the mix scale. All of the binder is in the smaller mass.
const BATCH = BAR * DENSITY * WASTE;
const IN_MIXER = BATCH * (1 - PIGMENT_WATER);
const TONED = IN_MIXER - onScale(IN_MIXER * 0.03, 0.02);
const BINDER_IN_MIXER = BINDER / (1 - PIGMENT_WATER);
// What sticks in each vessel cannot be placed.
const STICKS = 0.3;

describe("the demo job in metric", { timeout: 60_000 }, () => {
	test("shows no error, and nothing to look at", () => {
		expect(desk.errors()).toEqual([]);
		expect(desk.read("1 Job", "D49:D70").flat()).toEqual(
			Array(22).fill("fine"),
		);
	});

	test("pieces: areas, volumes and weights", () => {
		expect(number("1 Job", "P11")).toBeCloseTo(BAR_FACE, 9);
		for (const [row, volume, quantity] of [
			[11, BAR, 1],
			[12, VANITY, 2],
			[13, TABLE, 1],
			[14, BASIN, 1],
		] as const) {
			expect(number("1 Job", `R${row}`)).toBeCloseTo(volume * 1000, 9);
			expect(number("1 Job", `U${row}`)).toBeCloseTo(volume * DENSITY, 9);
			expect(number("1 Job", `V${row}`)).toBeCloseTo(
				volume * quantity * DENSITY * WASTE,
				9,
			);
		}
		expect(value("1 Job", "L11")).toBe(90); // 60 below the slab and 30 of slab
	});

	test("loads: the bar alone, the rest together, in 150 kg", () => {
		const rest = (2 * VANITY + TABLE + BASIN) * DENSITY * WASTE;
		expect(rest).toBeLessThan(150);
		expect(BATCH + BASIN * DENSITY * WASTE).toBeGreaterThan(150);
		expect(desk.read("1 Job", "L49:M54")).toEqual([
			[1, "Breakfast bar"],
			[2, "Vanity top"],
			[2, "Vanity top"],
			[2, "Round table"],
			[2, "Hand basin"],
			["", ""],
		]);
		expect(number("1 Job", "O49")).toBeCloseTo(BATCH / 150, 9);
		expect(number("1 Job", "O53")).toBeCloseTo(rest / 150, 9);
	});

	test("tones: grams of pigment for the job", () => {
		const mix = (BAR + 2 * VANITY + TABLE + BASIN) * DENSITY * WASTE;
		expect(number("1 Tones", "J3")).toBeCloseTo(BINDER, 12);
		expect(number("1 Tones", "J4")).toBeCloseTo(DENSITY, 9);
		// Bark: 15% of the mix, 4% umber and 0.5% black of binder; grams, wetted.
		expect(number("1 Tones", "I18")).toBeCloseTo(
			mix * 0.15 * BINDER * 0.04 * 1000 * WETTED,
			6,
		);
		expect(number("1 Tones", "J18")).toBeCloseTo(
			mix * 0.15 * BINDER * 0.005 * 1000 * WETTED,
			6,
		);
		expect(number("1 Tones", "H18")).toBeCloseTo(
			mix * 0.15 * (1 - PIGMENT_WATER + BINDER * 0.045 * WETTED),
			9,
		);
		// Umber of Sand and Bark as bought: dry.
		expect(number("1 Tones", "I25")).toBeCloseTo(
			mix * BINDER * (0.25 * 0.015 + 0.15 * 0.04) * 1000,
			6,
		);
		expect(number("1 Tones", "J10")).toBeCloseTo(PIGMENT_WATER, 12);
		// The smaller maximum, 6% of cement; cement is 46 of 54 of binder.
		expect(number("1 Tones", "M18")).toBeCloseTo(0.06 - 0.045 / (46 / 54), 9);
	});

	test("weigh-out of load 1, to the 20 g of the scale", () => {
		const ingredients = [46, 8, 46, 15.5, 0.9, 1.4, 0.7];
		ingredients.forEach((parts, index) => {
			const held = parts === 15.5 ? BATCH * PIGMENT_WATER : 0;
			expect(number("1 Pour card", `C${20 + index}`)).toBeCloseTo(
				onScale((BATCH * parts) / PARTS - held, 0.02),
				9,
			);
		});
		expect(number("1 Pour card", "C7")).toBeCloseTo(BATCH * PIGMENT_WATER, 9);
		// 53.68 kg of cement.
		expect(value("1 Pour card", "M20")).toBe("2 of 25 kg + 3.68 kg");
	});

	test("the pull-off plan of load 1", () => {
		// Shell ≤ Sand ≤ Bark dose one after the other; Slate has more black than Bark and needs a bucket.
		const left = TONED * (0.15 + 0.25);
		const grams = BINDER_IN_MIXER * WETTED * 1000;
		const scale = (dose: number) => 1 + BINDER_IN_MIXER * WETTED * dose;
		const steps = [
			["Fill bucket A from the mixer", TONED * 0.2, 0.02],
			["Pull off Shell from the mixer", TONED * 0.4, 0.02],
			["Add Umber to the mixer", left * grams * 0.015, 0.1],
			["Pull off Sand from the mixer", TONED * 0.25 * scale(0.015), 0.02],
			["Add Umber to the mixer", TONED * 0.15 * grams * (0.04 - 0.015), 0.1],
			["Add Black to the mixer", TONED * 0.15 * grams * 0.005, 0.1],
			["Keep Bark in the mixer", TONED * 0.15 * scale(0.045) - STICKS, 0.02],
			["Add Black to bucket A", TONED * 0.2 * grams * 0.02, 0.1],
			["Keep Slate in bucket A", TONED * 0.2 * scale(0.02) - STICKS, 0.02],
		] as const;
		expect(number("1 Pour card", "C64")).toBeCloseTo(
			onScale(IN_MIXER * 0.03, 0.02),
			9,
		);
		steps.forEach(([words, amount, division], index) => {
			const row = 65 + index;
			expect(value("1 Pour card", `B${row}`)).toBe(words);
			expect(number("1 Pour card", `C${row}`)).toBeCloseTo(
				onScale(amount, division),
				9,
			);
		});
		expect(value("1 Pour card", "B74")).toBe("");
		// Grams a kilogram still in the vessel, for working by hand on paper: binder × dose × 1000, wetted.
		expect(number("1 Pour card", "N67")).toBeCloseTo(grams * 0.015, 9);
	});
});

describe("what a person changes", { timeout: 60_000 }, () => {
	test("a weight that was off changes every later amount, in its own load only", async () => {
		// 60 kg of Shell instead of TONED × 0.4: what is left is shared by Sand and Bark 25 to 15.
		await type("1 Pour card", "E66", "60");
		const left = TONED * 0.8 - 60;
		expect(number("1 Pour card", "C67")).toBeCloseTo(
			onScale(left * BINDER_IN_MIXER * 15 * WETTED, 0.1),
			9,
		);
		expect(number("1 Pour card", "C68")).toBeCloseTo(
			onScale(
				((left * 25) / 40) * (1 + BINDER_IN_MIXER * 0.015 * WETTED),
				0.02,
			),
			9,
		);
		expect(value("1 Pour card", "E11")).toBe("Look: none");
		await type("1 Pour card", "C3", "2");
		expect(value("1 Pour card", "E66")).toBe(60);
		const other =
			(2 * VANITY + TABLE + BASIN) * DENSITY * WASTE * (1 - PIGMENT_WATER);
		expect(number("1 Pour card", "C66")).toBeCloseTo(
			onScale((other - onScale(other * 0.03, 0.02)) * 0.4, 0.02),
			9,
		);
		await type("1 Pour card", "C3", "1");
	});

	test("a plan changed after weights were typed is said loudly", async () => {
		await type("1 Pour card", "E10", String(value("1 Pour card", "C10")));
		expect(value("1 Pour card", "E11")).toBe("same");
		await type("1 Tones", "B16", "0.3");
		expect(value("1 Pour card", "E11")).toBe("Look: other");
		expect(String(value("1 Job", "D51"))).toMatch(/^Look: weights were typed/);
		await type("1 Tones", "B16", "0.4");
		expect(value("1 Pour card", "E11")).toBe("same");
		await type("1 Pour card", "E66", "");
		await type("1 Pour card", "E10", "");
	});

	test("too much of one ingredient raises the others", async () => {
		const sand = (BATCH * 46) / PARTS;
		await type("1 Pour card", "E22", String(sand * 1.1));
		expect(number("1 Pour card", "C20")).toBeCloseTo(
			onScale(sand * 1.1, 0.02),
			9,
		);
		expect(number("1 Pour card", "C33")).toBeCloseTo(IN_MIXER * 1.1, 1);
		await type("1 Pour card", "E22", "");
	});

	test("a longer piece makes every weight follow", async () => {
		await type("1 Job", "D11", "2200");
		const longer = BAR + 0.05 * 1.48 * 0.03;
		expect(number("1 Job", "U11")).toBeCloseTo(longer * DENSITY, 9);
		expect(number("1 Pour card", "C6")).toBeCloseTo(
			longer * DENSITY * WASTE,
			9,
		);
		await type("1 Job", "D11", "2150");
		expect(number("1 Pour card", "C6")).toBeCloseTo(BATCH, 9);
	});

	test("a length that cannot be read is an error, never a smaller total", async () => {
		await type("1 Job", "D12", "about a meter");
		expect(desk.errorAt("1 Job", "P11")?.message).toMatch(
			/row 2: .*"about a meter" is not a length/,
		);
		for (const cell of ["I3", "I4", "I5", "I6", "I7", "I8"])
			expect(desk.errorAt("1 Job", cell)?.shown).toBe("#ERROR!");
		expect(desk.errorAt("1 Pour card", "C20")?.shown).toBe("#ERROR!");
		expect(value("1 Job", "D49")).toMatch(/^Look: a cell shows an error/);
		await type("1 Job", "D12", "980");
		expect(desk.errors()).toEqual([]);
	});

	test("an empty job asks for pieces and shows no error", async () => {
		const pieces = desk.read("1 Job", "A11:H14");
		for (let row = 11; row <= 14; row++)
			for (const column of "ABCDEFGHIJKMNO")
				desk.type("1 Job", column + row, "");
		for (let row = 34; row <= 36; row++)
			for (const column of "ABCDEGHIJKLMNO")
				desk.type("1 Job", column + row, "");
		await desk.settle();
		expect(pieces[0]?.[0]).toBe("Breakfast bar");
		expect(desk.errors()).toEqual([]);
		expect(value("1 Job", "D49")).toBe(
			"Look: there is nothing to pour yet: type the pieces",
		);
		expect(value("1 Pour card", "C5")).toBe(
			"no piece yet: fill in the Job tab",
		);
	});
});
