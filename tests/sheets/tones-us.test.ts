/** The same slab in inches and pounds, worked by hand. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { BINDER, DENSITY, hands, onScale, slab } from "./onejob";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [
		{
			...slab,
			units: "us",
			pieces: [{ ...slab.pieces[0], a: "40", b: "3' 4", thickness: "2" }],
		},
	]);
}, 120_000);
afterAll(() => desk.dispose());

const { value, number, type } = hands(() => desk);

// 40 × 40 × 2 in; 1 in = 0.0254 m, 1 lb = 0.45359237 kg, exactly; 8% waste.
const BATCH_KG = 40 * 40 * 2 * 0.0254 ** 3 * DENSITY * 1.08;
const BATCH_LB = BATCH_KG / 0.45359237;

test("grams on a mix in pounds, the water in pounds", () => {
	// A quarter with 4% of binder, wetted with half a gram a gram.
	const dry = BATCH_KG * BINDER * 0.01 * 1000;
	expect(number("1 Tones", "I17")).toBeCloseTo(dry * 1.5, 6);
	expect(number("1 Tones", "H22")).toBeCloseTo(BATCH_LB + dry / 453.59237, 9);
	expect(number("1 Pour card", "C7")).toBeCloseTo(
		BATCH_LB * BINDER * 0.01 * 0.5,
		9,
	);
	expect(value("1 Pour card", "D23")).toBe("lb");
	// 1 1/2 in / 2³.
	expect(number("1 Tones", "B38")).toBeCloseTo(0.1875, 12);
});

test("a lay-up 3/8 in deep", async () => {
	await type([
		["1 Tones", "B8", "3/8"],
		["1 Tones", "B9", "Plain"],
	]);
	// Face 1600 in² and edges 4 × 40 × 2 in², 3/8 deep, of 3200 in³.
	expect(number("1 Tones", "J9")).toBeCloseTo(
		((1600 + 320) * 0.375) / 3200,
		12,
	);
}, 30_000);

test("the smallest sample, on a scale of 0.05 lb", () => {
	const gramsALb = BINDER * 0.04 * 1.5 * 453.59237;
	const deep =
		(Math.sqrt(2) / Math.sqrt(12) / 0.05) * Math.hypot(0.1 / gramsALb, 0.05);
	expect(number("1 Tones", "K43")).toBeCloseTo(
		Math.ceil(deep / 0.25 / 0.05) * 0.05,
		9,
	);
});

test("ice in pounds", async () => {
	await type([
		["1 Pour card", "E14", "80"],
		["1 Pour card", "E15", "64"],
		["1 Pour card", "E16", "yes"],
	]);
	// ACI 305R in °F, wanted 68: ice melts and warms by 144 − 32 = 112 a pound.
	const part = (parts: number) => (BATCH_LB * parts) / 118.5;
	const solids = 0.22 * part(46 + 8 + 46 + 1.4 + 0.7);
	const water = part(15.5 + 0.9) - BATCH_LB * BINDER * 0.01 * 0.5;
	const ice = (solids * 80 + water * 64 - 68 * (solids + water)) / (64 + 112);
	expect(number("1 Pour card", "C32")).toBeCloseTo(onScale(ice, 0.05), 9);
	expect(number("1 Pour card", "C18")).toBeCloseTo(68, 9);
}, 30_000);
