import { lines } from "../blocks";
import type { Tab } from "../plan";
import { QUOTE_REGION, quoteLineBlocks, quoteTyping } from "./quotepage";

/** The page for the client. */
export const quote: Tab = {
	name: "Quote",
	color: "#8a5a2b",
	rows: 130,
	widths: [420, 20, 190, 130, 90],
	frozenRows: 1,
	hidden: 1,
	names: { quote: QUOTE_REGION },
	blocks: [
		{ at: "A1", look: "title", rows: [["Quote"]] },
		...quoteLineBlocks,
		{ at: "A30", look: "result", size: [15, 4], name: "picture" },
		{ at: "A47", look: "heading", rows: [["Good to know", "", "", ""]] },
		lines(
			"A48",
			"result",
			"Cast by hand: tones, veins, pores and fine lines differ from the sample and from piece to piece.",
			"A sample or a picture shows the range, not the pattern. Color lightens as the piece dries and settles over weeks.",
			"Care: wipe up spills at once, since acids etch and oil stains. Mild soap, nothing that scours.",
			"Boards under knives, trivets under pots. Seal again when water no longer beads.",
			"Pieces are carried and set as agreed; what they stand on must be level and able to bear them.",
			'="This quote holds for "&{studio:quote_days}&" days from its date. Work begins when the deposit is paid."',
			"Changes after that are priced and agreed in writing.",
		),
		lines(
			"A56",
			"label",
			"Agreed, client:",
			"",
			"__________________________________",
			"Name, date",
		),
		lines(
			"C56",
			"label",
			"For the studio:",
			"",
			"__________________________",
			"Name, date",
		),
	],
	choices: quoteTyping.choices,
};
