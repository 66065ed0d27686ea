/** What the demo job costs, sells for and needs from the shop, by hand; then the client's page. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { area } from "../../templates/blocks";
import { quote } from "../../templates/quote/quotetab";
import {
	beside,
	cellOf,
	cleared,
	type Place,
	typed,
	under,
	valueAt,
} from "./found";
import { openDemo, UMBER } from "./worked";
import {
	cents,
	FEE,
	GOODS_MONEY,
	grams,
	HOURS,
	LABOR,
	MATERIALS,
	MIX_MONEY,
	made,
	NEEDED,
	PACKS,
	PIGMENT_MONEY,
	SEALER_MONEY,
} from "./workedcost";

let desk: Desk;
beforeAll(async () => {
	desk = await openDemo("metric");
}, 120_000);
afterAll(() => desk.dispose());

const TAB = "1 Cost";
const value = (place: Place) => valueAt(desk, ...place);
const cost = (label: string) => value(beside(desk, TAB, label));
const inOrder = () => String(cost("Check"));
const PRICE = "Price without tax, with change orders";
/** A line of the plans side by side. */
const plan = (name: string, line: string) =>
	Number(value(under(desk, TAB, name, line, "Three plans")));
/** A line of what the job needs of a material. */
const material = (name: string, heading: string) =>
	value(under(desk, TAB, heading, name, "Material"));
const hours = (operation: string, heading: string) =>
	under(desk, TAB, heading, operation, "Operation");
const PRICE_FROM = cellOf("Cost.priceFrom");
const PRICE_TYPED = cellOf("Cost.priceTyped");
const SPENT = cellOf("Cost.spent");
/** Cells of a row, from the first on. */
const row = (slot: string, down: number, ...texts: string[]) =>
	texts.map((text, right) => [...cellOf(slot, down, right), text] as const);

