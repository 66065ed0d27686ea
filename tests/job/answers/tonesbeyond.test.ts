/** Colors, lay-up, folds and the sample of the slab's tones, by hand or by printed numbers. */
import { describe, expect, test } from "vitest";
import { cardAnswers } from "../../../src/job/answers/card/cardanswers";
import { colorsAnswer } from "../../../src/job/answers/colors";
import { foldingAnswer } from "../../../src/job/answers/folding";
import { saying } from "../../../src/job/answers/known";
import { layUpAnswer } from "../../../src/job/answers/layup";
import { sampleAnswer } from "../../../src/job/answers/samplebatch";
import type { StudioFile } from "../../../src/job/studiofile";
import {
	BATCH,
	BINDER,
	DENSITY,
	onScale,
	PARTS,
	slab,
} from "../../sheets/onejob";
import { known, ROWS, slabCore, studio, withDampSand } from "./slabjob";

describe("colors", () => {
	const swatch = (umber: number, color: string, other: object = {}) => ({
		mix: slab.mix,
		finish: "cast",
		sealed: "bare",
		state: "dry",
		doses: { Umber: umber },
		color,
		...other,
	});
	const withSwatches = (...swatches: StudioFile["swatches"] & object) => ({
		...studio,
		swatchPigments: ["Umber"],
		swatches,
	});

	// Sharma, Wu and Dalal (2005), table 1: pairs 25, 16 and 20; the tones are dosed as the two swatches.
	test.each([
		[
			"60.2574, -34.0099, 36.2677",
			"60.4626, -34.1751, 39.4387",
			1.2644,
			"Look: hard to tell from Deep",
		],
		[
			"50, 2.5, 0",
			"50, 0, -2.5",
			4.3065,
			"seen close by, lost across the room",
		],
		["50, 2.5, 0", "58, 24, 15", 19.4535, "stands apart across the room"],
	])("%s and %s", (plain, deep, difference, say) => {
		const basis = slabCore(
			{},
			withSwatches(swatch(0, plain), swatch(0.04, deep)),
		);
		const [one, other] = colorsAnswer(basis).tones;
		expect(one && known(one.nearest)?.difference).toBeCloseTo(difference, 4);
		expect(one?.toldApart.say).toBe(say);
		expect(other && known(other.nearest)?.name).toBe("Plain");
	});

	test("from across the room: black and white at one half and one half", () => {
		// IEC 61966-2-1: half of white's light is 1.055 × 0.5^(1/2.4) − 0.055 = 0.735, 188 of 255.
		const basis = slabCore(
			{
				tones: [
					{ name: "Plain", share: 0.3 },
					{ name: "Deep", share: 0.3, doses: { Umber: 0.04 } },
				],
			},
			withSwatches(swatch(0, "#ffffff"), swatch(0.04, "#000000")),
		);
		expect(known(colorsAnswer(basis).far)).toBe("#bcbcbc");
	});

	test("what the swatches do not reach is not known, and why", () => {
		const { tones, far, used } = colorsAnswer(
			slabCore(
				{},
				withSwatches(
					swatch(0, "#ffffff"),
					swatch(0.02, "#888888"),
					swatch(0.04, "#222222", { finish: "honed" }),
				),
			),
		);
		expect(tones[0]?.color).toEqual({ is: "#ffffff" });
		expect(tones[0]?.toldApart.state).toBe("unknown");
		expect(tones[1]?.toldApart).toEqual({
			state: "unknown",
			say: "not known yet: its color: past the strongest swatch of Umber, 2% of binder",
		});
		expect(far).toHaveProperty("missing");
		expect(known(used)).toBe(
			"2 of 3 swatches used; left out: 1 of another finish",
		);
	});

	test("swatches of the finish, sealing and state that the job has", () => {
		const its = withSwatches(
			swatch(0, "#ffffff"),
			swatch(0, "#eeeeee", { finish: "honed" }),
			swatch(0, "#dddddd", { finish: "honed", sealed: "sealed" }),
			swatch(0, "#cccccc", {
				finish: "honed",
				sealed: "sealed",
				state: "damp",
			}),
		);
		const plain = (changes: object) =>
			known(
				colorsAnswer(slabCore(changes, its)).tones[0]?.color ?? { missing: "" },
			);
		expect(plain({})).toBe("#ffffff");
		expect(plain({ finish: "honed" })).toBe("#eeeeee");
		expect(plain({ finish: "honed", sealing: "sealed" })).toBe("#dddddd");
		expect(plain({ finish: "honed", sealing: "sealed", state: "damp" })).toBe(
			"#cccccc",
		);
	});

	test("no swatch, a wrong swatch, and a dose above the limit", () => {
		const say = (its: StudioFile) =>
			saying(colorsAnswer(slabCore({}, its)).used);
		expect(say({ ...studio, swatches: [] })).toMatch(
			/^not known yet: no swatch of the studio's own has a color/,
		);
		expect(say(withSwatches(swatch(0, "pale")))).toMatch(
			/^Look: swatch 1: color must be #rrggbb/,
		);
		expect(say(withSwatches(swatch(2, "#ffffff")))).toMatch(
			/^Look: swatch 1: dose must be between 0% and 100%/,
		);
		const strong = slabCore({
			tones: [{ name: "Deep", share: 1, doses: { Umber: 0.09 } }],
		});
		expect(colorsAnswer(strong).tones[0]?.toldApart.say).toBe(
			"Look: over the pigment limit",
		);
	});
});

