/** The Tones tab of one slab with two tones, every number worked by hand beside it. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import {
	beside,
	cellOf,
	cleared,
	numberAt,
	type Place,
	typed,
	under,
	valueAt,
} from "../job/found";
import { BATCH, BINDER, ofTone, onScale, PARTS, slab } from "./onejob";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [slab]);
}, 120_000);
afterAll(() => desk.dispose());

const TONES = "1 Tones";
const value = (place: Place) => valueAt(desk, ...place);
const number = (place: Place) => numberAt(desk, ...place);
const type = (...entries: readonly (readonly [Place, string])[]) =>
	typed(desk, ...entries.map(([place, text]) => [...place, text] as const));

const SHARE = 1;
const DOSE = 2;
/** Where the share or the dose of the second tone is typed, and where a pigment of the studio is described. */
const deepTyped = (column: number) => cellOf("Tones.tones", 1, column);
const ofUmber = (heading: string) => under(desk, "Pigments", heading, "Umber");
const BASIS = "Its doses are of";
const SOLIDS = "Pigment in it";

/** Answers: of the mix, of a tone, of a pigment or all, of the sample. */
const ofMix = (label: string) => beside(desk, TONES, label);
const ofDeep = (heading: string) => ofTone(desk, "Deep", heading);
const ofPlain = (heading: string) => ofTone(desk, "Plain", heading);
const ofPigments = (row: string, heading = "Umber") =>
	under(desk, TONES, heading, row, "Pigments");
const ofSample = (row: string, heading = "Mix, undosed") =>
	under(desk, TONES, heading, row, "Sample of the same tones");
const sampleGrams = (ingredient: string) =>
	under(desk, TONES, "For the sample", ingredient, "Ingredient");
const check = () => value(ofMix("Check"));
const undosed = () => value(ofPlain("Undosed mix"));

/** A cell of the Pour card, its row by its key. */
const onCard = (row: string, heading: string) =>
	under(desk, "1 Pour card", heading, row);

/** Nothing is weighed by what is wrong: each tone and the card say it, and no cell shows an error. */
function saysEverywhere(why: RegExp) {
	expect(undosed()).toMatch(why);
	expect(value(cellOf("Pour card.card_check"))).toMatch(why);
	for (const row of ["Weighed 1", "Step 0"]) {
		expect(value(onCard(row, "Do"))).toMatch(why);
		expect(value(onCard(row, "On the scale"))).toBe("");
	}
	expect(desk.errors()).toEqual([]);
}

function isFine() {
	expect(check()).toBe("fine");
	expect(undosed()).toBeGreaterThan(0);
	expect(desk.errors()).toEqual([]);
}