describe("cost and price", { timeout: 60_000 }, () => {
	test("materials, work, overhead, remake, card fee", () => {
		expect(desk.errors().filter(({ tab }) => tab.startsWith("1 "))).toEqual([]);
		expect(cost("Mix, its waste and the paste in it")).toBeCloseTo(
			MIX_MONEY,
			6,
		);
		expect(cost("Pigment")).toBeCloseTo(PIGMENT_MONEY, 6);
		expect(cost("Sealer")).toBeCloseTo(SEALER_MONEY, 6);
		expect(cost("Mold and other goods")).toBeCloseTo(GOODS_MONEY, 6);
		expect(cost("Work")).toBeCloseTo(LABOR, 6);
		expect(cost("Overhead on both")).toBeCloseTo((MATERIALS + LABOR) * 0.18, 6);
		expect(cost("Remake allowance")).toBeCloseTo(
			(MATERIALS + LABOR) * 1.18 * 0.05,
			6,
		);
		// 35% of the price is left when cost is the rest: price = cost / (1 − 0.35 − fee).
		const price = cents(made(MATERIALS, LABOR) / (1 - 0.35 - FEE));
		expect(cost(PRICE)).toBe(price);
		expect(cost("Cost")).toBeCloseTo(made(MATERIALS, LABOR) + price * FEE, 6);
		expect(cost("Margin")).toBeCloseTo(0.35, 5);
		expect(cost("Hours of work")).toBeCloseTo(HOURS, 9);
		expect(inOrder()).toBe("fine");
	});

	test("three plans side by side", () => {
		// Tighter: 30%, nine tenths of the hours. Rush: 35%, hours × 1.15, materials × 1.05, price + 10%.
		const tighter = made(MATERIALS, LABOR * 0.9);
		const rush = made(MATERIALS * 1.05, LABOR * 1.15);
		expect(plan("tighter", "Price")).toBe(cents(tighter / (0.7 - FEE)));
		const rushed = (rush / (0.65 - FEE)) * 1.1;
		expect(plan("rush", "Price")).toBe(cents(rushed));
		expect(plan("tighter", "Margin left")).toBeCloseTo(0.3, 5);
		expect(plan("rush", "Margin left")).toBeCloseTo(1 - rush / rushed - FEE, 5);
	});

	test("the plan that the price is taken from", async () => {
		await typed(desk, [...PRICE_FROM, "tighter"]);
		expect(cost(PRICE)).toBe(plan("tighter", "Price"));
		expect(cost("Cost")).toBeCloseTo(plan("tighter", "Its cost"), 6);
		expect(cost("Hours of work")).toBeCloseTo(HOURS * 0.9, 9);
		await typed(desk, [...PRICE_FROM, "as planned"]);
	});

	test("a typed price, and one below cost", async () => {
		await typed(desk, [...PRICE_TYPED, "4000"]);
		const base = made(MATERIALS, LABOR);
		expect(cost(PRICE)).toBe(4000);
		expect(cost("Margin")).toBeCloseTo((4000 - base - 4000 * FEE) / 4000, 9);
		expect(inOrder()).toBe("fine");
		await typed(desk, [...PRICE_TYPED, "1500"]);
		expect(inOrder()).toBe("Look: the price is below cost");
		await typed(desk, [...PRICE_TYPED, ""]);
	});

	test("typed hours, travel, agreed change orders", async () => {
		await typed(
			desk,
			[...hours("Deliver and install", "Typed, hours"), "10"],
			...row("Cost.travel", 0, "Van", "120"),
			...row("Cost.changes", 0, "Second cutout", "180", "60", "2027-02-01"),
			...row("Cost.changes", 1, "Asked, not agreed", "999", "99"),
		);
		// 6 more hours; the van without overhead.
		const base = made(MATERIALS, LABOR + 6 * 42) + 120;
		const price = cents(base / (0.65 - FEE));
		expect(cost("Without change orders")).toBe(price);
		expect(cost(PRICE)).toBeCloseTo(price + 180, 9);
		expect(cost("Cost")).toBeCloseTo(base + 60 + (price + 180) * FEE, 6);
		await typed(desk, [...hours("Deliver and install", "Typed, hours"), ""]);
		await cleared(desk, "Cost.travel", 1, 2);
		await cleared(desk, "Cost.changes", 2, 4);
	});

	test("what it came to, by the hours it took", async () => {
		expect(cost("Cost as it came out")).toMatch(
			/^not known yet: type the hours/,
		);
		const moldTook = hours("Build the mold", "Hours it took");
		// The mold took 13 h in place of 10; materials 300 by receipts. No remake to set aside any more.
		await typed(desk, [...moldTook, "13"], [...SPENT, "300"]);
		const price = Number(cost(PRICE));
		expect(cost("Cost as it came out")).toBeCloseTo(
			(300 + LABOR + 3 * 42) * 1.18 + price * FEE,
			6,
		);
		await typed(desk, [...moldTook, ""], [...SPENT, ""]);
	});
});

const INGREDIENTS = [
	"White cement",
	"Pozzolan",
	"Fine sand",
	"Water",
	"Water reducer",
	"Fiber, long",
	"Fiber, short",
];
/** The first row of the goods that the demo leaves free. */
const FREE = 7;

/** What Stock says of a material, in kg or in g. */
function onHand(name: string, unit: "kg" | "g"): number {
	const [tab, first] = cellOf("Stock.stock");
	const row = Number(first.slice(1));
	const gramsIn: Record<string, number> = { kg: 1000, g: 1 };
	return desk
		.read(tab, `A${row}:C${row + 79}`)
		.filter(([lot]) => String(lot).toLowerCase() === name.toLowerCase())
		.reduce(
			(sum, [, amount, of]) =>
				sum +
				(Number(amount) * (gramsIn[String(of)] ?? 0)) / (gramsIn[unit] ?? 1),
			0,
		);
}

