/** The same slab in inches and pounds, worked by hand. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { moved } from "../../templates/blocks";
import {
	beside,
	cellOf,
	numberAt,
	type Place,
	typed,
	under,
	valueAt,
} from "../job/found";
import { BINDER, DENSITY, ofTone, onScale, slab } from "./onejob";
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

const TONES = "1 Tones";
const CARD = "1 Pour card";
const number = (place: Place) => numberAt(desk, ...place);
const type = (...entries: readonly (readonly [Place, string])[]) =>
	typed(desk, ...entries.map(([place, text]) => [...place, text] as const));

/** Where load 1 weighs an ingredient: in the column that people read, in the ingredient's row. */
function weighOut(ingredient: string): Place {
	const [tab, first] = under(desk, CARD, "On the scale", 0);
	const [, own] = under(desk, CARD, "Weigh out", ingredient);
	return [tab, first.replace(/\d+/, /\d+/.exec(own)?.[0] ?? "")];
}

/** Where something is typed of load 1. */
const ofLoad1 = (label: string) => under(desk, CARD, "Load 1", label);

// 40 × 40 × 2 in; 1 in = 0.0254 m, 1 lb = 0.45359237 kg, exactly; 8% waste.
const BATCH_KG = 40 * 40 * 2 * 0.0254 ** 3 * DENSITY * 1.08;
const BATCH_LB = BATCH_KG / 0.45359237;

test("grams on a mix in pounds, the water in pounds", () => {
	// A quarter with 4% of binder, wetted with half a gram a gram.
	const dry = BATCH_KG * BINDER * 0.01 * 1000;
	expect(number(ofTone(desk, "Deep", "Umber, g"))).toBeCloseTo(dry * 1.5, 6);
	expect(number(under(desk, TONES, "On the scale", "Total"))).toBeCloseTo(
		BATCH_LB + dry / 453.59237,
		9,
	);
	expect(number(beside(desk, CARD, "Water held for pigment"))).toBeCloseTo(
		BATCH_LB * BINDER * 0.01 * 0.5,
		9,
	);
	const [tab, water] = weighOut("Water");
	expect(valueAt(desk, tab, moved(water, 0, 1))).toBe("lb");
	// 1 1/2 in / 2³.
	expect(number(beside(desk, TONES, "Bands after the folds"))).toBeCloseTo(
		0.1875,
		12,
	);
});

test("a lay-up 3/8 in deep", async () => {
	await type(
		[cellOf("Tones.faceDepth"), "3/8"],
		[cellOf("Tones.backedWith"), "Plain"],
	);
	// 40 × 40 × 2 in less a core that is 3/8 in smaller on four sides and the face.
	expect(number(beside(desk, TONES, "Toned face in the mix"))).toBeCloseTo(
		1 - (39.25 ** 2 * 1.625) / 3200,
		12,
	);
}, 30_000);

test("the smallest sample, on a scale of 0.05 lb", () => {
	const gramsALb = BINDER * 0.04 * 1.5 * 453.59237;
	const deep =
		((2 * Math.sqrt(2)) / Math.sqrt(12) / 0.05) *
		Math.hypot(0.1 / gramsALb, 0.05);
	expect(
		number(
			under(
				desk,
				TONES,
				"Mix, undosed",
				"Smallest the scales dose within 5% (k = 2)",
			),
		),
	).toBeCloseTo(Math.ceil(deep / 0.25 / 0.05) * 0.05, 9);
});

test("ice in pounds", async () => {
	await type(
		[ofLoad1("Dry material is at"), "80"],
		[ofLoad1("Water is at"), "64"],
		[ofLoad1("Cool with ice"), "yes"],
	);
	// ACI 305R in °F, wanted 68: ice melts and warms by 144 − 32 = 112 a pound.
	const part = (parts: number) => (BATCH_LB * parts) / 117.45;
	const solids = 0.22 * part(46 + 8 + 46 + 0.7 + 0.35);
	const water = part(15.5 + 0.9) - BATCH_LB * BINDER * 0.01 * 0.5;
	const ice = (solids * 80 + water * 64 - 68 * (solids + water)) / (64 + 112);
	expect(number(weighOut("Ice"))).toBeCloseTo(onScale(ice, 0.05), 9);
	expect(number(beside(desk, CARD, "Mix will be at"))).toBeCloseTo(68, 9);
}, 30_000);
