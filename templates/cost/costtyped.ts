import { TABLE_TITLES } from "../../src/job/cells/jobcells";
import {
	CHANGE,
	GOODS,
	GOODS_STARTS,
	PAYMENT,
	PLANS,
	PRICE,
	TRAVEL,
	WHAT_IF,
	WHAT_IF_STARTS,
	WORK,
	WORK_ROW,
} from "../../src/job/fields/cost";
import { OPERATION_KEYS, OPERATIONS } from "../../src/job/fields/operations";
import { MOST } from "../../src/job/jobfile";
import {
	formatOf,
	lines,
	moved,
	startsOf,
	type Typing,
	typedList,
	typedTable,
} from "../blocks";
import type { Block } from "../plan";

const WHAT_IFS = "A37";
/** The headings of the change orders, beside which stands what became of each. */
export const CHANGES = "A48";
/** The heading of the table of work, beside which the hours are answered. */
export const WORK_AT = "A70";

const price = typedList({
	at: "A42",
	fields: PRICE,
	starts: startsOf(PRICE),
});
const changes = typedTable({
	at: CHANGES,
	slot: "changes",
	fields: CHANGE,
	rows: MOST.changes,
	slots: {
		change_names: "what",
		change_prices: "price",
		change_costs: "cost",
		change_days: "agreedOn",
	},
});
const payments = typedTable({
	at: "A58",
	slot: "payments",
	fields: PAYMENT,
	rows: MOST.payments,
});
const goods = typedTable({
	at: "A80",
	slot: "goods",
	fields: GOODS,
	rows: MOST.goods,
	starts: GOODS_STARTS.map(({ what, unit }) => [what, unit]),
});
const travel = typedTable({
	at: "A91",
	slot: "travel",
	fields: TRAVEL,
	rows: MOST.travel,
});

export const costTyping: readonly Typing[] = [
	price,
	changes,
	payments,
	goods,
	travel,
];

/** What is typed of price, plans, changes, payments, work, goods and travel. */
export const COST_REGION = "A36:E95";

const title = (at: string, words: string): Block => lines(at, "total", words);

/** The two plans beside the planned one, in the columns in which they are answered above. */
const whatIfBlocks: readonly Block[] = [
	{
		at: "A36",
		look: "heading",
		rows: [["Plans to try", "", PLANS[1], PLANS[2]]],
	},
	...Object.entries(WHAT_IF).flatMap(([key, field], row): Block[] => [
		{ at: moved(WHAT_IFS, row), look: "label", rows: [[field.label]] },
		{
			at: moved(WHAT_IFS, row, 2),
			look: "input",
			slot: key,
			rows: [WHAT_IF_STARTS.map((plan) => plan[key as keyof typeof plan])],
			formats: formatOf(field),
		},
	]),
];

/** A row for each operation: its name stands there, its hours are typed. */
const workBlocks: readonly Block[] = [
	{
		at: WORK_AT,
		look: "heading",
		wrap: true,
		rows: [Object.values(WORK_ROW).map(({ label }) => label)],
	},
	{
		at: moved(WORK_AT, 1),
		look: "label",
		rows: OPERATION_KEYS.map((key) => [OPERATIONS[key].label]),
	},
	{
		at: moved(WORK_AT, 1, 1),
		look: "input",
		size: [OPERATION_KEYS.length, Object.keys(WORK).length],
		slot: "work",
		rows: OPERATION_KEYS.map((key) => [OPERATIONS[key].hoursEach]),
		formats: "number",
	},
];

export const costTypedBlocks: readonly Block[] = [
	...whatIfBlocks,
	...price.blocks,
	title("A47", TABLE_TITLES.changes),
	...changes.blocks,
	title("A57", TABLE_TITLES.payments),
	...payments.blocks,
	title("A69", TABLE_TITLES.work),
	...workBlocks,
	title("A79", TABLE_TITLES.goods),
	...goods.blocks,
	title("A90", TABLE_TITLES.travel),
	...travel.blocks,
	lines(
		"A97",
		"note",
		"The card fee is a share of all that the client pays, tax too; a price covers it and the margin.",
		"Cost: materials and work, overhead on both, the remake allowance on all three; then travel.",
		"Hours each are invented: put your own. Typed hours count in place of those worked out.",
		"Waste of the mix is in these amounts already. A job pays for what it uses; whole packs to buy leave the rest on the shelf. Water is free.",
	),
];
