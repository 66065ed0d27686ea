/** The demo's US twin, worked by hand in inches, cubic feet and pounds. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { moved } from "../../templates/blocks";
import {
	beside,
	cellsOf,
	checksOf,
	numberAt,
	type Place,
	under,
	valueAt,
} from "./found";

let desk: Desk;
beforeAll(async () => {
	desk = await openHeadlessDesk("dist", { enabled: true });
	await desk.call("createDemoJob", ["us"]);
}, 120_000);
afterAll(() => desk.dispose());

const number = (place: Place) => numberAt(desk, ...place);
const value = (place: Place) => valueAt(desk, ...place);
const ofBar = (heading: string) =>
	under(desk, "1 Job", heading, "Breakfast bar");
const onCard = (row: string, heading = "On the scale") =>
	under(desk, "1 Pour card", heading, row);
const quoted = (label: string) => beside(desk, "1 Quote", label);
const cost = (label: string) => number(beside(desk, "1 Cost", label));

// kg/m³ of the mix (parts over specific gravity, 2% air) in lb/ft³: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m, exactly.
const PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 0.7 + 0.35;
const LITERS =
	46 / 3.1 + 8 / 2.4 + 46 / 2.65 + 15.5 + 0.9 / 1.07 + 0.7 / 1.3 + 0.35 / 1.3;
const LB_PER_FT3 =
	(((PARTS / LITERS) * 1000 * 0.98) / 0.45359237) * 0.3048 ** 3;
const BINDER = 54 / PARTS;

// 84 1/2 × 58 1/4 less 59 × 32 5/8, sink 19 × 15 3/8, 1 1/4 thick; drop 2 3/8 below, 11' 10" long, 1 1/4 thick.
const BAR_IN3 =
	(84.5 * 58.25 - 59 * 32.625 - 19 * 15.375) * 1.25 + 2.375 * 142 * 1.25;
const BAR_LB = (BAR_IN3 / 1728) * LB_PER_FT3;

const round = (diameter: number) => (Math.PI * diameter ** 2) / 4;
// Two tops 38 1/2 × 20 1/2 with a hole of 14 1/8, 1 1/4 thick; a table 35 1/2 across, 1 1/8 thick; a basin 18 × 13 1/2 ×
// 5 of 7/8: inside 16 1/4 × 11 3/4 × 4 1/8, a drain of 1 3/4 through its floor.
const TOP_FACE = 38.5 * 20.5 - round(14.125);
const HOLLOW = 16.25 * 11.75;
const BASIN_IN3 = 18 * 13.5 * 5 - HOLLOW * 4.125 - round(1.75) * 0.875;
const REST_LB =
	((2 * TOP_FACE * 1.25 + round(35.5) * 1.125 + BASIN_IN3) / 1728) * LB_PER_FT3;

// Face, edges and rims × thickness, drop; the basin's outside, rim, inside walls and floor, and the drain's wall. ft²
const FINISH_FT2 =
	(84.5 * 58.25 -
		59 * 32.625 -
		19 * 15.375 +
		(2 * (84.5 + 58.25) + 2 * (19 + 15.375)) * 1.25 +
		2.375 * 142 +
		2 * (TOP_FACE + (2 * (38.5 + 20.5) + Math.PI * 14.125) * 1.25) +
		round(35.5) +
		Math.PI * 35.5 * 1.125 +
		2 * (18 + 13.5) * 5 +
		(18 * 13.5 - HOLLOW) +
		2 * (16.25 + 11.75) * 4.125 +
		(HOLLOW - round(1.75)) +
		Math.PI * 1.75 * 0.875) /
	144;

test("no error, nothing to look at but how the bar is carried", () => {
	expect(desk.errors()).toEqual([]);
	const says = [...checksOf(desk).values()];
	expect(says).toHaveLength(27);
	// Nobody has typed a temperature, what one may lift or what a mold weighs: five checks do not know.
	expect(says.filter((one) => /^not known yet: /.test(one))).toHaveLength(5);
	// The bar is not to be carried flat.
	expect(says.filter((one) => /^Look: /.test(one))).toHaveLength(1);
	expect(says.filter((one) => one === "fine")).toHaveLength(21);
});

test("the bar in cubic feet and pounds", () => {
	expect(number(beside(desk, "1 Tones", "Fresh density"))).toBeCloseTo(
		LB_PER_FT3,
		9,
	);
	expect(number(ofBar("Volume"))).toBeCloseTo(BAR_IN3 / 1728, 9);
	expect(number(ofBar("Weight of one"))).toBeCloseTo(BAR_LB, 9);
	expect(number(ofBar("Drop edge, seen height"))).toBeCloseTo(2.375 + 1.25, 9);
});

test("pigment in grams on a mix in pounds", () => {
	// 8% waste. Pigment of 0.0145 of binder (25% × 1.5% + 15% × 4.5% + 20% × 2%) brings half as much water, held back from
	// the mixer. 3% reserve of what is in it, to the 0.05 lb of the scale; Slate is 20% with 2% black of binder, wetted.
	const batch = BAR_LB * 1.08;
	const mixer = batch * (1 - 0.0145 * BINDER * 0.5);
	const toned = mixer - Math.round((mixer * 0.03) / 0.05) * 0.05;
	const grams =
		toned * 0.2 * ((BINDER * batch) / mixer) * 0.02 * 1.5 * 453.59237;
	expect(value(onCard("Step 8", "Do"))).toBe("Add Black to bucket A");
	expect(number(onCard("Step 8"))).toBeCloseTo(
		Math.round(grams / 0.1) * 0.1,
		9,
	);
	const units = ["Step 7", "Step 8", "Step 9"].map((step) => {
		const [tab, cell] = onCard(step);
		return desk.read(tab, moved(cell, 0, 1)).flat();
	});
	expect(units).toEqual([["lb"], ["g"], ["lb"]]);
});

test("headers say the units", () => {
	for (const heading of ["Face, ft²", "Edge, in", "Volume, ft³"])
		expect(number(ofBar(heading))).toBeGreaterThan(0);
});

test("weigh-out of load 1 in whole bags and the rest, to the 0.05 lb of the mix scale, the reducer and the short fiber to 0.1 g", () => {
	const batch = BAR_LB * 1.08;
	[46, 8, 46, 15.5, 0.9, 0.7, 0.35].forEach((parts, index) => {
		const held = parts === 15.5 ? batch * 0.0145 * BINDER * 0.5 : 0;
		const division = parts < 1.5 ? 0.0001 / 0.45359237 : 0.05;
		expect(number(onCard(`Weighed ${index + 1}`))).toBeCloseTo(
			Math.round(((batch * parts) / PARTS - held) / division) * division,
			9,
		);
	});
	// Bags of white cement have 94 lb, of sand and pozzolan 50.
	const cement = Math.round((batch * 46) / PARTS / 0.05) * 0.05;
	expect(value(onCard("Weighed 1", "Note"))).toBe(
		`1 of 94 lb + ${Number((cement - 94).toFixed(3))} lb`,
	);
});

test("the days from pour to delivery, weekends off", () => {
	// Tuesday 9 March 2027; demold after 20 h, fill 3, polish 4 days after, seal 10, deliver 4 after sealing.
	expect(desk.display(...cellsOf("Cure.step_1", 7, 1)).flat()).toEqual([
		"2027-03-09",
		"2027-03-10",
		"2027-03-12",
		"2027-03-15", // 13th: Saturday
		"2027-03-19",
		"2027-03-19",
		"2027-03-23",
	]);
});

test("sealer and void paste for the finish area", () => {
	// 490 ft² a gallon and coat, two coats, 10% left in pots. 6% voids 0.06 in deep and a skim of 0.008 in, 30% wiped off.
	expect(number(beside(desk, "1 Cure", "Sealer for all coats"))).toBeCloseTo(
		SEALER_GAL,
		9,
	);
	expect(number(beside(desk, "1 Job", "To fill, polish and seal"))).toBeCloseTo(
		FINISH_FT2,
		9,
	);
});

const SEALER_GAL = (FINISH_FT2 / 490) * 2 * 1.1;
const PASTE_LB = ((FINISH_FT2 * (0.06 * 0.06 + 0.008)) / 12) * 1.3 * LB_PER_FT3;
// Packs and prices of the starter: cement, pozzolan, sand, water, reducer, long and short fiber.
const PACKS = [94, 50, 50, 0, 40, 10, 10];
const PRICES = [34, 45, 8, 0, 220, 115, 110];
const NEEDED_LB = (BAR_LB + REST_LB) * 1.08 + PASTE_LB;
const MIX_MONEY = [46, 8, 46, 15.5, 0.9, 0.7, 0.35].reduce(
	(sum, parts, row) =>
		PACKS[row]
			? sum +
				((NEEDED_LB * parts) / PARTS / (PACKS[row] ?? 1)) * (PRICES[row] ?? 0)
			: sum,
	0,
);
// 25% × 1.5% + 15% × 4% umber and 15% × 0.5% + 20% × 2% black of binder; 24 and 21 a kilogram.
const PIGMENT_MONEY =
	NEEDED_LB * BINDER * 0.45359237 * (0.00975 * 24 + 0.00475 * 21);
/** Screws of a side: from 2 in in from each end, every 8 in. */
const screws = (lengths: readonly number[]) =>
	lengths.reduce((sum, inches) => sum + Math.ceil((inches - 4) / 8) + 1, 0);
