/** The Pour card of one slab with two tones, every number worked by hand beside it. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { BATCH, BINDER, hands, onScale, PARTS, slab } from "./onejob";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [
		{ ...slab, pieces: [{ ...slab.pieces[0], quantity: 2 }] },
	]);
	// So that each slab is a load.
	await set("Mixer capacity", "130");
}, 120_000);
afterAll(() => desk.dispose());

const { value, number, sentence, type, errors } = hands(() => desk);
const CARD = "1 Pour card";
const on = (cell: string, text: string) => [CARD, cell, text] as const;

/** Types a setting of the Studio tab, found by the label in front of it. */
async function set(label: string, text: string) {
	let row = 1;
	while (!String(value("Studio", `A${row}`)).startsWith(label)) row += 1;
	await type([["Studio", `B${row}`, text]]);
}

// Deep is a quarter with 4% of binder: 1% of all binder, and half as much water to wet it.
const HELD = BATCH * BINDER * 0.01 * 0.5;
const part = (parts: number) => (BATCH * parts) / PARTS;
const RESERVE = 0.03;
const MIX_DIVISION = 0.02;

describe("weigh out", { timeout: 60_000 }, () => {
	test("a load a slab, its pigment's water held back", () => {
		expect(value(CARD, "E3")).toBe("of 2");
		expect(number(CARD, "C6")).toBeCloseTo(BATCH, 9);
		expect(number(CARD, "C7")).toBeCloseTo(HELD, 9);
		expect(number(CARD, "C23")).toBeCloseTo(
			onScale(part(15.5) - HELD, MIX_DIVISION),
			9,
		);
		const mixer = BATCH - HELD;
		const reserve = onScale(mixer * RESERVE, MIX_DIVISION);
		expect(number(CARD, "C8")).toBeCloseTo(reserve, 9);
		expect(number(CARD, "C9")).toBeCloseTo(mixer - reserve, 9);
	});

	test("damp sand: more of it, less water", async () => {
		// Row 13 of Mixes is the fine sand: 5% water in it, of which it soaks up 1% itself.
		expect(value("Mixes", "B13")).toBe("Fine sand");
		await type([
			["Mixes", "I13", "5%"],
			["Mixes", "J13", "1%"],
		]);
		const sand = part(46);
		expect(number(CARD, "C22")).toBeCloseTo(onScale(sand * 1.05, 0.02), 9);
		expect(number(CARD, "C23")).toBeCloseTo(
			onScale(part(15.5) - HELD - sand * 0.04, 0.02),
			9,
		);
		// What it soaked up is in the mixer besides: the mix is heavier by 1% of the sand.
		const mixer = BATCH - HELD + sand * 0.01;
		const reserve = onScale(mixer * RESERVE, MIX_DIVISION);
		expect(number(CARD, "C9")).toBeCloseTo(mixer - reserve, 9);
		// Umber for the mixer's chain: all binder is in the heavier mass, a quarter of what is toned gets 4%, wetted.
		const toned = mixer - reserve;
		expect(value(CARD, "B66")).toBe("Add Umber to the mixer");
		expect(number(CARD, "C66")).toBeCloseTo(
			onScale(
				toned * 0.25 * ((BINDER * BATCH) / mixer) * 0.04 * 1.5 * 1000,
				0.1,
			),
			9,
		);
		await type([
			["Mixes", "I13", "wet"],
			["Mixes", "J13", ""],
		]);
		expect(sentence(CARD, "U20")).toMatch(/moisture must be a number/);
		expect(desk.errorAt(CARD, "C20")).toBeDefined();
		await type([["Mixes", "I13", ""]]);
		expect(errors()).toEqual([]);
	});

	test("too much of one raises the others, and says how much more", async () => {
		const cement = part(46);
		await type([on("E20", String(cement)), on("E22", String(cement * 1.1))]);
		expect(number(CARD, "C20")).toBeCloseTo(
			onScale(cement * 1.1, MIX_DIVISION),
			9,
		);
		const more = Math.round(cement * 0.1 * 100) / 100;
		expect(value(CARD, "M20")).toBe(`Look: ${more} kg more`);
		await type([on("E20", ""), on("E22", "")]);
	});
});

