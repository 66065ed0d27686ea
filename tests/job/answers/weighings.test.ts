/** Weights that are off: what counts as off, what follows, and on which scale small amounts go. By hand, nothing of `src/`. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import { cardAnswers } from "../../../src/job/answers/card/cardanswers";
import type { JobFile } from "../../../src/job/jobfile";
import { weightTyped } from "../../../src/job/reading/weights";
import { starterStudio } from "../../../templates/starterstudio";
import { BATCH, BINDER, PARTS, slab } from "../../sheets/onejob";
import { known, ROWS, studio } from "./slabjob";

type Weights = Readonly<Record<string, number | string>>;

const NAMES = ROWS.map(({ ingredient }) => String(ingredient));
const EACH = [46, 8, 46, 15.5, 0.9, 0.7, 0.35];
/** Water that comes with the pigment of Deep stays out: half a gram a gram of 1% of the binder. */
const HELD = BATCH * BINDER * 0.01 * 0.5;
const PLANNED = EACH.map(
	(part) => (BATCH * part) / PARTS - (part === 15.5 ? HELD : 0),
);
const MIXED = BATCH - HELD;
const POUND = 0.45359237;

const metric = (weighed: Weights, its = studio) =>
	cardOf(basisOf(its, { ...(slab as JobFile), pours: [{ load: 1, weighed }] }));
const pounds = (weighed: Weights) =>
	cardOf(
		basisOf(starterStudio("us"), {
			...(slab as JobFile),
			units: "us",
			pieces: [
				{
					...slab.pieces[0],
					a: "1000 mm",
					b: "1000 mm",
					thickness: "50 mm",
				},
			],
			pours: [{ load: 1, weighed }],
		}),
	);

function cardOf(basis: ReturnType<typeof basisOf>) {
	const [card] = cardAnswers(basis);
	if (!card) throw new Error("There is no load");
	return { ...card, lines: known(card.weighOut) };
}

describe("what the card asks for is right", () => {
	test.each([
		["metric", metric],
		["us", pounds],
	] as const)(
		"weighed in order, after an overshoot of one, nothing asks for more: %s",
		(_, of) => {
			fc.assert(
				fc.property(
					fc.integer({ min: 0, max: 6 }),
					fc.double({ min: 1, max: 1.2, noNaN: true }),
					(over, times) => {
						let weighed: Record<string, number> = {};
						NAMES.forEach((name, i) => {
							const before = of(weighed).lines;
							const asked = before[i]?.shown ?? 0;
							weighed = {
								...weighed,
								[name]: asked * (i === over ? times : 1),
							};
							if (i === over) return;
							// What was asked for, weighed as asked, changes nothing that is still to come.
							const after = of(weighed).lines;
							expect(after.slice(i + 1).map(({ shown }) => shown)).toEqual(
								before.slice(i + 1).map(({ shown }) => shown),
							);
							expect(after[i]?.say).toMatchObject({ state: "fine" });
						});
						// Whatever was weighed before the overshoot may be short now; what came after it is not.
						for (const { say } of of(weighed).lines.slice(over + 1))
							expect(say.state).toBe("fine");
					},
				),
				{ numRuns: 40 },
			);
		},
	);

	test("a hair more cement than asked for raises nothing: half a division, or 1% of cement", () => {
		for (const [i, share] of [
			[0, 0.0099],
			[2, 0.0199],
			[3, 0.0149],
			[4, 0.0299],
			[5, 0.0199],
		] as const) {
			const { lines, check } = metric({
				[NAMES[i] ?? ""]: (PLANNED[i] ?? 0) * (1 + share),
			});
			expect(lines.map(({ mass }) => mass)).toEqual(
				lines.map(({ planned }) => planned),
			);
			expect(lines[i]?.say).toEqual({ state: "fine", say: "" });
			expect(check.say).not.toMatch(/too much|more/);
		}
	});

	test("as much less is not asked for again; more than that is", () => {
		const cement = PLANNED[0] ?? 0;
		const say = (share: number) =>
			metric({ "White cement": cement * (1 - share) }).lines[0]?.say.say;
		expect(say(0.0099)).toBe("");
		expect(say(0.0101)).toBe(
			`Look: ${Number((cement * 0.0101).toFixed(2))} kg more`,
		);
	});

	test("what is in the mixer is what the scale said, not what was asked for", () => {
		const card = metric({ "White cement": (PLANNED[0] ?? 0) * 1.009 });
		expect(known(card.total)).toBeCloseTo(MIXED + (PLANNED[0] ?? 0) * 0.009, 9);
	});
});

