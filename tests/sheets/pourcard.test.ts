/** The Pour card of one slab with two tones, every number worked by hand beside it. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CellValue, Desk } from "../../src/desk/contract";
import { CARD_ROWS, ICE } from "../../src/job/cells/jobcells";
import { INGREDIENT } from "../../src/job/fields/mix";
import { PIECE } from "../../src/job/fields/piece";
import { PIGMENT } from "../../src/job/fields/pigment";
import type { Recorded } from "../../src/sheets/messages";
import {
	beside,
	cellOf,
	cellsOf,
	checksOf,
	numberAt,
	type Place,
	typed,
	under,
	valueAt,
} from "../job/found";
import { BATCH, BINDER, onScale, PARTS, slab } from "./onejob";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [
		{ ...slab, pieces: [{ ...slab.pieces[0], quantity: 2 }] },
	]);
	// So that each slab is a load.
	await type([cellOf("Studio.mixer_capacity"), "130"]);
}, 120_000);
afterAll(() => desk.dispose());

const CARD = "1 Pour card";
const value = (place: Place) => valueAt(desk, ...place);
const number = (place: Place) => numberAt(desk, ...place);
const type = (...entries: (readonly [place: Place, text: string])[]) =>
	typed(desk, ...entries.map(([place, text]) => [...place, text] as const));
const check = (what: string) => checksOf(desk).get(what) ?? "";

/** The column of a field in its table. */
const column = (fields: object, key: string) =>
	Object.keys(fields).indexOf(key);
/** The invented white mix stands below the six ingredients of the first. */
const ofMix = (ingredient: number, key: keyof typeof INGREDIENT) =>
	cellOf("Mixes.mixes", 6 + ingredient, column(INGREDIENT, key));
const CEMENT = 0;
const POZZOLAN = 1;
const SAND = 2;
const WATER = 3;
const QUANTITY = cellOf("Job.pieces", 0, column(PIECE, "quantity"));

/** What is typed for a load. */
const ofLoad = (key: string, load = 1) =>
	cellOf(`Pour card.${key}`, 0, load - 1);
const weighed = (ingredient: number, load = 1) =>
	cellOf("Pour card.weighed", ingredient, load - 1);
const weighedStep = (step: number, load = 1) =>
	cellOf("Pour card.steps", step, load - 1);

/** What the card shows. */
const CHOSEN = cellOf("Pour card.load");
const SAYS = cellOf("Pour card.card_check");
const fact = (label: string) => beside(desk, CARD, label);
/** Facts of the times stand from their title on: out of sight each stands once more, further up. */
const timeFact = (label: string) =>
	beside(desk, CARD, label, "Fresh tests and times");
const onCard = (row: string, heading = "On the scale") =>
	under(desk, CARD, heading, row);
const ofIngredient = (ingredient: number, heading?: string) =>
	onCard(`Weighed ${ingredient + 1}`, heading);
/** The card's last row of ingredients is the ice's. */
const iceRow = () => value(ofIngredient(CARD_ROWS.weighed - 1, "Do"));
const ofStep = (step: number, heading?: string) =>
	onCard(`Step ${step}`, heading);
/** The note in the row of a cell. */
const noteBeside = ([tab, cell]: Place) => {
	const [, first] = under(desk, CARD, "Note", 0);
	return value([tab, first.replace(/\d+/, /\d+/.exec(cell)?.[0] ?? "")]);
};

// Deep is a quarter with 4% of binder: 1% of all binder, and half as much water to wet it.
const HELD = BATCH * BINDER * 0.01 * 0.5;
const part = (parts: number) => (BATCH * parts) / PARTS;
const RESERVE = 0.03;
const MIX_DIVISION = 0.02;