describe("a mix that would get warm", { timeout: 60_000 }, () => {
	// ACI 305R: solids count 0.22 of water; ice takes 80 kcal/kg. 20 is the studio's wanted temperature.
	const solids = part(46 + 8 + 46 + 1.4 + 0.7) * 0.22;
	const water = part(15.5 + 0.9) - HELD;

	test("how cold the water must be, and how warm the mix is with what there is", async () => {
		await type([on("E14", "26"), on("E15", "18")]);
		expect(number(CARD, "C17")).toBeCloseTo(
			(20 * (solids + water) - solids * 26) / water,
			9,
		);
		expect(number(CARD, "C18")).toBeCloseTo(
			(solids * 26 + water * 18) / (solids + water),
			9,
		);
		expect(value(CARD, "M18")).toBe("Look: warmer than wanted");
	});

	test("ice in place of as much water", async () => {
		await type([on("E16", "yes")]);
		const ice = (solids * 26 + water * 18 - 20 * (solids + water)) / (18 + 80);
		expect(number(CARD, "C32")).toBeCloseTo(onScale(ice, MIX_DIVISION), 9);
		expect(number(CARD, "C23")).toBeCloseTo(
			onScale(part(15.5) - HELD - ice, MIX_DIVISION),
			9,
		);
		expect(number(CARD, "C18")).toBeCloseTo(20, 9);
		expect(number(CARD, "C9")).toBeCloseTo(
			BATCH - HELD - onScale((BATCH - HELD) * RESERVE, MIX_DIVISION),
			9,
		);
	});

	test("is a matter of its load", async () => {
		await type([on("C3", "2")]);
		expect(value(CARD, "C32")).toBe("");
		await type([on("C3", "1")]);
		expect(value(CARD, "E16")).toBe("yes");
	});

	test("a word for a temperature stops the card, in words", async () => {
		await type([on("E14", "hot")]);
		expect(sentence(CARD, "C18")).toMatch(/must be a number, got "hot"/);
		expect(desk.errorAt(CARD, "C20")).toBeDefined();
		expect(value(CARD, "A2")).toMatch(/^Look: a cell below shows an error/);
		expect(value("1 Job", "D49")).toMatch(/shows an error on the Pour card:/);
		await type([on("E14", ""), on("E15", ""), on("E16", "")]);
		expect(errors()).toEqual([]);
	});
});

describe("which load", { timeout: 60_000 }, () => {
	test("is asked for where none is chosen, and nothing is weighed by it", async () => {
		await type([on("C3", "")]);
		expect(value(CARD, "A2")).toBe("Look: choose the load above");
		expect([value(CARD, "C20"), value(CARD, "A65")]).toEqual(["", ""]);
		expect(errors()).toEqual([]);
		await type([on("C3", "1")]);
		expect(value(CARD, "C5")).toBe("Slab");
	});

	test("a job that cannot be worked out is said, not shown as an error", async () => {
		await type([["1 Job", "B11", "-2"]]);
		expect(value(CARD, "A2")).toBe(
			"Look: the Job tab shows an error: see its checks",
		);
		expect(value("1 Job", "D49")).toBe(
			"Look: a cell shows an error under Face: point at it to read why",
		);
		await type([["1 Job", "B11", "2"]]);
		expect(errors()).toEqual([]);
		// One piece is there; how many lift the others is not said.
		expect(desk.read("1 Job", "X12:X30").flat().join("")).toBe("");
	});
});

describe("time", { timeout: 60_000 }, () => {
	test("works for so long at the temperature measured, counted from water in", async () => {
		await type([on("E46", "27"), on("E48", "9:40"), on("E49", "10:20")]);
		// 45 minutes at 20 °C are 45 × exp(5000 (1/300.15 − 1/293.15)) = 30.23 minutes at 27 °C.
		expect(number(CARD, "C54")).toBeCloseTo(
			45 * Math.exp(5000 * (1 / 300.15 - 1 / 293.15)),
			9,
		);
		expect(value(CARD, "C56")).toBe("10:10");
		expect(value(CARD, "M49")).toBe("Look: 40 minutes after water in");
	});

	test("three steps of a minute and a half fit, fifty minutes would not", async () => {
		// Plain is pulled off, Umber added, Deep kept.
		expect(number(CARD, "C55")).toBe(4.5);
		expect(value(CARD, "E55")).toBe("fine");
		await set("Minutes per step", "20");
		expect(value(CARD, "E55")).toBe(
			"Look: 3 steps take 60 minutes, longer than the mix works",
		);
		await set("Minutes per step", "1.5");
	});

	test("minutes since the load before, past midnight too", async () => {
		await type([on("C3", "2"), on("F48", "11:25")]);
		expect(value(CARD, "C57")).toBe(105);
		await type([on("E48", "23:50"), on("F48", "0:20")]);
		expect(value(CARD, "C57")).toBe(30);
		await type([on("C3", "1"), on("E48", "9.40")]);
		expect(value(CARD, "C56")).toBe("Look: type times like 9:40");
		await type([on("E48", "9:40"), on("F48", "")]);
	});
});