describe("too much of one", () => {
	const cement = (PLANNED[0] ?? 0) * 1.1;

	test("take it out, or raise the others: both are offered", () => {
		const { lines, check } = metric({ "White cement": cement });
		const words = `${Number((cement / 11).toFixed(2))} kg too much: take it out and type what is left, or raise the others by 10%, to ${Number((MIXED * 1.1).toFixed(2))} kg in all`;
		expect(lines[0]?.say).toEqual({ state: "look", say: `Look: ${words}` });
		expect(check.say).toBe(`Look: White cement: ${words}`);
		expect(lines[2]?.mass).toBeCloseTo((PLANNED[2] ?? 0) * 1.1, 9);
		// Taken out and typed again.
		const back = metric({ "White cement": PLANNED[0] ?? 0 });
		expect(back.lines.map(({ mass }) => mass)).toEqual(
			back.lines.map(({ planned }) => planned),
		);
	});

	test("once the others have followed it is settled", () => {
		const { lines } = metric({
			...Object.fromEntries(
				NAMES.map((name, i) => [name, (PLANNED[i] ?? 0) * 1.1]),
			),
			"White cement": cement,
		});
		expect(lines.map(({ say }) => say.state)).toEqual(NAMES.map(() => "fine"));
		expect(lines[0]?.say.say).toBe(
			`the others were raised by 10% to match, ${Number((MIXED * 1.1).toFixed(2))} kg in all`,
		);
	});

	test("past the mixer's capacity only the first is offered, and it is said", () => {
		const most = { ...studio.settings, mixer_capacity: 125 };
		const { check } = metric(
			{ "White cement": cement },
			{
				...studio,
				settings: most,
			},
		);
		expect(MIXED * 1.1).toBeGreaterThan(125);
		expect(check).toEqual({
			state: "look",
			say: `Look: White cement: ${Number((cement / 11).toFixed(2))} kg too much: take it out and type what is left. Raising the others would make ${Number((MIXED * 1.1).toFixed(2))} kg, and the mixer takes 125 kg`,
		});
	});
});

describe("small amounts", () => {
	test("go on the gram scale, and may be typed as it says them", () => {
		const { lines } = metric({});
		const reducer = Math.round((PLANNED[4] ?? 0) * 10000) / 10;
		expect(lines[4]).toMatchObject({ scale: "gram" });
		expect(lines[4]?.shown).toBeCloseTo(reducer / 1000, 9);
		expect(lines[4]?.say.say).toBe(
			`gram scale: ${reducer} g, typed so or in kg`,
		);
		expect(lines[0]).toMatchObject({ scale: "mix" });
		const typed = metric({ "Water reducer": `${reducer * 2} g` });
		expect(typed.lines[4]?.weighed).toBeCloseTo(reducer / 500, 12);
		expect(typed.lines[0]?.mass).toBeCloseTo(
			((PLANNED[0] ?? 0) * reducer) / 500 / (PLANNED[4] ?? 0),
			9,
		);
	});

	test("in pounds the gram scale still says grams", () => {
		const line = pounds({ "Water reducer": "900 g" }).lines[4];
		expect(line?.weighed).toBeCloseTo(0.9 / POUND, 12);
		expect(line?.say.state).toBe("fine");
		expect(pounds({}).lines[4]?.say.say).toMatch(
			/^gram scale: \d+\.\d g, typed so or in lb$/,
		);
	});

	test("without a gram scale that takes them, the mix scale's part is said", () => {
		const { gram_most: _, ...settings } = studio.settings;
		const { lines } = metric({}, { ...studio, settings });
		// Tared, k = 2: 2 · √2 · 0.02 / √12 kg (JCGM 100, F.2.2.1 and 6.3.3).
		const off =
			(2 * Math.SQRT2 * 0.02) / Math.sqrt(12) / (lines[4]?.shown ?? 1);
		expect(lines[4]).toMatchObject({ scale: "mix" });
		expect(lines[4]?.say.say).toBe(
			`the mix scale may be off by ${Number((off * 100).toPrecision(2))}% (k = 2)`,
		);
	});

	test("a weight in words is told how it may be typed", () => {
		expect(weightTyped("sand", "1,5 kg", "us")).toBeCloseTo(1.5 / POUND, 12);
		expect(weightTyped("sand", "8 oz", "us")).toBeCloseTo(0.5, 12);
		for (const typed of ["a bag", "12", "3 st", "-5 g"])
			expect(() => weightTyped("sand", typed, "metric")).toThrow(
				`sand must be a number, or a text like "920 g", got "${typed}"`,
			);
	});
});
