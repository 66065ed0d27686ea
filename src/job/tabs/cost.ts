/** What the Cost tab answers: price and cost with their parts and three plans, the hours, the materials and what to buy. */
import { isKnown, orNull } from "../answers/known";
import { type BuyRow, buyTotals } from "../answers/money/buy";
import { costParts } from "../answers/money/costparts";
import { countedGoods } from "../answers/money/materialcost";
import type { PlanAnswer } from "../answers/money/whatifs";
import { wholeFrom } from "../answers/whole";
import { workRows } from "../cells/jobcells";
import { isEmpty } from "../cells/regions";
import { operationKey } from "../fields/operations";
import type { Shown, TabAnswer, Value } from "./tab";

/** The typed cells that a price follows from. */
export const PRICE_NEEDS = [
	"head",
	"pieces",
	"tones",
	"cure",
	"cost",
	"quote",
	"mixes",
	"pigments",
	"stock",
] as const;

const money = (label: string, by?: string): Shown => ({
	label,
	format: "money",
	...(by && { by }),
});
const share = (label: string, by?: string): Shown => ({
	label,
	format: "share",
	...(by && { by }),
});

const HEAD: readonly Shown[] = [
	money("Price without tax, with change orders"),
	money("Without change orders"),
	money("Cost"),
	share("Margin", "MARGIN_OF"),
	{ label: "Hours of work", format: "number" },
	{ label: "Check", format: "text" },
	money("Cost as it came out"),
];

const PARTS: readonly Shown[] = [
	{ label: "Where the cost is", format: "text" },
	money("Mix, its waste and the paste in it"),
	money("Pigment"),
	money("Sealer"),
	money("Mold and other goods"),
	money("Materials together"),
	money("Work"),
	money("Overhead on both"),
	money("Remake allowance"),
	money("Travel and outside help"),
	money("Card fee, on the quote's total"),
	money("Change orders"),
	money("Cost, all together"),
];

const PLAN: readonly Shown[] = [
	{ label: "Three plans", format: "text" },
	share("Margin wanted"),
	share("Hours, share of those below"),
	share("Materials, share of those below"),
	share("Change to the price"),
	money("Cost without card fee"),
	money("Price for the margin", "PRICE_FOR_MARGIN"),
	money("Price"),
	money("Its cost"),
	money("Left over"),
	share("Margin left", "MARGIN_OF"),
	{ label: "Its hours", format: "number" },
];

/** Rows of the summary at which its parts begin. */
export const SUMMARY_ROWS = {
	parts: HEAD.length,
	plans: HEAD.length + PARTS.length,
} as const;

const planValues = (plan: PlanAnswer): Value[] => [
	plan.name,
	...(["margin", "hours", "materials", "change"] as const).map(
		(key): Value =>
			isKnown(plan.assumed) ? plan.assumed.is[key] : plan.assumed,
	),
	plan.costWithoutFee,
	plan.priceForMargin,
	plan.price,
	plan.cost,
	plan.left,
	plan.marginLeft,
	plan.hours,
];

const blanks = (shown: readonly Shown[]): Value[] => shown.map(() => "");

export const COST_SUMMARY: TabAnswer = {
	name: "COST_SUMMARY",
	summary:
		"What a job costs and sells for, where the cost is, and three plans side by side.",
	needs: PRICE_NEEDS,
	shape: "list",
	shown: [...HEAD, ...PARTS, ...PLAN],
	values(input) {
		const cost = wholeFrom(input).cost();
		const parts = costParts(cost);
		const [planned = [], tighter = [], rush = []] = cost.plans.map(planValues);
		const noGoods = countedGoods(cost.materials).length === 0;
		return [
			[
				cost.price,
				cost.basePrice,
				cost.cost,
				cost.margin,
				cost.hours,
				cost.check,
				cost.cameTo,
				"Amount",
				...parts.map(({ amount }) => amount),
				...planned,
			],
			[
				...blanks(HEAD),
				"Of cost",
				// The amount beside it says what is missing.
				...parts.map((part) => orNull(part.share) ?? ""),
				...tighter,
			],
			[
				...blanks(HEAD),
				"",
				...parts.map(({ key }) =>
					key === "goods" && noGoods ? "none typed yet" : "",
				),
				...rush,
			],
		];
	},
};

export const COST_WORK: TabAnswer = {
	name: "COST_WORK",
	summary: "The hours of each operation, worked out or typed, and their cost.",
	needs: ["head", "pieces", "tones", "cost", "mixes"],
	shape: "table",
	shown: [
		{ label: "For each", format: "text" },
		{ label: "How many", format: "number" },
		{ label: "Worked out, hours", format: "number" },
		{ label: "Hours", format: "number" },
		{ label: "Amount", format: "money" },
	],
	values(input) {
		const { rows, hours, amount } = wholeFrom(input).cost().work;
		const typed = workRows(input.regions.cost ?? [], input.units);
		const filled = typed.map(isEmpty).lastIndexOf(false) + 1;
		return [
			...typed.slice(0, filled).map(({ operation }): Value[] => {
				const row = rows.find(({ key }) => key === operationKey(operation));
				return row
					? [row.forEach, row.count, row.workedOut, row.hours, row.amount]
					: [];
			}),
			["Total", "", "", hours, amount],
		];
	},
};

export const COST_MATERIALS: TabAnswer = {
	name: "COST_MATERIALS",
	summary:
		"What a job takes of each material, what that costs, and what to buy.",
	needs: [
		"head",
		"pieces",
		"tones",
		"cure",
		"cost",
		"mixes",
		"pigments",
		"stock",
	],
	shape: "table",
	shown: [
		{ label: "Material", format: "text" },
		{ label: "Unit", format: "text" },
		{ label: "Needed", format: "number" },
		{ label: "Pack", format: "plain" },
		money("Pack price"),
		money("Part of the cost"),
		{ label: "On hand, from Stock", format: "plain" },
		{ label: "Packs to buy", format: "whole", by: "PACKS_TO_BUY" },
		money("To pay"),
		{ label: "Note", format: "text" },
	],
	values(input) {
		const rows = wholeFrom(input).buy();
		const { cost, toPay } = buyTotals(rows);
		return [
			...rows.map(buyValues),
			["Total", "", "", "", "", cost, "", "", toPay, ""],
		];
	},
};

/** What is not known of a material is said once in its row. */
function buyValues(row: BuyRow): Value[] {
	const { name, unit, needed, pack, packPrice, onHand, counted } = row;
	const ofNeed = isKnown(needed)
		? [row.cost, onHand, row.packs, row.toPay]
		: ["", onHand, "", ""];
	return [
		name,
		unit,
		needed,
		...(row.isFree
			? [orNull(pack) ?? "", orNull(packPrice) ?? ""]
			: [pack, packPrice]),
		...ofNeed,
		counted.state === "fine" ? "" : counted,
	];
}
