/** The page for the client and the row of the Jobs tab; money by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Known, orNull, saying } from "../../../src/job/answers/known";
import { pieceWords } from "../../../src/job/answers/money/quotewords";
import { answersOf, type Changed, demoJob, known } from "./demofiles";

const quoteOf = (job: Changed["job"]) => answersOf("metric", { job }).quote;

describe("the quote", () => {
	test.each([
		// Price, then 20% tax, total, half of it: a cent left over goes to the deposit.
		[3000, 600, 3600, 1800, 1800],
		[1000.01, 200, 1200.01, 600.01, 600],
		[999.99, 200, 1199.99, 600, 599.99], // 199.998
		[1234.56, 246.91, 1481.47, 740.74, 740.73], // 246.912
	])(
		"of %f adds up to the cent",
		(priceTyped, tax, total, deposit, balance) => {
			const quote = quoteOf({ priceTyped });
			expect(known(quote.net)).toBe(priceTyped);
			expect(known(quote.tax)).toBe(tax);
			expect(known(quote.total)).toBe(total);
			expect(known(quote.paid.total)).toBe(0);
			expect(known(quote.deposit)).toBe(deposit);
			expect(known(quote.balance)).toBe(balance);
		},
	);

	test.each<[string, number[], number, number, string]>([
		// Of 3600, half is the deposit.
		["nothing", [], 1800, 1800, "€ 1800.00 to begin, € 1800.00 on delivery"],
		[
			"a part of the deposit",
			[500],
			1300,
			1800,
			"€ 1300.00 to begin, € 1800.00 on delivery",
		],
		["the deposit", [1800], 0, 1800, "€ 1800.00 on delivery"],
		[
			"more than the deposit",
			[1800, 700.5],
			0,
			1099.5,
			"€ 1099.50 on delivery",
		],
		["all", [1800, 1800], 0, 0, "paid in full"],
		["all, and some back", [1800, 1900, -100], 0, 0, "paid in full"],
		[
			"too much",
			[1800, 2000],
			0,
			-200,
			"Look: € 200.00 more was paid than the quote comes to",
		],
	])("once %s is paid", (_, amounts, deposit, balance, say) => {
		const payments = amounts.map((amount, at) => ({
			for: at === 0 ? "deposit" : "balance",
			amount,
		}));
		const quote = quoteOf({ priceTyped: 3000, payments });
		expect(known(quote.deposit)).toBe(deposit);
		expect(known(quote.balance)).toBe(balance);
		expect(quote.open.say).toBe(say);
	});

	test("paid, deposit and balance are the total, to the cent, whatever was changed, credited, paid and given back", () => {
		const cents = (min: number, max: number) =>
			fc.integer({ min: min * 100, max: max * 100 });
		const day = fc.constantFrom("2027-02-01", undefined);
		// Shares as a person types them: in hundredths of a percent.
		const share = fc.integer({ min: 0, max: 10_000 });
		fc.assert(
			fc.property(
				cents(1, 20_000),
				fc.boolean(),
				fc.array(fc.tuple(cents(-3000, 3000), day), { maxLength: 6 }),
				fc.array(
					fc.tuple(
						fc.constantFrom("deposit", "balance", "change"),
						cents(-2000, 9000),
					),
					{ maxLength: 8 },
				),
				share,
				share,
				(price, agreed, changes, payments, deposit, tax) => {
					const { quote, line } = answersOf("metric", {
						job: {
							[agreed ? "priceAgreed" : "priceTyped"]: price / 100,
							stage: "ordered",
							changes: changes.map(([amount, agreedOn]) => ({
								what: "A change",
								price: amount / 100,
								...(agreedOn && { agreedOn }),
							})),
							payments: payments.map(([what, amount]) => ({
								for: what,
								amount: amount / 100,
							})),
						},
						settings: { deposit: deposit / 1e4, tax: tax / 1e4 },
					});
					const whole = (part: Known<number | undefined>) => {
						const amount = Number(known(part)) * 100;
						expect(Math.abs(amount - Math.round(amount))).toBeLessThan(1e-5);
						return Math.round(amount);
					};
					const sum = (all: readonly number[]) =>
						all.reduce((total, one) => total + one, 0);
					const received = sum(payments.map(([, amount]) => amount));
					const sold =
						price + sum(changes.map(([amount, on]) => (on ? amount : 0)));
					expect(whole(quote.net)).toBe(sold);
					// Half a cent goes away from 0; a share has four decimals, so that the product is exact.
					const exact = (Math.abs(sold) * tax) / 1e4;
					expect(whole(quote.tax)).toBe(
						Math.sign(sold) * Math.floor(exact + 0.5) || 0,
					);
					const total = whole(quote.total);
					expect(total).toBe(sold + whole(quote.tax));
					expect(whole(quote.paid.total)).toBe(received);
					expect(received + whole(quote.deposit) + whole(quote.balance)).toBe(
						total,
					);
					expect(known(quote.deposit)).toBeGreaterThanOrEqual(0);
					expect(whole(line.toPay)).toBe(total - received);
					expect(
						whole(line.depositReceived) + whole(line.balanceReceived),
					).toBe(received);
					const tooMuch = received > total || total < 0;
					expect(quote.open.state).toBe(tooMuch ? "look" : "fine");
				},
			),
			{ numRuns: 200 },
		);
	});

	test("after a change order, what was agreed to begin is settled, and the rest is due on delivery", () => {
		const job = {
			priceAgreed: 3000,
			acceptedOn: "2027-01-20",
			payments: [{ for: "deposit", amount: 1800 }],
			changes: [{ what: "Second sink", price: 380, agreedOn: "2027-02-01" }],
		};
		const quote = quoteOf(job);
		expect(known(quote.total)).toBe(4056); // (3000 + 380) × 1.2
		expect(known(quote.paid.total)).toBe(1800);
		expect(known(quote.deposit)).toBe(0);
		expect(known(quote.balance)).toBe(2256);
		expect(quote.open.say).toBe("€ 2256.00 on delivery");
		// A credit of 1700: 1300 × 1.2 = 1560 in all, of which 1800 is paid.
		const credit = { what: "No basin", price: -1700, agreedOn: "2027-02-02" };
		const less = quoteOf({ ...job, changes: [credit] });
		expect(known(less.deposit)).toBe(0);
		expect(known(less.balance)).toBe(-240);
		expect(less.open.say).toBe(
			"Look: € 240.00 more was paid than the quote comes to",
		);
		// Half of what was agreed is more than all that is left to sell: nothing is asked twice.
		const most = quoteOf({ ...job, payments: [], changes: [credit] });
		expect(known(most.deposit)).toBe(1560);
		expect(known(most.balance)).toBe(0);
	});

	test("credits above the price are said as such, with nothing paid at all", () => {
		const { open } = quoteOf({
			priceAgreed: 100,
			changes: [{ what: "Less", price: -150, agreedOn: "2027-02-01" }],
		});
		expect(open.say).toBe(
			"Look: the credits are € 60.00 more than the price, tax included",
		);
	});

	test("an agreed price is kept, whatever becomes of the cost and the pieces", () => {
		const agreed = { priceAgreed: 3000, acceptedOn: "2027-01-20" };
		const more = [
			...demoJob("metric").pieces,
			{
				name: "Bench",
				quantity: 9,
				shape: "rectangle",
				a: 900,
				b: 400,
				thickness: 30,
			},
		];
		for (const changed of [
			{ settings: { labor_rate: 400 } },
			{ settings: { labor_rate: "" } },
			{ job: { pieces: more } },
		]) {
			const { quote } = answersOf("metric", {
				...changed,
				job: { ...agreed, ...changed.job },
			});
			expect(known(quote.net)).toBe(3000);
			expect(known(quote.total)).toBe(3600);
		}
	});

	test("pieces first, then their price and each agreed change", () => {
		const { lines, net } = quoteOf({
			priceTyped: 1000,
			changes: [
				{ what: "Asked", price: 70 },
				{ what: "Second cutout", price: 180.255, agreedOn: "2027-02-01" },
			],
		});
		expect(
			lines.map(({ text, amount }) => [
				text.replace(/\u00a0/g, " "),
				amount && orNull(amount),
			]),
		).toEqual([
			[
				"1 × Breakfast bar: L, 2150 mm × 1480 mm, notch 1500 mm × 830 mm, 30 mm thick, drop edge 60 mm",
				null,
			],
			["2 × Vanity top: 980 mm × 52 cm, 30 mm thick", null],
			["1 × Round table: round, 900 mm across, 28 mm thick", null],
			[
				"1 × Hand basin: basin, 460 mm × 340 mm, 130 mm high, 22 mm thick",
				null,
			],
			["Pieces as listed", 1000],
			["Second cutout", 180.26],
		]);
		expect(known(net)).toBe(1180.26);
	});

	test.each([
		[{ shape: "oval", a: 900, b: 600 }, "oval, 900 mm × 600 mm"],
		[{ shape: "tube", a: 300, c: 450 }, "tube, 300 mm across, 450 mm high"],
		[
			{ shape: "U", a: 900, b: 600, c: 200, d: 100 },
			"U, 900 mm × 600 mm, notch 200 mm × 100 mm",
		],
		[{ shape: "area", a: 1.25 }, "to template, 1.25 m²"],
		[{ a: "2.4 m", b: "52 cm" }, "2.4 m × 52 cm"],
	])("%o in words", (sizes, words) => {
		const row = { name: "Top", quantity: 1, thickness: 30, ...sizes };
		expect(pieceWords(row, "metric").replace(/\u00a0/g, " ")).toBe(
			`1 × Top: ${words}, 30 mm thick`,
		);
	});

	test("a length never breaks at the end of a line", () => {
		const row = {
			name: "Top",
			quantity: 1,
			a: "84 1/2",
			b: "58",
			thickness: "1 1/4",
		};
		expect(pieceWords(row, "us")).toBe(
			"1 × Top: 84\u00a01/2\u00a0in × 58\u00a0in, 1\u00a01/4\u00a0in thick",
		);
	});

	test("holds for the studio's days from its date", () => {
		expect(known(quoteOf({ quotedOn: "2027-01-10" }).holdsUntil)).toBe(
			"2027-02-09", // 30 days
		);
		expect(saying(quoteOf({}).holdsUntil)).toMatch(/^not known yet: /);
	});

	test("of a job that cannot be priced is not known", () => {
		const { quote } = answersOf("metric", { settings: { labor_rate: "" } });
		expect(orNull(quote.total)).toBeNull();
		expect(quote.open.state).toBe("unknown");
	});
});

describe("the row on the Jobs tab", () => {
	const lineOf = (job: Changed["job"]) => answersOf("metric", { job }).line;

	test("says what is received, and what is still to be paid once it is ordered", () => {
		const job = {
			priceTyped: 3000,
			payments: [
				{ for: "deposit", amount: 1800 },
				{ for: "change", amount: 100 },
				{ for: "balance", amount: 50.25 },
			],
		};
		const line = lineOf({ ...job, stage: "ordered" });
		expect(known(line.depositReceived)).toBe(1800);
		expect(known(line.balanceReceived)).toBe(150.25);
		expect(known(line.toPay)).toBe(1649.75); // 3600 − 1950.25
		expect(known(lineOf(job).toPay)).toBeUndefined();
		expect(known(lineOf(job).stage)).toBe("priced");
	});

	test("has the day of each step; the pour that is typed until there is a calendar", () => {
		const line = lineOf({ pourDate: "2027-03-06" });
		expect(known(line.pour)).toBe("2027-03-08"); // the Monday after
		expect(known(lineOf({}).deliver)).toBe("2027-03-23");
		const unset = answersOf("metric", { settings: { fill_days: "" } }).line;
		expect(known(unset.pour)).toBe("2027-03-09");
		expect(orNull(unset.fill)).toBeNull();
	});
});