describe("bucket fold or lay-up", () => {
	// 1 m × 1 m × 50 mm, toned 10 mm deep on the face and four edges: all but a core of 0.98 × 0.98 × 0.04 m.
	const FACE = 1 - (0.98 ** 2 * 0.04) / 0.05;
	const BUCKET_KG = BATCH * BINDER * 0.25 * 0.04;
	const face = { faceDepth: 10 };

	test.each([
		["Plain", FACE * BUCKET_KG],
		["Deep", FACE * BUCKET_KG + (1 - FACE) * BATCH * BINDER * 0.04],
	])("backed with %s", (backedWith, expected) => {
		const { bucketFold, layUp, saves } = layUpAnswer(
			slabCore({ ...face, backedWith }),
		);
		expect(known(layUp.tonedShare)).toBeCloseTo(FACE, 12);
		expect(known(bucketFold.pigmentsKg)).toHaveLength(1);
		expect(known(bucketFold.totalKg)).toBeCloseTo(BUCKET_KG, 9);
		// Umber is 24 a kilogram.
		expect(known(bucketFold.cost)).toBeCloseTo(BUCKET_KG * 24, 9);
		expect(known(layUp.totalKg)).toBeCloseTo(expected, 9);
		expect(known(layUp.cost)).toBeCloseTo(expected * 24, 9);
		expect(known(saves.totalKg)).toBeCloseTo(BUCKET_KG - expected, 9);
		expect(known(saves.cost)).toBeCloseTo((BUCKET_KG - expected) * 24, 9);
	});

	test("each load by its own castings: one is nearly all face, the other hardly", () => {
		// A plate 20 mm thick and a slab of 120 mm, each a load of its own; 15 mm are toned.
		const small = {
			...studio,
			settings: { ...studio.settings, mixer_capacity: 150 },
		};
		const job = {
			placing: "mold lay-up",
			backedWith: "Plain",
			faceDepth: 15,
			waste: 0,
			pieces: [
				{ ...slab.pieces[0], name: "Plate", a: 1600, b: 1600, thickness: 20 },
				{ ...slab.pieces[0], name: "Block", a: 700, b: 700, thickness: 120 },
			],
		};
		const basis = slabCore(job, small);
		const cards = cardAnswers(basis);
		const plate = 1 - (1.57 ** 2 * 0.005) / (1.6 ** 2 * 0.02);
		const block = 1 - (0.67 ** 2 * 0.105) / (0.7 ** 2 * 0.12);
		expect(cards.map(({ castings }) => castings)).toEqual([
			["Plate"],
			["Block"],
		]);
		[plate, block].forEach((share, load) => {
			const card = cards[load];
			expect(known(card?.tonedShare ?? { missing: "" })).toBeCloseTo(share, 9);
			const deep = known(card?.tones ?? { missing: "" })[1];
			expect(deep?.shareWanted).toBeCloseTo(0.25 * share, 9);
			expect(deep?.share).toBeCloseTo(0.25 * share, 9);
			expect(known(card?.waterHeld ?? { missing: "" })).toBeCloseTo(
				(card?.mass ?? 0) * 0.25 * share * 0.04 * BINDER * 0.5,
				9,
			);
		});
		// Together they are what the job is bought for.
		const [a, b] = [1.6 ** 2 * 0.02, 0.7 ** 2 * 0.12];
		expect(known(basis.tones.faceShare)).toBeCloseTo(
			(plate * a + block * b) / (a + b),
			9,
		);
	});

	test("of a liquid more is bought than its pigment", () => {
		const liquid = {
			...studio,
			pigments: studio.pigments.map((row) => ({ ...row, solids: 0.4 })),
		};
		const { bucketFold } = layUpAnswer(slabCore({}, liquid));
		expect(known(bucketFold.totalKg)).toBeCloseTo(BUCKET_KG / 0.4, 9);
	});

	test("without a backing tone or a price the rest is still known", () => {
		const { bucketFold, layUp } = layUpAnswer(slabCore(face));
		expect(layUp.totalKg).toEqual({ missing: "choose the tone that backs it" });
		expect(known(bucketFold.totalKg)).toBeCloseTo(BUCKET_KG, 9);
		const unpriced = {
			...studio,
			pigments: studio.pigments.map(({ packPrice, ...row }) => row),
		};
		const answer = layUpAnswer(slabCore({}, unpriced)).bucketFold;
		expect(answer.cost).toHaveProperty("missing");
		expect(known(answer.totalKg)).toBeCloseTo(BUCKET_KG, 9);
	});
});

