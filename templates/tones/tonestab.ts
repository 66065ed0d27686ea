import { lines } from "../blocks";
import type { Tab } from "../plan";
import { tonesAnswers } from "./tonesanswers";
import { TONES_REGION, tonesChoices, tonesTyped } from "./tonestyping";

/** The mix, its tones and the pigment they take. */
export const tones: Tab = {
	name: "Tones",
	color: "#8a5a2b",
	rows: 130,
	widths: [
		150,
		190,
		...Array<number>(4).fill(66),
		46,
		...Array<number>(10).fill(80),
		240,
		...Array<number>(5).fill(80),
		240,
	],
	frozenRows: 1,
	frozenColumns: 1,
	names: { tones: TONES_REGION },
	blocks: [
		{ at: "A1", look: "title", rows: [['="Tones · "&{at:Job.title}']] },
		lines(
			"A2",
			"note",
			"Type in the tinted cells. Shares are of the whole batch; in a mold lay-up, of the toned face. Name each pigment above its doses, which are as its maker states them.",
		),
		...tonesTyped,
		...tonesAnswers,
		lines(
			"A77",
			"note",
			"Dry mix is every solid but the rows with fiber in their name. Water that comes with pigment is left out of the mix water, on the Pour card and in the sample.",
		),
		{ at: "A79", look: "caution", rows: [["Cautions"]] },
		lines(
			"A80",
			"note",
			"Pigment and cement dust: measure out with extraction or a fitted respirator, and wet down spills. The data sheet of the actual pigment comes before any number here.",
			"A dose above what its maker allows weakens the piece; fiber-rich mixes stiffen early with strong doses: cast a sample first.",
		),
	],
	choices: tonesChoices,
};