describe("doses as the pigment's maker states them", {
	timeout: 60_000,
}, () => {
	test("of binder, a powder wetted with half a gram of water a gram", () => {
		expect(check()).toBe("fine");
		expect(value(ofPigments(BASIS))).toBe("of binder");
		// A quarter of the batch, 4% of its binder; 1.5 g on the scale a gram of dry pigment.
		const dry = BATCH * 0.25 * BINDER * 0.04 * 1000;
		expect(number(ofDeep("Umber, g"))).toBeCloseTo(dry * 1.5, 6);
		expect(number(ofPigments("Dry pigment in it"))).toBeCloseTo(dry, 6);
		expect(number(ofPigments("Water in it"))).toBeCloseTo(dry * 0.5, 6);
		expect(number(ofPigments("As bought"))).toBeCloseTo(dry, 6);
		// Water that comes with it, of the mix: 1% of binder dry, half of it.
		expect(number(ofMix("Water in the pigment"))).toBeCloseTo(
			BINDER * 0.01 * 0.5,
			12,
		);
		expect(number(ofDeep("Undosed mix"))).toBeCloseTo(
			BATCH * 0.25 * (1 - BINDER * 0.01 * 0.5),
			9,
		);
		// Together on the scale: the batch and the dry pigment, since the water is the batch's own.
		expect(number(under(desk, TONES, "On the scale", "Total"))).toBeCloseTo(
			BATCH + dry / 1000,
			9,
		);
	});

	test("of cement, which is 46 of 54 parts of binder", async () => {
		await type([ofUmber(BASIS), "cement"]);
		expect(value(ofPigments(BASIS))).toBe("of cement");
		const dry = BATCH * 0.25 * (46 / PARTS) * 0.04 * 1000;
		expect(number(ofPigments("Dry pigment in it"))).toBeCloseTo(dry, 6);
		// The limit is of cement too: 6% less the 4% as stated.
		expect(number(ofDeep("Below the limit by"))).toBeCloseTo(0.02, 12);
	});

	test("of the dry mix, fibers not counted: 46 + 8 + 46 parts", async () => {
		await type([ofUmber(BASIS), "dry mix"], [deepTyped(DOSE), "2%"]);
		const dry = BATCH * 0.25 * (100 / PARTS) * 0.02 * 1000;
		expect(number(ofPigments("Dry pigment in it"))).toBeCloseTo(dry, 6);
		expect(number(ofDeep("Below the limit by"))).toBeCloseTo(
			0.06 - 0.02 * (100 / 46),
			12,
		);
		await type([ofUmber(BASIS), "binder"], [deepTyped(DOSE), "4%"]);
	});

	test("a liquid with 40% pigment: weighed and bought as liquid, its water kept back", async () => {
		await type([ofUmber("Form"), "liquid"], [ofUmber("Water to wet it"), ""]);
		const why =
			/^Look: Umber: type the share of pigment in it on the Pigments tab$/;
		expect(value(ofPigments(SOLIDS))).toMatch(why);
		expect(check()).toMatch(why);
		saysEverywhere(why);
		await type([ofUmber(SOLIDS), "40%"]);
		const dry = BATCH * 0.25 * BINDER * 0.04 * 1000;
		expect(number(ofDeep("Umber, g"))).toBeCloseTo(dry / 0.4, 6);
		expect(number(ofPigments("As bought"))).toBeCloseTo(dry / 0.4, 6);
		expect(number(ofPigments("Water in it"))).toBeCloseTo((dry * 0.6) / 0.4, 6);
		expect(number(ofMix("Water in the pigment"))).toBeCloseTo(
			BINDER * 0.01 * 1.5,
			12,
		);
		// The limit knows dry pigment only.
		expect(number(ofDeep("Below the limit by"))).toBeCloseTo(
			0.06 - 0.04 / (46 / 54),
			12,
		);
		await type(
			[ofUmber("Form"), "powder"],
			[ofUmber(SOLIDS), ""],
			[ofUmber("Water to wet it"), "0.5"],
		);
	});
});

describe("mold lay-up", { timeout: 60_000 }, () => {
	// 50 liters, of which a core of 0.98 × 0.98 × 0.04 m stays as it is.
	const face = 1 - (0.98 ** 2 * 0.04) / 0.05;

	test("tones the faces and edges to a depth, and says what that saves", async () => {
		await type(
			[cellOf("Tones.faceDepth"), "1 cm"],
			[cellOf("Tones.backedWith"), "Plain"],
		);
		expect(number(ofMix("Toned face in the mix"))).toBeCloseTo(face, 12);
		const bucket = BATCH * BINDER * 0.01 * 1000;
		expect(number(ofPigments("Bucket fold, as bought"))).toBeCloseTo(bucket, 6);
		expect(number(ofPigments("Mold lay-up, as bought"))).toBeCloseTo(
			bucket * face,
			6,
		);
		expect(number(ofPigments("Lay-up saves", "Together"))).toBeCloseTo(
			bucket * (1 - face),
			6,
		);
		// 24 for 1000 g.
		expect(number(ofPigments("Lay-up saves", "Cost"))).toBeCloseTo(
			bucket * (1 - face) * 0.024,
			8,
		);
	});

	test("gives each tone its share of the whole, the backing all that is behind", async () => {
		await type([cellOf("Tones.placing"), "mold lay-up"]);
		expect(check()).toBe("fine");
		// Less the water of the pigment, which is half of the dry.
		const undosedMix = BATCH * (1 - BINDER * 0.01 * face * 0.5);
		expect(number(ofPlain("Undosed mix"))).toBeCloseTo(
			undosedMix * (0.75 * face + 1 - face),
			9,
		);
		expect(number(ofDeep("Undosed mix"))).toBeCloseTo(
			undosedMix * 0.25 * face,
			9,
		);
		expect(number(ofPigments("Dry pigment in it"))).toBeCloseTo(
			BATCH * BINDER * 0.01 * face * 1000,
			6,
		);
		await type([cellOf("Tones.backedWith"), "Gone"]);
		expect(check()).toBe("Look: choose the tone that backs it");
		await type(
			[cellOf("Tones.backedWith"), ""],
			[cellOf("Tones.faceDepth"), ""],
		);
		expect(check()).toBe("Look: type how deep the toned face is");
		saysEverywhere(/^Look: type how deep the toned face is$/);
		await type([cellOf("Tones.placing"), "bucket fold"]);
		isFine();
	});
});

