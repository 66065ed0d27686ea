/**
 * The demo job on the built files, every number worked by hand here: plain arithmetic on the demo's own dimensions, the
 * mix's parts and the studio's settings, nothing of `src/`.
 */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { MOST } from "../../src/job/jobfile";
import { moved } from "../../templates/blocks";
import {
	beside,
	cellOf,
	cellsOf,
	checksOf,
	cleared,
	numberAt,
	type Place,
	typed,
	under,
	valueAt,
} from "./found";

let desk: Desk;
beforeAll(async () => {
	desk = await openHeadlessDesk("dist");
	await desk.choose("Use in this workbook");
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

const JOB = "1 Job";
const TONES = "1 Tones";
const CARD = "1 Pour card";
const value = (place: Place) => valueAt(desk, ...place);
const number = (place: Place) => numberAt(desk, ...place);
const type = (place: Place, text: string) => typed(desk, [...place, text]);

/** A piece's answer, a tone's; what the card shows of a row, and where its first load is typed. */
const ofPiece = (piece: string, heading: string) =>
	under(desk, JOB, heading, piece);
/** In the row in which the tone is typed: another column may name it as most like its own. */
const ofTone = (tone: string, heading: string): Place => {
	const names = desk.read(...cellsOf("Tones.tone_names", MOST.tones, 1)).flat();
	const [tab, first] = under(desk, TONES, heading, 0);
	return [tab, moved(first, names.indexOf(tone))];
};
const onCard = (row: string, heading = "On the scale") =>
	under(desk, CARD, heading, row);
/** The load's weights stand from their title on: a piece of the job may be named like an ingredient. */
const weighOut = (ingredient: string, heading = "On the scale") => {
	const [tab, cell] = under(desk, CARD, heading, 0);
	const [, row] = under(desk, CARD, "Weigh out", ingredient);
	return [tab, cell.replace(/\d+/, /\d+/.exec(row)?.[0] ?? "")] as Place;
};
const ofLoad = (label: string) => beside(desk, CARD, label);
const fits = () => value(ofLoad("Weighed by this plan"));
const check = (what: string) => checksOf(desk).get(what) ?? "";

const WASTE = 1.08;
// Parts by mass of the demo's mix over specific gravity; 2% air. ACI 211.1: density = Σm / Σ(m / SG·1000) × (1 − air).
const PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 0.7 + 0.35;
const DENSITY =
	(PARTS /
		((46 / 3.1 +
			8 / 2.4 +
			46 / 2.65 +
			15.5 / 1 +
			0.9 / 1.07 +
			0.7 / 1.3 +
			0.35 / 1.3) /
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
	test("shows no error, and nothing to look at but how the bar is carried", () => {
		expect(desk.errors()).toEqual([]);
		const checks = [...checksOf(desk)];
		expect(checks).toHaveLength(27);
		// Nobody has typed a temperature, what one may lift or what a mold weighs, so five checks do not know.
		expect(checks.filter(([, says]) => says !== "fine")).toEqual([
			[
				"Slabs carried flat by their ends",
				expect.stringMatching(/^Look: Breakfast bar: on edge, not flat/),
			],
			[
				"The crew can lift every piece",
				"not known yet: type what one person may lift on the Studio tab",
			],
			[
				"The crew can turn every mold over",
				"not known yet: what the mold of Breakfast bar weighs",
			],
			[
				"The steps fit in the working time",
				"not known yet: type the mix temperature",
			],
			[
				"The mix is not too warm",
				"not known yet: type the temperature of the dry material",
			],
			[
				"Drying before it is covered",
				expect.stringMatching(/^not known yet: type today's air temperature/),
			],
		]);
	});

	test("pieces: areas, volumes and weights", () => {
		expect(number(ofPiece("Breakfast bar", "Face"))).toBeCloseTo(BAR_FACE, 9);
		for (const [piece, volume, quantity] of [
			["Breakfast bar", BAR, 1],
			["Vanity top", VANITY, 2],
			["Round table", TABLE, 1],
			["Hand basin", BASIN, 1],
		] as const) {
			expect(number(ofPiece(piece, "Volume"))).toBeCloseTo(volume * 1000, 9);
			expect(number(ofPiece(piece, "Weight of one"))).toBeCloseTo(
				volume * DENSITY,
				9,
			);
			expect(number(ofPiece(piece, "Mix for all"))).toBeCloseTo(
				volume * quantity * DENSITY * WASTE,
				9,
			);
		}
		// 60 below the slab and 30 of slab
		expect(value(ofPiece("Breakfast bar", "Drop edge, seen height"))).toBe(90);
	});

	test("loads: the bar alone, the rest together, in 150 kg", () => {
		const rest = (2 * VANITY + TABLE + BASIN) * DENSITY * WASTE;
		expect(rest).toBeLessThan(150);
		expect(BATCH + BASIN * DENSITY * WASTE).toBeGreaterThan(150);
		expect(desk.read(...cellsOf("Job.load_table", 6, 2))).toEqual([
			[1, "Breakfast bar"],
			[2, "Vanity top"],
			[2, "Vanity top"],
			[2, "Round table"],
			[2, "Hand basin"],
			["", ""],
		]);
		expect(number(under(desk, JOB, "Load is full", 0))).toBeCloseTo(
			BATCH / 150,
			9,
		);
		expect(number(under(desk, JOB, "Load is full", 4))).toBeCloseTo(
			rest / 150,
			9,
		);
	});

	test("tones: grams of pigment for the job", () => {
		const mix = (BAR + 2 * VANITY + TABLE + BASIN) * DENSITY * WASTE;
		expect(number(beside(desk, TONES, "Binder in fresh mix"))).toBeCloseTo(
			BINDER,
			12,
		);
		expect(number(beside(desk, TONES, "Fresh density"))).toBeCloseTo(
			DENSITY,
			9,
		);
		// Bark: 15% of the mix, 4% umber and 0.5% black of binder; grams, wetted.
		expect(number(ofTone("Bark", "Umber, g"))).toBeCloseTo(
			mix * 0.15 * BINDER * 0.04 * 1000 * WETTED,
			6,
		);
		expect(number(ofTone("Bark", "Black, g"))).toBeCloseTo(
			mix * 0.15 * BINDER * 0.005 * 1000 * WETTED,
			6,
		);
		expect(number(ofTone("Bark", "On the scale"))).toBeCloseTo(
			mix * 0.15 * (1 - PIGMENT_WATER + BINDER * 0.045 * WETTED),
			9,
		);
		// Umber of Sand and Bark as bought: dry.
		expect(
			number(under(desk, TONES, "Umber", "As bought", "Pigments")),
		).toBeCloseTo(mix * BINDER * (0.25 * 0.015 + 0.15 * 0.04) * 1000, 6);
		expect(number(beside(desk, TONES, "Water in the pigment"))).toBeCloseTo(
			PIGMENT_WATER,
			12,
		);
		// The smaller maximum, 6% of cement; cement is 46 of 54 of binder.
		expect(number(ofTone("Bark", "Below the limit by"))).toBeCloseTo(
			0.06 - 0.045 / (46 / 54),
			9,
		);
	});

	test("weigh-out of load 1, to the 20 g of the mix scale, fiber and reducer to the gram scale's tenth", () => {
		const ingredients = [
			["White cement", 46],
			["Pozzolan", 8],
			["Fine sand", 46],
			["Water", 15.5],
			["Water reducer", 0.9],
			["Fiber, long", 0.7],
			["Fiber, short", 0.35],
		] as const;
		for (const [name, parts] of ingredients) {
			const held = parts === 15.5 ? BATCH * PIGMENT_WATER : 0;
			expect(number(weighOut(name))).toBeCloseTo(
				onScale((BATCH * parts) / PARTS - held, parts < 1 ? 0.0001 : 0.02),
				9,
			);
		}
		expect(number(ofLoad("Water held for pigment"))).toBeCloseTo(
			BATCH * PIGMENT_WATER,
			9,
		);
		// 54.50 kg of cement.
		expect(value(weighOut("White cement", "Note"))).toBe("2 of 25 kg + 4.5 kg");
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
		expect(number(onCard("Step 0"))).toBeCloseTo(
			onScale(IN_MIXER * 0.03, 0.02),
			9,
		);
		steps.forEach(([words, amount, division], index) => {
			const step = `Step ${index + 1}`;
			expect(value(onCard(step, "Do"))).toBe(words);
			expect(number(onCard(step))).toBeCloseTo(onScale(amount, division), 9);
		});
		expect(value(onCard("Step 10", "Do"))).toBe("");
		// Grams a kilogram still in the vessel, for working by hand on paper: binder × dose × 1000, wetted.
		expect(number(onCard("Step 3", "Dry, g a kg left"))).toBeCloseTo(
			grams * 0.015,
			9,
		);
	});
});

const TOTALS = [
	"Mix to make",
	"Mixer loads",
	"Heaviest piece",
	"Face of all",
	"To fill, polish and seal",
	"Volume to cast",
];
const CHOSEN = cellOf("Pour card.load");
const PLAN_NUMBER = cellOf("Pour card.planNumber");
const SHELL_SHARE = cellOf("Tones.shares");
const BAR_LENGTH = cellOf("Job.pieces", 0, 3);
const TOP_LENGTH = cellOf("Job.pieces", 1, 3);

describe("what a person changes", { timeout: 60_000 }, () => {
	test("a weight that was off changes every later amount, in its own load only", async () => {
		// 60 kg of Shell instead of TONED × 0.4: what is left is shared by Sand and Bark 25 to 15.
		await type(onCard("Step 2", "Load 1"), "60");
		const left = TONED * 0.8 - 60;
		expect(number(onCard("Step 3"))).toBeCloseTo(
			onScale(left * BINDER_IN_MIXER * 15 * WETTED, 0.1),
			9,
		);
		expect(number(onCard("Step 4"))).toBeCloseTo(
			onScale(
				((left * 25) / 40) * (1 + BINDER_IN_MIXER * 0.015 * WETTED),
				0.02,
			),
			9,
		);
		expect(fits()).toBe("Look: no number typed");
		await type(CHOSEN, "2");
		expect(value(onCard("Step 2", "Load 1"))).toBe(60);
		const other =
			(2 * VANITY + TABLE + BASIN) * DENSITY * WASTE * (1 - PIGMENT_WATER);
		expect(number(onCard("Step 2"))).toBeCloseTo(
			onScale((other - onScale(other * 0.03, 0.02)) * 0.4, 0.02),
			9,
		);
		await type(CHOSEN, "1");
	});

	test("a plan changed after weights were typed is said loudly", async () => {
		await type(PLAN_NUMBER, String(value(onCard("Plan number"))));
		expect(fits()).toBe("the same");
		await type(SHELL_SHARE, "0.3");
		expect(fits()).toBe("Look: another plan");
		expect(check("Weights belong to this plan")).toMatch(
			/^Look: weights were typed/,
		);
		await type(SHELL_SHARE, "0.4");
		expect(fits()).toBe("the same");
		await type(onCard("Step 2", "Load 1"), "");
		await type(PLAN_NUMBER, "");
	});

	test("too much of one ingredient raises the others", async () => {
		const sand = (BATCH * 46) / PARTS;
		await type(weighOut("Fine sand", "Load 1"), String(sand * 1.1));
		expect(number(weighOut("White cement"))).toBeCloseTo(
			onScale(sand * 1.1, 0.02),
			9,
		);
		expect(number(weighOut("Total"))).toBeCloseTo(IN_MIXER * 1.1, 1);
		await type(weighOut("Fine sand", "Load 1"), "");
	});

	test("a longer piece makes every weight follow", async () => {
		await type(BAR_LENGTH, "2200");
		const longer = BAR + 0.05 * 1.48 * 0.03;
		expect(number(ofPiece("Breakfast bar", "Weight of one"))).toBeCloseTo(
			longer * DENSITY,
			9,
		);
		expect(number(ofLoad("Mix in this load"))).toBeCloseTo(
			longer * DENSITY * WASTE,
			9,
		);
		await type(BAR_LENGTH, "2150");
		expect(number(ofLoad("Mix in this load"))).toBeCloseTo(BATCH, 9);
	});

	test("a length that cannot be read is said in every total, never a smaller total", async () => {
		await type(TOP_LENGTH, "about a meter");
		const why = /^Look: .*"about a meter" is not a length/;
		expect(value(ofPiece("Vanity top", "Weight of one"))).toMatch(why);
		// The other pieces keep their numbers.
		expect(number(ofPiece("Breakfast bar", "Weight of one"))).toBeCloseTo(
			BAR * DENSITY,
			9,
		);
		for (const label of TOTALS)
			expect(value(beside(desk, JOB, label))).toMatch(why);
		expect(value(ofLoad("Mix in this load"))).toMatch(why);
		// Nothing is weighed out, nothing priced, nothing to pay, until it is right.
		expect(value(onCard("Weighed 1", "Do"))).toMatch(why);
		expect(value(onCard("Weighed 1"))).toBe("");
		expect(value(cellOf("Cost.price"))).toMatch(why);
		expect(value(cellOf("Quote.total"))).toMatch(why);
		expect(check("Everything calculates")).toMatch(
			/^Look: Vanity top: A: "about a meter" is not a length/,
		);
		expect(desk.errors()).toEqual([]);
		await type(TOP_LENGTH, "980");
		expect(number(ofLoad("Mix in this load"))).toBeCloseTo(BATCH, 9);
	});

	test("an empty job asks for pieces and shows no error", async () => {
		expect(value(cellOf("Job.pieces"))).toBe("Breakfast bar");
		await cleared(desk, "Job.pieces", 4, 16);
		await cleared(desk, "Job.cutouts", 3, 9);
		await cleared(desk, "Job.knockouts", 2, 9);
		expect(desk.errors()).toEqual([]);
		const ask = "not known yet: type the pieces";
		for (const label of TOTALS)
			expect(value(beside(desk, JOB, label))).toBe(ask);
		expect(check("Everything calculates")).toBe(ask);
		expect(value(ofLoad("In this load"))).toBe(ask);
		// Nothing is fine that is about loads or pieces.
		for (const what of [
			"Every load is enough to blend",
			"Every tone is enough to blend",
			"Every dose can be weighed to 5%",
			"Every casting fits in one load",
			"Waste covers reserve and what sticks",
			"The crew can lift every piece",
			"The price covers the cost",
		])
			expect(check(what)).toMatch(/^not known yet: /);
	});
});