describe("what to buy", { timeout: 60_000 }, () => {
	test("whole packs", () => {
		NEEDED.forEach((kg, at) => {
			const name = INGREDIENTS[at] ?? "";
			expect(material(name, "Needed")).toBeCloseTo(kg, 9);
			const pack = PACKS[at] ?? 0;
			const has = onHand(name, "kg");
			// Nobody buys water of the tap.
			expect(material(name, "Packs to buy")).toBe(
				pack ? Math.max(0, Math.ceil((kg - has) / pack)) : 0,
			);
		});
		expect(material("Umber", "Needed")).toBeCloseTo(grams(UMBER), 6);
		expect(material("Umber", "Packs to buy")).toBe(
			Math.max(0, Math.ceil((grams(UMBER) - onHand("Umber", "g")) / 1000)),
		);
	});

	test("less what is on the shelf, of several lots, pigment in kg too", async () => {
		const [stock, first] = cellOf("Stock.stock");
		const row = Number(first.slice(1));
		const lots = [
			["white cement", "30", "kg"],
			["White cement", "24", "kg"],
			["Umber", "0.4", "kg"],
			["Black", "1", "pail"],
		];
		lots.forEach((cells, down) => {
			cells.forEach((text, right) => {
				desk.type(stock, `${"ABC"[right]}${row + 40 + down}`, text);
			});
		});
		await desk.settle();
		const has = onHand("White cement", "kg");
		expect(has).toBeGreaterThanOrEqual(54);
		expect(material("White cement", "On hand, from Stock")).toBeCloseTo(has, 9);
		expect(material("White cement", "Packs to buy")).toBe(
			Math.max(0, Math.ceil(((NEEDED[0] ?? 0) - has) / 25)),
		);
		expect(material("Umber", "On hand, from Stock")).toBeCloseTo(
			onHand("Umber", "g"),
			9,
		);
		expect(onHand("Umber", "g")).toBeGreaterThanOrEqual(400);
		expect(material("Black", "Note")).toMatch(/^Look: Stock has some/);
	});

	test("goods by the piece, with a pack from Stock or typed; one without a price is said", async () => {
		await typed(desk, ...row("Cost.goods", FREE, "Turnbuckle", "piece", "7"));
		expect(inOrder()).toMatch(/^Look: no price is known of Turnbuckle/);
		await typed(
			desk,
			...row("Cost.goods", FREE, "Turnbuckle", "piece", "7", "4", "10"),
		);
		// 7 / 4 × 10
		expect(material("Turnbuckle", "Part of the cost")).toBeCloseTo(17.5, 9);
		expect(material("Turnbuckle", "Packs to buy")).toBe(2);
		expect(material("Turnbuckle", "To pay")).toBe(20);
		expect(inOrder()).toBe("fine");
		await typed(
			desk,
			...row("Cost.goods", FREE, "Turnbuckle", "piece", "seven"),
		);
		expect(inOrder()).toMatch(/^Look: .*"seven"/);
		for (let right = 0; right < 5; right++)
			desk.type(...cellOf("Cost.goods", FREE, right), "");
		await desk.settle();
	});
});

