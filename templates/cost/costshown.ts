import { CARD_ROWS } from "../../src/job/cells/jobcells";
import { GOODS } from "../../src/job/fields/cost";
import { OPERATION_KEYS } from "../../src/job/fields/operations";
import { MOST } from "../../src/job/jobfile";
import {
	COST_MATERIALS,
	COST_SUMMARY,
	COST_WORK,
	SUMMARY_ROWS,
} from "../../src/job/tabs/cost";
import { answerList, answerTable, moved } from "../blocks";
import { shareBars } from "../drawn";
import type { Block } from "../plan";
import { CHANGES, WORK_AT } from "./costtyped";

const SUMMARY = "A3";
/** Columns of values beside each label of the summary. */
const COLUMNS = 3;

/** Ingredients of a mix, pigments, sealer, goods, and their total. */
const MATERIAL_ROWS =
	CARD_ROWS.weighed - 1 + MOST.pigments + 1 + MOST.goods + 1;

/** Parts of the cost, and their sum. */
const PARTS = SUMMARY_ROWS.plans - SUMMARY_ROWS.parts - 1;

const headingRow = (row: number): Block => ({
	at: moved(SUMMARY, row),
	look: "heading",
	size: [1, COLUMNS + 1],
});

const rightOfTypedRows = Object.keys(GOODS).length;

/** Price, cost and margin, where the cost is, three plans; beside it the materials, and beside the typed hours what they come to. */
export const costShownBlocks: readonly Block[] = [
	...answerList({
		at: SUMMARY,
		answer: COST_SUMMARY,
		right: 1,
		columns: COLUMNS,
		slots: { price: 0, price_met: 5 },
	}),
	headingRow(SUMMARY_ROWS.parts),
	headingRow(SUMMARY_ROWS.plans),
	{
		at: moved(SUMMARY, SUMMARY_ROWS.parts + 1, 2),
		look: "result",
		size: [PARTS, 1],
		formats: "percent",
		slot: "part_shares",
	},
	shareBars(
		moved(SUMMARY, SUMMARY_ROWS.parts + 1, COLUMNS + 1),
		"{at:Cost.part_shares}",
		PARTS,
	),
	...answerTable({
		at: "G3",
		answer: COST_MATERIALS,
		rows: MATERIAL_ROWS,
	}),
	{
		at: moved(CHANGES, 1, rightOfTypedRows + 1),
		look: "result",
		size: [MOST.changes, 1],
		rows: [
			[
				`=ARRAYFORMULA(IF(${["names", "prices", "costs"].map((column) => `({at:Cost.change_${column}}="")`).join("*")};"";IF({at:Cost.change_days}="";"not agreed: not on the quote";"on the quote")))`,
			],
		],
	},
	...answerTable({
		at: moved(WORK_AT, 0, rightOfTypedRows + 1),
		answer: COST_WORK,
		rows: OPERATION_KEYS.length + 1,
	}),
];
