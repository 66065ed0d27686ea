import {
	marginOf,
	packsToBuy,
	priceForMargin,
	splitAmounts,
} from "../calc/money";
import { list, number, share } from "./arguments";
import { sheetFunction } from "./declare";

const group = "Money";

export const PACKS_TO_BUY = sheetFunction({
	name: "PACKS_TO_BUY",
	group,
	summary: "Whole packs to buy after what is on hand.",
	params: {
		needed: number("How much the work takes in any unit, e.g. 130", { min: 0 }),
		on_hand: number("How much there is, in the same unit, e.g. 20", { min: 0 }),
		pack: number("What one pack holds, in the same unit, e.g. 25", {
			above: 0,
		}),
	},
	answer: { text: "whole packs" },
	example: {
		shown: ["130", "20", "25"],
		values: [130, 20, 25],
		answer: 5,
		working: "(130 − 20) / 25 = 4.4, rounded up",
	},
	source: "Rounding up",
	compute: ({ needed, on_hand, pack }) =>
		packsToBuy({ needed, onHand: on_hand, pack }),
});

export const PRICE_FOR_MARGIN = sheetFunction({
	name: "PRICE_FOR_MARGIN",
	group,
	summary: "Price that leaves a margin, a share of the price and not of cost.",
	params: {
		cost: number("What it costs, e.g. 75", { min: 0 }),
		margin: share("Margin wanted, e.g. 25%", { min: 0, below: 1 }),
	},
	answer: { text: "the price" },
	example: {
		shown: ["75", "25%"],
		values: [75, 0.25],
		answer: 100,
		working: "75 / (1 − 0.25) = 100",
	},
	source: "Definition of margin; worked examples of Mathematics On Demand",
	compute: ({ cost, margin }) => priceForMargin(cost, margin),
});

export const MARGIN_OF = sheetFunction({
	name: "MARGIN_OF",
	group,
	summary: "Margin that a price leaves, a share of the price.",
	limits: "Negative where the price is below cost.",
	params: {
		price: number("Price, e.g. 100", { above: 0 }),
		cost: number("What it costs, e.g. 75", { min: 0 }),
	},
	answer: { text: "the margin" },
	example: {
		shown: ["100", "75"],
		values: [100, 75],
		answer: 0.25,
		working: "(100 − 75) / 100 = 25%",
	},
	source: "Definition of margin; worked examples of Mathematics On Demand",
	compute: ({ price, cost }) => marginOf(price, cost),
});

export const SPLIT_MONEY = sheetFunction({
	name: "SPLIT_MONEY",
	group,
	summary: "Amounts in proportion to shares that add up to the total.",
	limits:
		"The total is first rounded half away from zero, read as the decimal a sheet shows: 1.005 becomes 1.01. What is left over goes to the largest remainders, ties to the earlier.",
	params: {
		total: number("Amount to split, e.g. 100"),
		shares: list(number("Shares in any proportion, e.g. B2:B4", { min: 0 })),
		decimals: number("Decimals of the currency, 0 to 4, e.g. 2", {
			min: 0,
			max: 4,
			whole: true,
			blank: 2,
		}),
	},
	answer: {
		shape: "column",
		text: "one amount per share",
		beside: "shares",
		turns: true,
	},
	example: {
		shown: ["100", "B2:B4"],
		values: [100, [[1], [1], [1]]],
		answer: [33.34, 33.33, 33.33],
		working: "3 × 33.33 = 99.99; the cent left over goes to the first",
	},
	source: "Largest remainder method (Hare quota)",
	compute: ({ total, shares, decimals }) =>
		splitAmounts(total, shares, decimals),
});