describe("weigh out", { timeout: 60_000 }, () => {
	test("a load a slab, its pigment's water held back", () => {
		expect(value(cellOf("Pour card.load", 0, 3))).toBe("of 2");
		expect(number(fact("Mix in this load"))).toBeCloseTo(BATCH, 9);
		expect(number(fact("Water held for pigment"))).toBeCloseTo(HELD, 9);
		expect(number(ofIngredient(WATER))).toBeCloseTo(
			onScale(part(15.5) - HELD, MIX_DIVISION),
			9,
		);
		const mixer = BATCH - HELD;
		const reserve = onScale(mixer * RESERVE, MIX_DIVISION);
		expect(number(fact("Reserve, undosed"))).toBeCloseTo(reserve, 9);
		expect(number(fact("Mix to tone, undosed"))).toBeCloseTo(
			mixer - reserve,
			9,
		);
	});

	test("damp sand: more of it, less water", async () => {
		expect(value(ofMix(SAND, "ingredient"))).toBe("Fine sand");
		// 5% water in it, of which it soaks up 1% itself.
		await type(
			[ofMix(SAND, "moisture"), "5%"],
			[ofMix(SAND, "absorption"), "1%"],
		);
		const sand = part(46);
		expect(number(ofIngredient(SAND))).toBeCloseTo(
			onScale(sand * 1.05, 0.02),
			9,
		);
		expect(number(ofIngredient(WATER))).toBeCloseTo(
			onScale(part(15.5) - HELD - sand * 0.04, 0.02),
			9,
		);
		// What it soaked up is in the mixer besides: the mix is heavier by 1% of the sand.
		const mixer = BATCH - HELD + sand * 0.01;
		const reserve = onScale(mixer * RESERVE, MIX_DIVISION);
		expect(number(fact("Mix to tone, undosed"))).toBeCloseTo(
			mixer - reserve,
			9,
		);
		// Umber for the mixer's chain: all binder is in the heavier mass, a quarter of what is toned gets 4%, wetted.
		const toned = mixer - reserve;
		expect(value(ofStep(2, "Do"))).toBe("Add Umber to the mixer");
		expect(number(ofStep(2))).toBeCloseTo(
			onScale(
				toned * 0.25 * ((BINDER * BATCH) / mixer) * 0.04 * 1.5 * 1000,
				0.1,
			),
			9,
		);
		await type(
			[ofMix(SAND, "moisture"), "wet"],
			[ofMix(SAND, "absorption"), ""],
		);
		const why = /^Look: .*moisture must be a number, got "wet"/;
		expect(value(SAYS)).toMatch(why);
		expect(value(ofIngredient(CEMENT, "Do"))).toMatch(why);
		expect(value(ofIngredient(CEMENT))).toBe("");
		expect(desk.errors()).toEqual([]);
		await type([ofMix(SAND, "moisture"), ""]);
		expect(number(ofIngredient(SAND))).toBeCloseTo(onScale(sand, 0.02), 9);
	});

	test("too much of one raises the others, and says how much more", async () => {
		const cement = part(46);
		await type(
			[weighed(CEMENT), String(cement)],
			[weighed(SAND), String(cement * 1.1)],
		);
		expect(number(ofIngredient(CEMENT))).toBeCloseTo(
			onScale(cement * 1.1, MIX_DIVISION),
			9,
		);
		const more = Math.round(cement * 0.1 * 100) / 100;
		expect(value(ofIngredient(CEMENT, "Note"))).toBe(`Look: ${more} kg more`);
		await type([weighed(CEMENT), ""], [weighed(SAND), ""]);
	});
});

