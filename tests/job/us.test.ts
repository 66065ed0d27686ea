/** The demo's US twin, worked by hand in inches, cubic feet and pounds. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";

let desk: Desk;
beforeAll(async () => {
	desk = await openHeadlessDesk("dist", { enabled: true });
	await desk.call("createDemoJob", ["us"]);
}, 120_000);
afterAll(() => desk.dispose());

const number = (tab: string, cell: string) =>
	Number(desk.read(tab, cell)[0]?.[0]);

// kg/m³ of the mix (parts over specific gravity, 2% air) in lb/ft³: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, exactly.
const PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 1.4 + 0.7;
const LITERS =
	46 / 3.1 + 8 / 2.4 + 46 / 2.65 + 15.5 + 0.9 / 1.07 + 1.4 / 1.3 + 0.7 / 1.3;
const LB_PER_FT3 =
	(((PARTS / LITERS) * 1000 * 0.98) / 0.45359237) * 0.3048 ** 3;
const BINDER = 54 / PARTS;

// 84 1/2 × 58 1/4 less 59 × 32 5/8, sink 19 × 15 3/8, 1 1/4 thick; drop 2 3/8 below, 11' 10" long, 1 1/4 thick.
const BAR_IN3 =
	(84.5 * 58.25 - 59 * 32.625 - 19 * 15.375) * 1.25 + 2.375 * 142 * 1.25;
const BAR_LB = (BAR_IN3 / 1728) * LB_PER_FT3;

test("no error, nothing to look at", () => {
	expect(desk.errors()).toEqual([]);
	expect(desk.read("1 Job", "D49:D70").flat()).toEqual(Array(22).fill("fine"));
});

test("the bar in cubic feet and pounds", () => {
	expect(number("1 Tones", "J4")).toBeCloseTo(LB_PER_FT3, 9);
	expect(number("1 Job", "R11")).toBeCloseTo(BAR_IN3 / 1728, 9);
	expect(number("1 Job", "U11")).toBeCloseTo(BAR_LB, 9);
	expect(number("1 Job", "L11")).toBeCloseTo(2.375 + 1.25, 9);
});

test("pigment in grams on a mix in pounds", () => {
	// 8% waste. Pigment of 0.0145 of binder (25% × 1.5% + 15% × 4.5% + 20% × 2%) brings half as much water, held back from
	// the mixer. 3% reserve of what is in it, to the 0.05 lb of the scale; Slate is 20% with 2% black of binder, wetted.
	const batch = BAR_LB * 1.08;
	const mixer = batch * (1 - 0.0145 * BINDER * 0.5);
	const toned = mixer - Math.round((mixer * 0.03) / 0.05) * 0.05;
	const grams =
		toned * 0.2 * ((BINDER * batch) / mixer) * 0.02 * 1.5 * 453.59237;
	expect(desk.read("1 Pour card", "B72:D72")[0]?.[0]).toBe(
		"Add Black to bucket A",
	);
	expect(number("1 Pour card", "C72")).toBeCloseTo(
		Math.round(grams / 0.1) * 0.1,
		9,
	);
	expect(desk.read("1 Pour card", "D71:D73").flat()).toEqual(["lb", "g", "lb"]);
});

test("headers say the units", () => {
	expect(desk.read("1 Job", "P10:R10")[0]).toEqual([
		"Face, ft²",
		"Edge, in",
		"Volume, ft³",
	]);
});