// Sides on bases, boards of 3/4 in: front and back 1 1/2 in longer; the bar's inner walls of the drop 1 1/4 in shorter.
const SCREWS =
	screws([86, 58.25, 59, 32.625, 27, 25.625, 83.25, 57]) +
	2 * screws([40, 40, 20.5, 20.5]) +
	screws([19.5, 19.5, 13.5, 13.5]);
// Two halves of the bar's base, 86 × 29 7/8, fill a board each; a third takes the tops' bases. Strips: one for both rings of 43.6 in, two
// for the table's 112.3. A tube. Release for what is finished and the drop's inner wall, 1200 ft² a gallon. Screws by 200.
const GOODS_MONEY =
	3 * 42 +
	3 * 3 +
	8 +
	((FINISH_FT2 + (2.375 * 142) / 144) / 1200) * 22 +
	(SCREWS / 200) * 10;
const MATERIALS = MIX_MONEY + PIGMENT_MONEY + SEALER_GAL * 190 + GOODS_MONEY;
// Hours for each of 5 castings: 3.25; of 2 loads: 2.5; of each 10 ft²: 1.9; and 4 to deliver. 45 an hour.
const WORK = (5 * 3.25 + 2 * 2.5 + (FINISH_FT2 / 10) * 1.9 + 4) * 45;
const cents = (money: number) => Math.round(money * 100) / 100;
// Overhead 18%, remake 5%; the card company keeps 2% of price and 8.25% tax; 35% of the price is left.
const FEE = 0.02 * 1.0825;
const PRICE = cents(((MATERIALS + WORK) * 1.18 * 1.05) / (1 - 0.35 - FEE));

test("cost and price", () => {
	expect(cost("Mix, its waste and the paste in it")).toBeCloseTo(MIX_MONEY, 6);
	expect(cost("Pigment")).toBeCloseTo(PIGMENT_MONEY, 6);
	expect(cost("Sealer")).toBeCloseTo(SEALER_GAL * 190, 6);
	expect(cost("Work")).toBeCloseTo(WORK, 6);
	expect(cost("Price without tax, with change orders")).toBe(PRICE);
	expect(cost("Cost")).toBeCloseTo(
		(MATERIALS + WORK) * 1.18 * 1.05 + PRICE * FEE,
		6,
	);
});

test("the client's total, deposit and balance", () => {
	const total = cents(PRICE + cents(PRICE * 0.0825));
	expect(number(quoted("Total"))).toBeCloseTo(total, 9);
	// Half each; of an odd cent the deposit takes it.
	const deposit = Math.ceil(total * 50 - 1e-6) / 100;
	expect(number(quoted("Deposit to begin"))).toBeCloseTo(deposit, 9);
	expect(number(quoted("Balance on delivery"))).toBeCloseTo(total - deposit, 9);
});
