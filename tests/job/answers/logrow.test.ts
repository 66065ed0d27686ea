/** A load's row of the Pour log, by hand. */
import { expect, test } from "vitest";
import type { Basis } from "../../../src/job/answers/basis";
import { cardAnswers } from "../../../src/job/answers/card/cardanswers";
import { logRow } from "../../../src/job/answers/card/logrow";
import type { PourInput } from "../../../src/job/jobfile";
import { BATCH, PARTS, slab } from "../../sheets/onejob";
import { known, poured, ROWS, slabCore } from "./slabjob";

const cost = { is: 1000 };
const rowOf = (basis: Basis, load = 1) => {
	const card = cardAnswers(basis)[load - 1];
	if (!card) throw new Error(`There is no load ${load}`);
	return logRow(basis, card, { job: 7, cost });
};

test("nothing weighed: the plan's tones, no blank columns", () => {
	const row = known(rowOf(slabCore()));
	expect(row).toEqual({
		date: "2027-03-09",
		job: 7,
		heading: "Nobody (invented) · Slab",
		load: 1,
		mix: slab.mix,
		tones:
			"Plain: undosed; Deep: Umber 4%; 2 of 2 weights not typed, taken as planned",
		estimate: 1000,
	});
});

test("what was typed, as it was typed, and the weight that was furthest off", () => {
	const typed: Omit<PourInput, "load"> = {
		pouredOn: "2027-03-10",
		spread: "60 cm",
		mixTemperature: 21,
		airTemperature: 18,
		weighedBy: "K.",
		lots: "17",
		remarks: "stiff",
		result: "good",
	};
	// 1% short of one ingredient, 4% short of another.
	const weighed = {
		[String(ROWS[0]?.ingredient)]: ((BATCH * 46) / PARTS) * 0.99,
		[String(ROWS[1]?.ingredient)]: ((BATCH * 8) / PARTS) * 0.96,
	};
	const row = known(rowOf(poured({ load: 1, ...typed, weighed })));
	const { pouredOn, ...same } = typed;
	expect(row).toMatchObject({ ...same, date: pouredOn });
	expect(row.offTarget).toBeCloseTo(0.04, 9);
});

test("a dose that came out too strong stands beside its tone", () => {
	const [card] = cardAnswers(slabCore());
	const umber = card ? known(card.steps)[2]?.amount : undefined;
	const row = known(
		rowOf(poured({ load: 1, steps: { 2: (umber ?? 0) * 1.05 } })),
	);
	expect(row.tones).toBe(
		"Plain: undosed; Deep: Umber 4.2% (wanted Umber 4%: 5% too strong); 1 of 2 weights not typed, taken as planned",
	);
	expect(row.offTarget).toBeCloseTo(0.05, 9);
});

test("a tone that was brought back has the dose that it reached, and what was done", () => {
	const [card] = cardAnswers(slabCore());
	const [, , umber] = card ? known(card.steps) : [];
	const strong = { 2: (umber?.amount ?? 0) * 1.05 };
	const deep = known(card?.tones ?? { missing: "" })[1]?.undosed ?? 0;
	const row = known(
		rowOf(
			poured({
				load: 1,
				steps: strong,
				corrections: [{ tone: "Deep", foldedIn: deep / 20 }],
			}),
		),
	);
	expect(row.tones).toBe(
		`Plain: undosed; Deep: Umber 4% (folded in ${Number((deep / 20).toPrecision(10))} kg); 1 of 2 weights not typed, taken as planned`,
	);
});

test("neither the reserve nor what is kept is off target: both are what they are", () => {
	expect(
		known(rowOf(poured({ load: 1, steps: { 0: 5, 3: 1 } }))).offTarget,
	).toBe(0);
});

test("the second of two equal loads: half of the cost, and the minutes since the first", () => {
	const basis = slabCore({
		pieces: [{ ...slab.pieces[0], quantity: 2 }],
		pours: [
			{ load: 1, waterInAt: "23:30" },
			{ load: 2, waterInAt: "0:15" },
		],
	});
	expect(known(rowOf(basis, 2))).toMatchObject({ load: 2, minutes: 45 });
	expect(known(rowOf(basis, 2)).estimate).toBeCloseTo(500, 9);
});

test("a weight that cannot be makes no row", () => {
	expect(rowOf(poured({ load: 1, steps: { 1: -2 } }))).toHaveProperty("look");
});