describe("a mix that would get warm", { timeout: 60_000 }, () => {
	// ACI 305R: solids count 0.22 of water; ice takes 80 kcal/kg. 20 is the studio's wanted temperature.
	const solids = part(46 + 8 + 46 + 0.7 + 0.35) * 0.22;
	const water = part(15.5 + 0.9) - HELD;
	const mixAt = () => fact("Mix will be at");

	test("how cold the water must be, and how warm the mix is with what there is", async () => {
		await type(
			[ofLoad("dryTemperature"), "26"],
			[ofLoad("waterTemperature"), "18"],
		);
		expect(number(fact("Water to be at"))).toBeCloseTo(
			(20 * (solids + water) - solids * 26) / water,
			9,
		);
		expect(number(mixAt())).toBeCloseTo(
			(solids * 26 + water * 18) / (solids + water),
			9,
		);
		expect(noteBeside(mixAt())).toBe("Look: warmer than wanted");
		expect(check("The mix is not too warm")).toBe("Look: warmer than wanted");
	});

	test("ice in place of as much water", async () => {
		await type([ofLoad("ice"), "yes"]);
		const ice = (solids * 26 + water * 18 - 20 * (solids + water)) / (18 + 80);
		expect(number(onCard(ICE))).toBeCloseTo(onScale(ice, MIX_DIVISION), 9);
		expect(number(ofIngredient(WATER))).toBeCloseTo(
			onScale(part(15.5) - HELD - ice, MIX_DIVISION),
			9,
		);
		expect(number(mixAt())).toBeCloseTo(20, 9);
		expect(number(fact("Mix to tone, undosed"))).toBeCloseTo(
			BATCH - HELD - onScale((BATCH - HELD) * RESERVE, MIX_DIVISION),
			9,
		);
	});

	test("is a matter of its load", async () => {
		expect(iceRow()).toBe(ICE);
		await type([CHOSEN, "2"]);
		expect(iceRow()).toBe("");
		await type([CHOSEN, "1"]);
		expect(value(ofLoad("ice"))).toBe("yes");
		expect(iceRow()).toBe(ICE);
	});

	test("a word for a temperature stops the card, in words", async () => {
		await type([ofLoad("dryTemperature"), "hot"]);
		const why = /^Look: .*must be a number, got "hot"/;
		expect(noteBeside(mixAt())).toMatch(why);
		expect(value(ofIngredient(CEMENT, "Do"))).toMatch(why);
		expect(value(ofIngredient(CEMENT))).toBe("");
		expect(value(SAYS)).toMatch(why);
		expect(check("Everything calculates")).toMatch(why);
		expect(desk.errors()).toEqual([]);
		await type(
			[ofLoad("dryTemperature"), ""],
			[ofLoad("waterTemperature"), ""],
			[ofLoad("ice"), ""],
		);
		expect(check("Everything calculates")).toBe("fine");
	});
});

describe("which load", { timeout: 60_000 }, () => {
	test("is asked for where none is chosen, and nothing is weighed by it", async () => {
		await type([CHOSEN, ""]);
		const ask = "not known yet: choose the load";
		expect(value(SAYS)).toBe(ask);
		expect(value(fact("In this load"))).toBe(ask);
		expect([value(ofIngredient(CEMENT)), value(ofStep(1))]).toEqual(["", ""]);
		expect(desk.errors()).toEqual([]);
		await type([CHOSEN, "1"]);
		expect(value(fact("In this load"))).toBe("Slab");
	});

	test("a job that cannot be worked out is said, not shown as an error", async () => {
		await type([QUANTITY, "-2"]);
		const why = /^Look: .*must be .*, got -2/;
		expect(value(SAYS)).toMatch(why);
		expect(check("Everything calculates")).toMatch(why);
		expect(desk.errors()).toEqual([]);
		await type([QUANTITY, "2"]);
		expect(check("Everything calculates")).toBe("fine");
		// One piece is there; how many lift the others is not said.
		const [tab, first] = under(desk, "1 Job", "People, or equipment", 0);
		expect(valueAt(desk, tab, first)).not.toBe("");
		for (let row = 1; row < 12; row++)
			expect(value(under(desk, "1 Job", "People, or equipment", row))).toBe("");
	});
});