describe("folds", () => {
	test("each fold halves the bands; they blur below an arcminute", () => {
		// 40 / 2 / 2 / 2 = 5; an arcminute at 500 mm is 0.145 mm: 40 / 2⁸ is wider, 40 / 2⁹ finer.
		const answer = foldingAnswer(
			slabCore({ bandStart: "40", folds: 3, seenFrom: 500 }),
		);
		expect(known(answer.bandM)).toBeCloseTo(0.005, 12);
		expect(known(answer.foldsUntilBlurred)).toBe(9);
	});

	test("a length that cannot be read is a look", () => {
		const answer = foldingAnswer(slabCore({ bandStart: "wide" }));
		expect(answer.bandM).toHaveProperty("look");
		expect(answer.foldsUntilBlurred).toHaveProperty("look");
	});
});

describe("the sample", () => {
	// U = 2 · √2 · d/√12 of each scale (JCGM 100, F.2.2.1 and 6.3.3): 0.1 g of 4% wetted by half, 20 g of mix; 5% of the
	// Deep quarter.
	const doseOff = (batchKg: number) =>
		2 *
		Math.hypot(
			0.0001 / Math.sqrt(6) / (batchKg * 0.25 * BINDER * 0.04 * 1.5),
			0.02 / Math.sqrt(6) / (batchKg * 0.25),
		);
	const HELD = 0.25 * 0.04 * BINDER * 0.5;

	test("the smallest whose dose is within 5%, counted up to the mix scale", () => {
		const smallest = known(sampleAnswer(slabCore()).smallestKg);
		expect(doseOff(smallest)).toBeLessThanOrEqual(0.05);
		expect(doseOff(smallest - 0.02)).toBeGreaterThan(0.05);
		expect(smallest / 0.02).toBeCloseTo(Math.round(smallest / 0.02), 9);
	});

	test("damp sand is weighed damp, and its water is left out", () => {
		const damp = withDampSand({ moisture: 0.05, absorption: 0.01 });
		const kg = known(
			sampleAnswer(slabCore({ sampleMass: 4 }, damp)).ingredientsKg,
		);
		// ACI 211.1: 5% more sand on the scale, 4% of it free water.
		const sand = (4 * 46) / PARTS;
		expect(kg[2]).toBeCloseTo(onScale(sand * 1.05, 0.0001), 9);
		expect(kg[3]).toBeCloseTo(
			onScale(4 * (15.5 / PARTS - HELD) - sand * 0.04, 0.0001),
			9,
		);
	});

	test("another size, to the divisions of the scales", () => {
		const answer = sampleAnswer(slabCore({ sampleMass: 4 }));
		expect(known(answer.batchKg)).toBe(4);
		expect(answer.verdict).toEqual({ state: "fine", say: "" });
		const [plain, deep] = known(answer.tones);
		expect(plain?.undosedKg).toBeCloseTo(onScale(3 * (1 - HELD), 0.02), 9);
		expect(deep?.undosedKg).toBeCloseTo(onScale(1 - HELD, 0.02), 9);
		expect(deep?.pigmentsKg[0]).toBeCloseTo(
			onScale(BINDER * 0.04 * 1.5, 0.0001),
			9,
		);
		known(answer.ingredientsKg).forEach((kg, i) => {
			const part = [46, 8, 46, 15.5, 0.9, 0.7, 0.35][i] ?? 0;
			expect(kg).toBeCloseTo(
				onScale(4 * (part / PARTS - (part === 15.5 ? HELD : 0)), 0.0001),
				9,
			);
		});
	});

	test("too small is a look; undosed tones need no size", () => {
		expect(sampleAnswer(slabCore({ sampleMass: 0.1 })).verdict.say).toBe(
			"Look: too small: a dose may be off by more than 5% (k = 2)",
		);
		const undosed = slabCore({ tones: [{ name: "Plain", share: 1 }] });
		expect(sampleAnswer(undosed).smallestKg).toEqual({
			missing: "a dose of pigment",
		});
	});
});

