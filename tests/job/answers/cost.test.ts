/** What the demo job costs, sells for and needs from the shop, by hand; expectations as in tests/job/cost.test.ts. */
import { describe, expect, test } from "vitest";
import { orNull, saying } from "../../../src/job/answers/known";
import { SEALER_L } from "../worked";
import {
	cents,
	FEE,
	GOODS_MONEY,
	HOURS,
	LABOR,
	MATERIALS,
	MIX_MONEY,
	made,
	NEEDED,
	PACKS,
	PIGMENT_MONEY,
	SEALER_MONEY,
} from "../workedcost";
import { answersOf, type Changed, demoJob, known } from "./demofiles";

const costOf = (changed: Changed = {}) => answersOf("metric", changed).cost;
const lineOf = (changed: Changed, key: string) => {
	const line = costOf(changed).lines.find((one) => one.key === key);
	if (!line) throw new Error(`There is no line ${key}`);
	return known(line.amount);
};

describe("cost and price", () => {
	test("materials, work, overhead, remake, card fee", () => {
		const { price, cost, margin, hours, check, lines } = costOf();
		expect(lineOf({}, "mix")).toBeCloseTo(MIX_MONEY, 9);
		expect(lineOf({}, "pigment")).toBeCloseTo(PIGMENT_MONEY, 9);
		expect(lineOf({}, "sealer")).toBeCloseTo(SEALER_MONEY, 9);
		expect(lineOf({}, "goods")).toBeCloseTo(GOODS_MONEY, 9);
		expect(lineOf({}, "work")).toBeCloseTo(LABOR, 9);
		expect(lineOf({}, "overhead")).toBeCloseTo((MATERIALS + LABOR) * 0.18, 9);
		expect(lineOf({}, "remake")).toBeCloseTo(
			(MATERIALS + LABOR) * 1.18 * 0.05,
			9,
		);
		// 35% of the price is left when cost is the rest: price = cost / (1 − 0.35 − fee).
		const sold = cents(made(MATERIALS, LABOR) / (1 - 0.35 - FEE));
		expect(known(price)).toBe(sold);
		expect(lineOf({}, "cardFee")).toBeCloseTo(sold * FEE, 9);
		const spent = made(MATERIALS, LABOR) + sold * FEE;
		expect(known(cost)).toBeCloseTo(spent, 9);
		expect(
			lines.reduce((sum, { amount }) => sum + known(amount), 0),
		).toBeCloseTo(spent, 9);
		expect(known(margin)).toBeCloseTo((sold - spent) / sold, 12);
		expect(known(hours)).toBeCloseTo(HOURS, 9);
		expect(check).toEqual({ state: "fine", say: "fine" });
	});

	test("three plans side by side", () => {
		const [, tighter, rush] = costOf().plans;
		if (!tighter || !rush) throw new Error("There are no three plans");
		// Tighter: 30%, nine tenths of the hours. Rush: 35%, hours × 1.15, materials × 1.05, price + 10%.
		const cheap = made(MATERIALS, LABOR * 0.9);
		const dear = made(MATERIALS * 1.05, LABOR * 1.15);
		const rushed = (dear / (0.65 - FEE)) * 1.1;
		expect(known(tighter.price)).toBe(cents(cheap / (0.7 - FEE)));
		expect(known(tighter.marginLeft)).toBeCloseTo(0.3, 5);
		expect(known(rush.price)).toBe(cents(rushed));
		expect(known(rush.marginLeft)).toBeCloseTo(1 - dear / rushed - FEE, 5);
	});

	test("the plan that the price is taken from, and a plan of one's own", () => {
		const rush = costOf({
			job: { priceFrom: "rush", whatIfs: [{}, { hours: 2, change: 0 }] },
		});
		const spent = made(MATERIALS * 1.05, LABOR * 2);
		expect(known(rush.hours)).toBeCloseTo(HOURS * 2, 9);
		expect(known(rush.price)).toBe(cents(spent / (0.65 - FEE)));
		expect(known(rush.cost)).toBeCloseTo(spent + known(rush.price) * FEE, 9);
	});

	test("a typed price, an agreed one, and one below cost", () => {
		const base = made(MATERIALS, LABOR);
		const typed = costOf({ job: { priceTyped: 4000 } });
		expect(known(typed.price)).toBe(4000);
		expect(known(typed.margin)).toBeCloseTo(
			(4000 - base - 4000 * FEE) / 4000,
			9,
		);
		expect(typed.check.state).toBe("fine");
		const agreed = { priceTyped: 4000, priceAgreed: 3900 };
		expect(known(costOf({ job: agreed }).price)).toBe(3900);
		expect(costOf({ job: { priceTyped: 1500 } }).check).toEqual({
			state: "look",
			say: "Look: the price is below cost",
		});
	});

	test("typed hours, travel, agreed change orders and a credit", () => {
		const { price, cost, basePrice } = costOf({
			job: {
				work: { deliver: { hours: 10 } },
				travel: [{ what: "Van", amount: 120 }],
				changes: [
					{ what: "Cutout", price: 180, cost: 60, agreedOn: "2027-02-01" },
					{ what: "Asked, not agreed", price: 999, cost: 99 },
					{ what: "Left out", price: -50, cost: -20, agreedOn: "2027-02-02" },
				],
			},
		});
		// 6 more hours; the van without overhead.
		const base = made(MATERIALS, LABOR + 6 * 42) + 120;
		const sold = cents(base / (0.65 - FEE));
		expect(known(basePrice)).toBe(sold);
		expect(known(price)).toBeCloseTo(sold + 130, 9);
		expect(known(cost)).toBeCloseTo(base + 40 + (sold + 130) * FEE, 6);
	});

	test("paid by bank, no card keeps a share", () => {
		const price = known(costOf({ job: { byCard: 0 } }).price);
		expect(price).toBe(cents(made(MATERIALS, LABOR) / 0.65));
	});

	test("what it came to, by the hours it took and what was spent", () => {
		expect(saying(costOf().cameTo)).toMatch(/^not known yet: /);
		// The mold took 13 h in place of 10; materials 300 by receipts. No remake to set aside any more.
		const { cameTo, price } = costOf({
			job: { work: { mold: { worked: 13 } }, spent: 300 },
		});
		expect(known(cameTo)).toBeCloseTo(
			(300 + LABOR + 3 * 42) * 1.18 + known(price) * FEE,
			9,
		);
	});

	test("what it came to counts no change order twice: its hours and receipts are among those typed", () => {
		const changes = [
			{ what: "Niche", price: 180, cost: 60, agreedOn: "2027-02-01" },
		];
		const hours = { mold: { worked: 13 } };
		const { cameTo, price } = costOf({
			job: { work: hours, spent: 300, changes },
		});
		expect(known(cameTo)).toBeCloseTo(
			(300 + LABOR + 3 * 42) * 1.18 + known(price) * FEE,
			9,
		);
		expect(saying(costOf({ job: { spent: 300, changes } }).cameTo)).toBe(
			"not known yet: type the hours it took too: change orders cost both",
		);
		expect(saying(costOf({ job: { work: hours, changes } }).cameTo)).toBe(
			"not known yet: type what was spent on materials too: change orders cost both",
		);
	});

	test("of no piece at all there is no price", () => {
		const pieces = demoJob("metric").pieces.map((row) => ({
			...row,
			quantity: 0,
		}));
		const { price, cost, check } = costOf({ job: { pieces, priceTyped: 900 } });
		expect([orNull(price), orNull(cost)]).toEqual([null, null]);
		expect(check.say).toBe("not known yet: type how many of each piece");
	});

	test("says what it cannot price", () => {
		const job = { goods: [{ what: "Turnbuckle", unit: "piece", quantity: 7 }] };
		expect(costOf({ job }).check.say).toBe(
			"Look: no price is known of Turnbuckle: the cost leaves it out",
		);
		expect(costOf({ settings: { margin: 0.98 } }).check.say).toMatch(
			/^Look: margin and card fee/,
		);
		expect(costOf({ settings: { labor_rate: "" } }).check.state).toBe(
			"unknown",
		);
		expect(costOf({ job: { mix: "No such mix" } }).check.state).toBe("look");
		expect(costOf({ job: { work: { sweep: { hours: 1 } } } }).check.say).toBe(
			"Look: there is no operation sweep",
		);
	});
});