describe("time", { timeout: 60_000 }, () => {
	const stepsFit = () => noteBeside(timeFact("Still to do, minutes"));

	test("works for so long at the temperature measured, counted from water in", async () => {
		await type(
			[ofLoad("mixTemperature"), "27"],
			[ofLoad("waterInAt"), "9:40"],
			[ofLoad("lastPlacedAt"), "10:20"],
		);
		// 45 minutes at 20 °C are 45 × exp(5000 (1/300.15 − 1/293.15)) = 30.23 minutes at 27 °C.
		expect(number(timeFact("Working time, minutes"))).toBeCloseTo(
			45 * Math.exp(5000 * (1 / 300.15 - 1 / 293.15)),
			9,
		);
		expect(value(timeFact("Place the last tone by"))).toBe("10:10");
		expect(noteBeside(ofLoad("lastPlacedAt"))).toBe(
			"Look: 40 minutes after water in",
		);
	});

	test("three steps of a minute and a half fit, sixty minutes do not", async () => {
		// 6 minutes to mix, then Plain is pulled off, Umber added, Deep kept; the last tone is placed.
		expect(number(timeFact("Still to do, minutes"))).toBe(10.5);
		expect(stepsFit()).toBe("fine");
		await type([cellOf("Studio.step_minutes"), "20"]);
		expect(stepsFit()).toBe(
			"Look: mixing 6, 3 steps 60 and placing 10 take 76 minutes, longer than the mix works (30)",
		);
		expect(check("The steps fit in the working time")).toBe(
			"Look: mixing 6, 3 steps 60 and placing 10 take 76 minutes, longer than the mix works (30)",
		);
		await type([cellOf("Studio.step_minutes"), "1.5"]);
	});

	test("minutes since the load before, past midnight too", async () => {
		const since = () => value(timeFact("Minutes since last load"));
		await type([CHOSEN, "2"], [ofLoad("waterInAt", 2), "11:25"]);
		expect(since()).toBe(105);
		await type(
			[ofLoad("waterInAt"), "23:50"],
			[ofLoad("waterInAt", 2), "0:20"],
		);
		expect(since()).toBe(30);
		await type([CHOSEN, "1"], [ofLoad("waterInAt"), "9-40"]);
		expect(value(timeFact("Place the last tone by"))).toMatch(
			/^Look: .*must be a time like 9:40, got "9-40"/,
		);
		// Some write a time with a point.
		await type([ofLoad("waterInAt"), "9.40"]);
		expect(value(timeFact("Place the last tone by"))).toBe("10:10");
		await type([ofLoad("waterInAt"), "9:40"], [ofLoad("waterInAt", 2), ""]);
	});
});