describe("water over binder", () => {
	// 15.5 of water and 70% of 0.9 of reducer, over 54 of binder; a quarter of the mix has 4% of its binder as pigment, wetted
	// by half: 0.5% of all binder is water that is held back, and comes with Deep alone.
	const MIX = (15.5 + 0.7 * 0.9) / 54;
	const [plain, deep] = [MIX - 0.005, MIX - 0.005 + 0.02];

	test("of each tone: what is held back of the mix comes with the pigment", () => {
		const { rows } = slabCore().tones;
		expect(known(rows[0]?.waterBinder ?? { missing: "" })).toBeCloseTo(
			plain,
			12,
		);
		expect(known(rows[1]?.waterBinder ?? { missing: "" })).toBeCloseTo(
			deep,
			12,
		);
		// All together they are the mix.
		expect(0.75 * plain + 0.25 * deep).toBeCloseTo(MIX, 12);
		expect(deep / plain).toBeGreaterThan(1.05);
		expect(rows.map(({ waterSaid }) => waterSaid)).toEqual([
			{ state: "fine", say: "" },
			{
				state: "look",
				say: `Look: ${Math.round((deep / plain - 1) * 100)}% more than Plain: it comes out lighter and weaker; wet its pigment with less, or give the others as much water`,
			},
		]);
	});

	test("within 5% there is no word", () => {
		const dry = {
			...studio,
			pigments: studio.pigments.map((row) => ({ ...row, water: 0.3 })),
		};
		const { rows } = slabCore({}, dry).tones;
		const [least, most] = [MIX - 0.003, MIX - 0.003 + 0.012];
		expect(most / least).toBeLessThan(1.05);
		expect(rows.map(({ waterSaid }) => waterSaid.say)).toEqual(["", ""]);
	});
});

describe("a measured fresh density", () => {
	const measured = (...densities: (number | undefined)[]): StudioFile => ({
		...studio,
		mixes: studio.mixes.map((row) => {
			const density = densities[ROWS.indexOf(row)];
			return density === undefined ? row : { ...row, measuredDensity: density };
		}),
	});

	test("corrects every mass, and says by how much", () => {
		const basis = slabCore({}, measured(undefined, DENSITY * 0.95));
		expect(known(basis.mix.densityKgPerM3)).toBeCloseTo(DENSITY * 0.95, 9);
		expect(known(basis.mix.densityOff)).toBeCloseTo(-0.05, 12);
		expect(known(basis.loads.batchKg)).toBeCloseTo(BATCH * 0.95, 9);
		const [card] = cardAnswers(basis);
		expect(known(card?.weighOut ?? { missing: "" })[0]?.mass).toBeCloseTo(
			(BATCH * 0.95 * 46) / PARTS,
			9,
		);
	});

	test("without one nothing is corrected; two of them are a look", () => {
		expect(known(slabCore().mix.densityOff)).toBeUndefined();
		expect(slabCore({}, measured(2200, 2210)).mix.densityKgPerM3).toEqual({
			look: "two rows of the mix state other measured densities: keep one",
		});
	});

	test("a bucket of a load: its density, what the load yields, and how far off that is", () => {
		const withBucket = {
			...studio,
			settings: { ...studio.settings, bucket_volume: 7 },
		};
		const freshOf = (bucketMass?: number, its: StudioFile = withBucket) =>
			cardAnswers(
				slabCore(
					{ pours: [{ load: 1, ...(bucketMass && { bucketMass }) }] },
					its,
				),
			)[0]?.fresh;
		// 7 L of a mix that is 4% lighter than worked out.
		const fresh = freshOf(DENSITY * 0.96 * 0.007);
		expect(known(fresh?.density ?? { missing: "" })).toBeCloseTo(
			DENSITY * 0.96,
			9,
		);
		const mixed = BATCH * (1 - 0.25 * 0.04 * BINDER * 0.5);
		const liters = (mixed / (DENSITY * 0.96)) * 1000;
		expect(fresh?.say).toEqual({
			state: "look",
			say: `Look: this load yields ${Number(liters.toFixed(2))} L; 4% lighter than the masses were worked out with: type it as measured on the Mixes tab`,
		});
		expect(freshOf(DENSITY * 0.99 * 0.007)?.say.state).toBe("fine");
		expect(freshOf()?.say.say).toBe(
			"not known yet: type what the bucket of fresh mix weighs",
		);
		expect(freshOf(15, studio)?.say.say).toBe(
			"not known yet: type what the bucket holds, on the Studio tab",
		);
	});
});
