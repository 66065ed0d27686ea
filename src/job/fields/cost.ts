/** What a job costs, what it sells for, and what was agreed and paid. */
import { day, money, number, type Row, share, text, word } from "./field";

export const PLANS = ["as planned", "tighter", "rush"] as const;

export const PRICE = {
	priceFrom: word("Price from", PLANS, { start: "as planned" }),
	priceTyped: money("Or this price, without tax"),
	byCard: share("Paid by card, share", { start: 1 }),
	spent: money("Spent on materials, when it is done", { once: true }),
};

/** A plan beside the planned one. */
export const WHAT_IF = {
	margin: share("Margin wanted", {}, { below: 1 }),
	hours: share("Hours, share of those below", {}, { max: 10 }),
	materials: share("Materials, share of those below", {}, { max: 10 }),
	change: share("Change to the price", {}, { min: -1, max: 10 }),
};

/** The two plans as a new job has them. */
export const WHAT_IF_STARTS = [
	{ margin: 0.3, hours: 0.9, materials: 1, change: 0 },
	{ margin: 0.35, hours: 1.15, materials: 1.05, change: 0.1 },
] as const;

export const CHANGE = {
	what: text("What", { once: true }),
	price: money("Price", { once: true }, {}),
	cost: money("Its cost", { once: true }, {}),
	agreedOn: day("Agreed on", { once: true }),
};

export const PAYMENT = {
	for: word("For", ["deposit", "balance", "change"], { once: true }),
	amount: money("Amount", { once: true }, {}),
	on: day("Paid on", { once: true }),
};

/** Work of one operation. */
export const WORK = {
	hoursEach: number("Hours each"),
	hours: number("Typed, hours", {
		help: "Counts in place of what is worked out.",
	}),
	worked: number("Hours it took", { once: true }),
};

/** A row of the table of work: its operation, and the hours of it. */
export const WORK_ROW = { operation: text("Operation"), ...WORK };

export const GOODS = {
	what: text("What, as Stock calls it"),
	unit: text("Unit"),
	quantity: number("Quantity"),
	pack: number("Pack, unless in Stock", {}, { above: 0 }),
	packPrice: money("Pack price"),
};

/** The goods that a new job has rows for: how many of each is counted from the molds, or a person's. */
export const GOODS_STARTS = [
	{ what: "Mold sheet", unit: "sheet" },
	{ what: "Strips", unit: "strip" },
	{ what: "Sealant", unit: "tube" },
	{ what: "Release", unit: "can" },
	{ what: "Knockouts", unit: "piece" },
	{ what: "Cover sheet", unit: "roll" },
	{ what: "Screws", unit: "screw" },
] as const;

export const TRAVEL = {
	what: text("What"),
	amount: money("Amount"),
};

export const QUOTE = {
	quotedOn: day("Date", { once: true }),
	priceAgreed: money("Price agreed", { once: true }),
	acceptedOn: day("Accepted on", { once: true }),
};

export type PriceRow = Row<typeof PRICE>;
export type WhatIfRow = Row<typeof WHAT_IF>;
export type ChangeRow = Row<typeof CHANGE>;
export type PaymentRow = Row<typeof PAYMENT>;
export type WorkRow = Row<typeof WORK>;
export type GoodsRow = Row<typeof GOODS>;
export type TravelRow = Row<typeof TRAVEL>;
export type QuoteRow = Row<typeof QUOTE>;