test("the sample is the smallest that both scales dose to 5%", async () => {
	// Two readings of each scale, d/√12 a reading; Deep is a quarter of the sample and takes 4% × 1.5 of its binder in grams.
	const gramsAKg = BINDER * 0.04 * 1.5 * 1000;
	const deep =
		((2 * Math.sqrt(2)) / Math.sqrt(12) / 0.05) *
		Math.hypot(0.1 / gramsAKg, 0.02);
	const sample = Math.ceil(deep / 0.25 / 0.02) * 0.02;
	expect(
		number(ofSample("Smallest the scales dose within 5% (k = 2)")),
	).toBeCloseTo(sample, 9);
	expect(number(ofSample("Sample batch"))).toBeCloseTo(sample, 9);
	const water = BINDER * 0.01 * 0.5;
	expect(number(ofSample("Deep"))).toBeCloseTo(
		onScale(sample * 0.25 * (1 - water), 0.02),
		9,
	);
	expect(number(ofSample("Deep", "Umber"))).toBeCloseTo(
		onScale(sample * 0.25 * gramsAKg, 0.1),
		9,
	);
	// White cement, and water less what comes with the pigment, of 2 kg, in grams.
	await type([cellOf("Tones.sampleMass"), "2"]);
	expect(number(sampleGrams("White cement"))).toBeCloseTo(
		onScale((2000 * 46) / PARTS, 0.1),
		9,
	);
	expect(number(sampleGrams("Water"))).toBeCloseTo(
		onScale(2000 * (15.5 / PARTS - water), 0.1),
		9,
	);
	await type([cellOf("Tones.sampleMass"), "0.1"]);
	expect(value(ofSample("Sample batch", "Note"))).toMatch(/^Look: too small/);
	await type([cellOf("Tones.sampleMass"), ""]);
}, 60_000);

test("bands halve with each fold, and blur from afar", () => {
	// 40 / 2³; an arcminute at 2 m is 0.582 mm: 40 / 2⁶ = 0.625 is wider, 40 / 2⁷ finer.
	expect(number(ofMix("Bands after the folds"))).toBe(5);
	expect(number(ofMix("Folds until they blur"))).toBe(7);
});