describe("pull off and dose", { timeout: 60_000 }, () => {
	const mixer = BATCH - HELD;
	const binder = (BINDER * BATCH) / mixer;
	const fits = () => value(fact("Weighed by this plan"));

	test("a reserve first; what it came to changes all that follows", async () => {
		expect(value(ofStep(0, "Do"))).toBe("Pull off a reserve, cover it");
		await type([weighedStep(0), "5"]);
		expect(number(fact("Mix to tone, undosed"))).toBeCloseTo(mixer - 5, 9);
		expect(number(ofStep(1))).toBeCloseTo(
			onScale((mixer - 5) * 0.75, MIX_DIVISION),
			9,
		);
	});

	test("too much pigment is said, with what would save the tone", async () => {
		const deep = (mixer - 5) * 0.25;
		const planned = deep * binder * 0.04 * 1.5 * 1000;
		// 20% more than planned: a fifth of the tone as undosed mix brings it back.
		await type([weighedStep(2), String(planned * 1.2)]);
		const shown = (kg: number) => Number(onScale(kg, 0.02).toFixed(2));
		// The reserve of 5 kg is less: with it the dose is 4.8% × deep / (deep + 5); of 25 kg it brings all back.
		const still = (deep * 1.2) / (deep + 5) - 1;
		const kept = 25 * (1 + binder * 0.04 * 1.5 * 1.2);
		expect(value(ofStep(3, "Note"))).toBe(
			`Look: 20% too strong: it needs ${shown(deep * 0.2)} kg of undosed mix; the reserve has 5 kg, with which it is still ${Number((still * 100).toFixed(1))}% too strong. Scoop out all but ${shown(kept)} kg first and that is enough, or mix more without pigment`,
		);
		// What can be placed of the last tone: all but the 0.3 kg that stick.
		expect(number(ofStep(3))).toBeCloseTo(
			onScale(deep * (1 + binder * 0.04 * 1.5 * 1.2) - 0.3, MIX_DIVISION),
			9,
		);
		expect(number(timeFact("Still to do, minutes"))).toBe(3);
	});

	test("weights without a plan's number, or of another plan, are said loudly", async () => {
		expect(fits()).toBe("Look: no number typed");
		expect(value(SAYS)).toMatch(/^Look: Deep: 20% too strong/);
		await type([ofLoad("planNumber"), String(value(onCard("Plan number")))]);
		expect(fits()).toBe("the same");
		for (const [place, other, own] of [
			// Deep's dose of Umber; how much water wets Umber; cement's parts; binder in the pozzolan.
			[cellOf("Tones.tones", 1, 2), "3%", "4%"],
			[cellOf("Pigments.pigments", 0, column(PIGMENT, "water")), "0.4", "0.5"],
			[ofMix(CEMENT, "parts"), "47", "46"],
			[ofMix(POZZOLAN, "binderShare"), "90%", "100%"],
		] as const) {
			await type([place, other]);
			expect(fits(), place.join(" ")).toBe("Look: another plan");
			expect(value(SAYS)).toMatch(/^Look: weights were typed for/);
			await type([place, own]);
			expect(fits(), place.join(" ")).toBe("the same");
		}
	});

	test("a correction is typed under its load: what it came to, and what is left of the reserve", async () => {
		const ofCorrection = (row: number) =>
			cellOf("Pour card.corrections", row, 0);
		const left = () => number(fact("Reserve left"));
		expect(left()).toBeCloseTo(5, 9);
		await type([ofCorrection(0), "Deep"], [ofCorrection(1), "6"]);
		expect(value(SAYS)).toBe(
			"Look: correction 1: 6 kg folded in is more than the 5 kg that is left of the reserve",
		);
		await type([ofCorrection(1), "4.5"]);
		expect(left()).toBeCloseTo(0.5, 9);
		const deep = (mixer - 5) * 0.25;
		const dose = (0.048 * deep) / (deep + 4.5);
		const [tab, first] = under(desk, CARD, "Undosed", 0);
		const down = 1;
		const row = Number(/\d+/.exec(first)?.[0]) + down;
		expect(number([tab, `P${row}`])).toBeCloseTo(deep + 4.5, 8);
		expect(value([tab, `B${row}`])).toBe("Deep");
		expect(String(value([tab, `N${row}`]))).toContain(
			`Look: Umber ${Number((dose * 100).toFixed(2))}%, `,
		);
	});

	test("a load without weights has none of another's", async () => {
		await type([CHOSEN, "2"]);
		expect(number(ofStep(2))).toBeCloseTo(
			onScale(
				(mixer - onScale(mixer * RESERVE, MIX_DIVISION)) *
					0.25 *
					binder *
					0.04 *
					1.5 *
					1000,
				0.1,
			),
			9,
		);
		await type([CHOSEN, "1"]);
		expect(number(weighedStep(2))).toBeGreaterThan(0);
	});

	test("the row of the Pour log says what this load was; a load without weights gets none", async () => {
		await type(
			[ofLoad("spread"), "610"],
			[ofLoad("airTemperature"), "22"],
			[ofLoad("weighedBy"), "Both of us"],
			[ofLoad("lots"), "U-7"],
			[ofLoad("result"), "even"],
			[ofLoad("finished"), "yes"],
			[ofLoad("finished", 2), "yes"],
		);
		expect((await desk.call("recordPour", [1])) as Recorded).toEqual({
			loads: [1],
			left: ["Load 2 has no weights yet"],
		});
		const deep = (mixer - 5) * 0.25;
		const folded = (0.048 * deep) / (deep + 4.5);
		const [row = [], ...others] = desk
			.read(...cellsOf("Pour log.pours", 300, 17))
			.filter(([, job]) => job === 1) as CellValue[][];
		expect(others).toEqual([]);
		expect(row.slice(1, 9)).toEqual([
			1,
			"Nobody (invented) · Slab",
			1,
			"White casting mix, invented",
			`Plain: undosed; Deep: Umber ${Number((folded * 100).toFixed(2))}% (folded in 4.5 kg; wanted Umber 4%: ${Number(((folded / 0.04 - 1) * 100).toFixed(1))}% too strong); 1 of 2 weights not typed, taken as planned`,
			// A length is logged as it was typed.
			"610",
			27,
			22,
		]);
		// The pigment was 20% off, nothing else was weighed.
		expect(row[9]).toBeCloseTo(0.2, 9);
		expect(row.slice(10, 15)).toEqual(["", "Both of us", "U-7", "", "even"]);
	});
});
