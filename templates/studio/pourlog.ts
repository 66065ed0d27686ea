import { MOST_FOUND } from "../../src/job/answers/wordsearch";
import { LOGGED } from "../../src/job/fields/log";
import { SWATCH } from "../../src/job/fields/swatch";
import {
	COLORS_FOUND,
	POURS_COUNT,
	POURS_FOUND,
} from "../../src/job/tabs/poursfound";
import { answerTable, calling, lines, typedTable } from "../blocks";
import { painted } from "../drawn";
import type { Tab } from "../plan";

const log = typedTable({ at: "A20", slot: "pours", fields: LOGGED, rows: 300 });

const COLOR = COLORS_FOUND.shown.findIndex(
	({ label }) => label === SWATCH.color.label,
);

/** What each pour was. */
export const pourLog: Tab = {
	name: "Pour log",
	rows: 320,
	widths: [
		90, 60, 190, 60, 190, 330, 90, 90, 90, 90, 90, 90, 90, 190, 190, 90, 90, 30,
		190, 90, 90, 90, 60, 60, 60, 60, 60, 60, 60, 60, 90, 90, 90, 90, 190, 70,
		140, 140,
	],
	frozenRows: 5,
	names: { pours: "A20:Q320", find: "B3" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Pour log"]] },
		lines(
			"A2",
			"note",
			"Type a client, words of a title, a mix, a tone or a lot: the last 12 pours with all of them stand below, and beside them the colors measured (Swatches with them in mix, pigments, lot or remark).",
		),
		{ at: "A3", look: "label", rows: [["Find"]] },
		{ at: "B3", look: "input", size: [1, 2], formats: "text", slot: "find" },
		{ at: "D3", look: "result", rows: [[`=${calling(POURS_COUNT)}`]] },
		{ at: "A4", look: "total", rows: [["Found"]] },
		...answerTable({
			at: "A5",
			answer: POURS_FOUND,
			rows: MOST_FOUND,
			slot: "found",
		}),
		{ at: "S4", look: "total", rows: [["Colors measured"]] },
		...answerTable({
			at: "S5",
			answer: COLORS_FOUND,
			rows: MOST_FOUND,
			slot: "found_colors",
			slots: { colors_found: COLOR },
		}),
		painted("R6", "{at:Pour log.colors_found}", MOST_FOUND),
		{ at: "A19", look: "total", rows: [["Every pour, one row per load"]] },
		...log.blocks,
	],
	choices: log.choices,
};