describe("expected colors", { timeout: 60_000 }, () => {
	const swatch = (line: number, cells: Record<string, string>) =>
		Object.entries({
			Mix: "White casting mix, invented",
			Finish: "cast",
			Sealed: "bare",
			State: "dry",
			...cells,
		}).map(
			([heading, text]) =>
				[under(desk, "Swatches", heading, line), text] as const,
		);

	test("say so where there are none", async () => {
		await cleared(desk, "Swatches.swatch_pigments", 1, 8);
		await cleared(desk, "Swatches.swatches", 20, 17);
		const why =
			"not known yet: no swatch of the studio's own has a color: cast samples and note them on the Swatches tab";
		expect(value(ofPlain("Expected color"))).toBe(why);
		expect(value(ofPlain("Told from the others"))).toBe(why);
		expect(value(ofMix("Swatches used"))).toBe(why);
		expect(value(ofMix("Color across the room"))).toBe(
			"not known yet: it needs the color of every tone",
		);
		expect(check()).toBe("fine");
	});

	test("come from the studio's swatches of the same kind", async () => {
		// Pair 7 of the CIEDE2000 test data (Sharma, Wu and Dalal 2005): 2.3669.
		await type(
			[cellOf("Swatches.swatch_pigments", 0, 0), "Black"],
			[cellOf("Swatches.swatch_pigments", 0, 1), "Umber"],
		);
		await type(
			...swatch(0, { Umber: "0", Color: "50, 0, 0" }),
			...swatch(1, { Umber: "4%", Color: "50, -1, 2" }),
			...swatch(2, { Umber: "4%", Color: "20, 0, 0", Sealed: "sealed" }),
			...swatch(3, { Black: "2%", Color: "30, 0, 0" }),
		);
		expect(value(ofPlain("Expected color"))).toBe("#777777");
		expect(value(ofDeep("Most like"))).toBe("Plain");
		expect(number(ofDeep("Differs by"))).toBeCloseTo(2.3669, 4);
		expect(value(ofDeep("Told from the others"))).toBe(
			"seen close by, lost across the room",
		);
		expect(value(ofMix("Swatches used"))).toBe(
			"2 of 4 swatches used; left out: 1 of another sealing, 1 with other pigments",
		);
		expect(value(ofMix("Color across the room"))).toMatch(/^#[0-9a-f]{6}$/);
	});

	test("are not known past the strongest swatch, and say it", async () => {
		await type([deepTyped(DOSE), "5%"]);
		const why =
			"not known yet: its color: past the strongest swatch of Umber, 4% of binder";
		expect(value(ofDeep("Expected color"))).toBe(why);
		expect(value(ofDeep("Told from the others"))).toBe(why);
		expect(value(ofDeep("Differs by"))).toBe(why);
		expect(value(ofPlain("Expected color"))).toBe("#777777");
		expect(value(ofMix("Color across the room"))).toBe(
			"not known yet: it needs the color of every tone",
		);
		await type([deepTyped(DOSE), "4%"]);
	});
});

describe("what cannot be", { timeout: 60_000 }, () => {
	test.each([
		{
			what: "dose",
			column: DOSE,
			bad: "200%",
			good: "4%",
			why: /^Look: the dose of Umber in Deep must be between 0% and 20%, got 200%/,
		},
		{
			what: "dose",
			column: DOSE,
			bad: "dark",
			good: "4%",
			why: /^Look: the dose of Umber in Deep must be a number, got "dark"$/,
		},
		{
			what: "share",
			column: SHARE,
			bad: "much",
			good: "25%",
			why: /^Look: Deep: share must be a number, got "much"$/,
		},
	])(
		"a $what of $bad is said in words, and nothing is weighed by it",
		async ({ column, bad, good, why }) => {
			await type([deepTyped(column), bad]);
			expect(check()).toMatch(why);
			saysEverywhere(why);
			await type([deepTyped(column), good]);
			isFine();
		},
	);

	test("a pigment that the studio does not have", async () => {
		await type([cellOf("Tones.pigments"), "Moss"]);
		expect(check()).toBe("Look: Moss is not on the Pigments tab: add it there");
		saysEverywhere(/^Look: Moss is not on the Pigments tab: add it there$/);
		await type([cellOf("Tones.pigments"), "Umber"]);
		isFine();
	});

	test.each([
		[BASIS, "of the sand", "binder"],
		[SOLIDS, "140%", ""],
		[SOLIDS, "most", ""],
	])("%s, on the Pigments tab, as %s", async (heading, bad, good) => {
		await type([ofUmber(heading), bad]);
		const why = new RegExp(`^Look: Umber on the Pigments tab: .*${bad}`);
		expect(check()).toMatch(why);
		saysEverywhere(why);
		await type([ofUmber(heading), good]);
		isFine();
	});

	test("a mix that is not there", async () => {
		await type([cellOf("Tones.mix"), "Mud"]);
		expect(check()).toBe("Look: there is no mix Mud on the Mixes tab");
		saysEverywhere(/^Look: .*there is no mix Mud on the Mixes tab$/);
		await type([cellOf("Tones.mix"), "White casting mix, invented"]);
		isFine();
	});
});