describe("what to buy", () => {
	const buyOf = (changed: Changed, name: string) => {
		const row = answersOf("metric", changed).buy.find(
			(one) => one.name === name,
		);
		if (!row) throw new Error(`There is no ${name}`);
		return row;
	};
	const packsOf = (needed: number, onHand: number, pack: number) =>
		Math.max(0, Math.ceil((needed - onHand) / pack));

	test("whole packs of what is not on the shelf", () => {
		const { buy } = answersOf("metric", { studio: { stock: [] } });
		NEEDED.forEach((kg, row) => {
			const one = buy[row];
			if (!one) throw new Error(`There is no row ${row}`);
			expect(known(one.needed)).toBeCloseTo(kg, 9);
			const pack = PACKS[row] ?? 0;
			expect(known(one.packs)).toBe(pack ? packsOf(kg, 0, pack) : 0);
			expect(one.reserved).toBeNull();
		});
		expect(buy.map(({ name }) => name).slice(-8)).toEqual([
			"Umber",
			"Black",
			"Sealer",
			"Mold sheet",
			"Strips",
			"Sealant",
			"Release",
			"Screws",
		]);
	});

	test("less what lies there in several lots, pigment in kg and lb too", () => {
		const studio = {
			stock: [
				{ material: "white cement", onHand: 30, unit: "kg" },
				{ material: "White cement", onHand: 24 },
				{ material: "Umber", onHand: 0.4, unit: "kg" },
				{ material: "Umber", onHand: 1, unit: "lb" },
				{ material: "Black", onHand: 1, unit: "pail" },
				{ material: "Black" },
			],
		};
		const cement = buyOf({ studio }, "White cement");
		expect(known(cement.onHand)).toBe(54);
		expect(known(cement.packs)).toBe(packsOf(NEEDED[0] ?? 0, 54, 25));
		expect(known(buyOf({ studio }, "Umber").onHand)).toBeCloseTo(
			400 + 453.59237, // 1 lb = 0.45359237 kg, exactly
			9,
		);
		expect(buyOf({ studio }, "Umber").counted.state).toBe("fine");
		expect(known(buyOf({ studio }, "Black").onHand)).toBe(0);
		expect(buyOf({ studio }, "Black").counted.say).toBe(
			"Look: Stock has some in another unit, left out",
		);
	});

	test("goods with a pack typed or from Stock, a price alone for one", () => {
		const stock = [{ material: "Strip", pack: 10, packPrice: 35 }];
		const goods = [
			{ what: "Turnbuckle", quantity: 7, pack: 4, packPrice: 10 },
			{ what: "Strip", quantity: 4 },
			{ what: "Foam", quantity: 2, packPrice: 6.5 },
			{ what: "Wax" },
		];
		const changed = { job: { goods }, studio: { stock } };
		const rowOf = (name: string) => {
			const { packs, cost } = buyOf(changed, name);
			return [known(packs), known(cost)];
		};
		expect(rowOf("Turnbuckle")).toEqual([2, 17.5]); // 7 / 4 × 10
		expect(rowOf("Strip")).toEqual([1, 14]); // 4 / 10 × 35
		expect(rowOf("Foam")).toEqual([2, 13]);
		expect(saying(buyOf(changed, "Wax").packs)).toBe(
			"not known yet: how many of Wax",
		);
		expect(lineOf(changed, "goods")).toBeCloseTo(17.5 + 14 + 13, 9);
	});

	test("a priced pack of sealer in Stock goes before the price of a liter", () => {
		const stock = [{ material: "Sealer", pack: 5, packPrice: 200 }];
		const row = buyOf({ studio: { stock } }, "Sealer");
		expect(known(row.cost)).toBeCloseTo((SEALER_L / 5) * 200, 9);
		expect(known(row.packs)).toBe(packsOf(SEALER_L, 0, 5));
	});

	test("a number in Stock that is none is said", () => {
		const stock = [{ material: "Umber", onHand: "some" }];
		expect(buyOf({ studio: { stock } }, "Umber").counted.state).toBe("look");
	});
});