describe("the quote", { timeout: 60_000 }, () => {
	const QUOTE = "1 Quote";
	const money = (label: string) => value(beside(desk, QUOTE, label));

	test.each([
		// Price, then 20% tax, total, half of it: a cent left over goes to the deposit.
		["3000", 600, 3600, 1800, 1800],
		["1000.01", 200, 1200.01, 600.01, 600],
		["999.99", 200, 1199.99, 600, 599.99], // 199.998
		["1234.56", 246.91, 1481.47, 740.74, 740.73], // 246.912
	])(
		"of %s adds up to the cent",
		async (price, tax, total, deposit, balance) => {
			await typed(desk, [...PRICE_TYPED, price]);
			expect(money("Tax")).toBe(tax);
			expect(money("Total")).toBe(total);
			expect(money("Deposit to begin")).toBe(deposit);
			expect(money("Balance on delivery")).toBe(balance);
		},
	);

	test("agreed changes are on it, others are not", async () => {
		await typed(
			desk,
			[...PRICE_TYPED, "1000"],
			...row("Cost.changes", 0, "Asked", "70"),
			...row("Cost.changes", 1, "Second cutout", "180", "61.23", "2027-02-01"),
		);
		const [tab, listed] = under(desk, QUOTE, "Price", "Pieces as listed");
		expect(desk.read(tab, area(listed, 3, 2))).toEqual([
			["Pieces as listed", 1000],
			["Second cutout", 180],
			["Without tax", 1180],
		]);
		expect(money("Total")).toBe(1416); // 1180 × 1.2
	});

	test("what is paid, the deposit and the balance are the total, to the cent", async () => {
		// 1416 with tax, half of it to begin: 300 of that, then the rest of it, then all.
		const paid = async (...amounts: readonly string[]) => {
			await cleared(desk, "Cost.payments", 3, 3);
			await typed(
				desk,
				...amounts.flatMap((amount, at) =>
					row(
						"Cost.payments",
						at,
						at === 2 ? "balance" : "deposit",
						amount,
						"2027-02-10",
					),
				),
			);
			// Once something is paid, the deposit is what is left of it.
			const toBegin =
				amounts.length > 0 ? "Still to pay to begin" : "Deposit to begin";
			return ["Paid", toBegin, "Balance on delivery"].map(money);
		};
		expect(await paid("300")).toEqual([300, 408, 708]);
		expect(await paid("300", "408")).toEqual([708, 0, 708]);
		expect(await paid("300", "408", "708")).toEqual([1416, 0, 0]);
		expect(value(beside(desk, "1 Job", "Paid"))).toBe(1416);
		expect(await paid()).toEqual([0, 708, 708]);
	});

	test("says what is made, in the client's words", async () => {
		await typed(desk, [...cellOf("Quote.quotedOn"), "2027-01-10"]);
		expect(desk.display(...beside(desk, QUOTE, "Holds until"))[0]).toEqual([
			"2027-02-09", // 30 days
		]);
		const lines = [
			"1 × Breakfast bar: L, 2150 mm × 1480 mm, notch 1500 mm × 830 mm, 30 mm thick, drop edge 60 mm",
			"2 × Vanity top: 980 mm × 52 cm, 30 mm thick",
			"1 × Round table: round, 900 mm across, 28 mm thick",
			"1 × Hand basin: basin, 460 mm × 340 mm, 130 mm high, 22 mm thick",
			"",
		];
		// A length never breaks at the end of a line.
		const [tab, first] = under(desk, QUOTE, "Pieces", 0);
		expect(desk.read(tab, area(first, 5, 1)).flat()).toEqual(
			lines.map((line) => line.replace(/ (?=[mc]m)/g, "\u00a0")),
		);
	});

	test("shows nothing of the studio's own numbers", () => {
		const texts = quote.blocks.flatMap(({ rows = [] }) =>
			rows.flat().map(String),
		);
		const read = texts.flatMap((text) =>
			[...text.matchAll(/\{(?:at|studio|tab):[^}]+\}/g)].map(
				([token]) => token,
			),
		);
		expect([...new Set(read)].sort()).toEqual([
			"{at:Job.client}",
			"{at:Job.title}",
			"{at:Quote.holds_until}",
			"{at:Quote.open}",
			"{at:Quote.quotedOn}",
			"{at:Tones.look_words}",
			"{at:Tones.sampleNumber}",
			"{studio:quote_days}",
			"{studio:studio_name}",
		]);
		const shown = desk.display("1 Quote", "A1:E62").flat().join("\n");
		const own = [
			...["Cost", "Margin", "Hours of work", "Pigment", "Work"].map((label) =>
				beside(desk, TAB, label),
			),
			beside(desk, TAB, "Mix, its waste and the paste in it"),
			under(desk, TAB, "Needed", "Umber", "Material"),
			under(desk, TAB, "Needed", "White cement", "Material"),
			cellOf("Cost.changes", 1, 2),
		].map((place) => desk.display(...place)[0]?.[0] ?? "");
		for (const number of own) {
			expect(number).toMatch(/\d/);
			expect(shown).not.toContain(number);
		}
		expect(shown).not.toMatch(/cost|margin|hour|pigment|dose|waste/i);
	});
});

test("a job without pieces has no price, and no error", async () => {
	await cleared(desk, "Job.pieces", 4, 16);
	await cleared(desk, "Job.cutouts", 3, 9);
	await typed(desk, [...PRICE_TYPED, ""]);
	const mine = ["1 Cure", "1 Cost", "1 Quote"];
	expect(desk.errors().filter(({ tab }) => mine.includes(tab))).toEqual([]);
	expect(inOrder()).toBe("not known yet: type the pieces");
	for (const label of ["Total", "Deposit to begin", "Balance on delivery"])
		expect(value(beside(desk, "1 Quote", label))).toBe(
			"not known yet: type the pieces",
		);
}, 60_000);