describe("pull off and dose", { timeout: 60_000 }, () => {
	const mixer = BATCH - HELD;
	const binder = (BINDER * BATCH) / mixer;

	test("a reserve first; what it came to changes all that follows", async () => {
		expect(value(CARD, "B64")).toBe("Pull off a reserve, cover it");
		await type([on("E64", "5")]);
		expect(number(CARD, "C9")).toBeCloseTo(mixer - 5, 9);
		expect(number(CARD, "C65")).toBeCloseTo(
			onScale((mixer - 5) * 0.75, MIX_DIVISION),
			9,
		);
	});

	test("too much pigment is said, with what would save the tone", async () => {
		const deep = (mixer - 5) * 0.25;
		const planned = deep * binder * 0.04 * 1.5 * 1000;
		// 20% more than planned: a fifth of the tone as undosed mix brings it back.
		await type([on("E66", String(planned * 1.2))]);
		const back = Number((deep * 0.2).toPrecision(4));
		expect(value(CARD, "M67")).toBe(
			`Look: 20% too strong: fold in ${back} kg of undosed mix to bring it back`,
		);
		// What can be placed of the last tone: all but the 0.3 kg that stick.
		expect(number(CARD, "C67")).toBeCloseTo(
			onScale(deep * (1 + binder * 0.04 * 1.5 * 1.2) - 0.3, MIX_DIVISION),
			9,
		);
		expect(number(CARD, "C55")).toBe(3);
	});

	test("weights without a plan's number, or of another plan, are said loudly", async () => {
		expect(value(CARD, "E11")).toBe("Look: none");
		expect(value(CARD, "A2")).toMatch(/^Look: type the plan number/);
		await type([on("E10", String(value(CARD, "C10")))]);
		expect(value(CARD, "E11")).toBe("same");
		for (const [tab, cell, other, own] of [
			["1 Tones", "C17", "3%", "4%"],
			["Pigments", "F5", "0.4", "0.5"],
			["Mixes", "C11", "47", "46"],
			["Mixes", "E12", "90%", "100%"],
		] as const) {
			await type([[tab, cell, other]]);
			expect(value(CARD, "E11"), `${tab} ${cell}`).toBe("Look: other");
			expect(value(CARD, "A2")).toMatch(/^Look: weights were typed for/);
			await type([[tab, cell, own]]);
			expect(value(CARD, "E11")).toBe("same");
		}
	});

	test("the row for the Pour log says what this load was", async () => {
		await type([
			on("E45", "610"),
			on("E47", "22"),
			on("E50", "Both of us"),
			on("E51", "U-7"),
			on("E53", "even"),
		]);
		const row = desk.read(CARD, "B60:R60")[0] ?? [];
		expect(row.slice(1, 9)).toEqual([
			1,
			"Nobody (invented) · Slab",
			1,
			"White casting mix, invented",
			expect.stringMatching(
				/^Plain: undosed; Deep: Umber 4% \(20% too strong: fold in .* kg .*\)$/,
			),
			610,
			27,
			22,
		]);
		// The pigment was 20% off, nothing else was weighed.
		expect(row[9]).toBeCloseTo(0.2, 9);
		expect(row.slice(10, 15)).toEqual(["", "Both of us", "U-7", "", "even"]);
	});

	test("a load without weights has none of another's", async () => {
		await type([on("C3", "2")]);
		expect(number(CARD, "C66")).toBeCloseTo(
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
		expect(desk.read(CARD, "B60:R60")[0]?.[9]).toBe("");
		await type([on("C3", "1")]);
		expect(Number(value(CARD, "E66"))).toBeGreaterThan(0);
	});
});
