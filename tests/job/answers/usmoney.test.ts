/** A slab in inches and gallons: amounts and hours by hand. 1 ft² is 144 in². */
import { expect, test } from "vitest";
import { fromSi } from "../../../src/job/reading/units";
import { answersOf, known } from "./demofiles";

const slab = {
	name: "Slab",
	quantity: 1,
	shape: "rectangle",
	a: 48,
	b: 30,
	thickness: "1 1/2",
};
const { cure, cost, buy } = answersOf("us", {
	job: { pieces: [slab], cutouts: [], knockouts: [] },
	studio: { stock: [{ material: "White cement", onHand: 10, unit: "lb" }] },
});

/** Face and edges, ft². */
const FINISH = (48 * 30 + 2 * (48 + 30) * 1.5) / 144;
// 490 ft² a gallon and coat, two coats, 10% left in pots.
const GALLONS = (FINISH / 490) * 2 * 1.1;

test("sealer in gallons, paste in cubic feet", () => {
	const { finishM2, sealerM3, pasteM3 } = cure.finishing;
	expect(fromSi(known(finishM2), "area", "us")).toBeCloseTo(FINISH, 9);
	expect(fromSi(known(sealerM3), "coating", "us")).toBeCloseTo(GALLONS, 9);
	// 6% voids 0.06 in deep and a skim of 0.008 in, 30% more wiped off.
	expect(fromSi(known(pasteM3), "volume", "us")).toBeCloseTo(
		((FINISH * (0.06 * 0.06 + 0.008)) / 12) * 1.3,
		9,
	);
});

test("work counts each 10 ft² of face", () => {
	const polish = cost.work.rows.find(({ key }) => key === "polish");
	if (!polish) throw new Error("There is no polishing");
	expect(polish.forEach).toBe("10 ft²");
	expect(known(polish.hours)).toBeCloseTo((FINISH / 10) * 1.5, 9);
});

test("mix in pounds, sealer at the price of a gallon", () => {
	const cement = buy[0];
	const sealer = buy.find(({ name }) => name === "Sealer");
	if (!cement || !sealer) throw new Error("There is no cement or sealer");
	expect([cement.unit, sealer.unit]).toEqual(["lb", "US gal"]);
	// The starter's bag of white cement has 94 lb.
	expect(known(cement.pack)).toBeCloseTo(94, 9);
	expect(known(cement.onHand)).toBe(10);
	expect(known(cement.packs)).toBe(Math.ceil((known(cement.needed) - 10) / 94));
	expect(known(sealer.cost)).toBeCloseTo(GALLONS * 190, 9);
});

// ACI 305R asks for precautions from 0.2 lb/ft²·h on; half of that is common practice for mixes that do not bleed.
test.each([
	["yes", 0.2],
	["no", 0.1],
])("drying where the mix bleeds: %s", (bleeds, limit) => {
	const { drying } = answersOf("us", { job: { bleeds } }).cure;
	expect(known(drying.limit)).toBe(limit);
});
