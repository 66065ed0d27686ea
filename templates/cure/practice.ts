import { lines } from "../blocks";
import type { Block } from "../plan";

/** Where the numbers come from, how the pieces lie while they harden, and what harms hands, lungs and drains. */
export const practiceBlocks: readonly Block[] = [
	{ at: "A50", look: "total", rows: [["What the numbers are"]] },
	lines(
		"A51",
		"note",
		"Strength: EN 1992-1-1, eq. 3.2, kept moist; below 3 days the code asks for tests. Demolding and loading follow a test on this mix, not a formula.",
		"The log has one row per interval: how many hours, and the mean temperature of the piece or of the air under the cover.",
		"Precautions against drying: ACI 305R for mixes that bleed; for mixes with fiber that do not, half of that is common practice.",
		"The paste is this mix without fiber, weighed as if with it. Try its color on the sample first: a filled void cures darker or lighter than the face.",
	),
	{ at: "A56", look: "total", rows: [["While it cures"]] },
	lines(
		"A57",
		"note",
		"Common practice: raised on strips that do not absorb, covered until it may dry, then air on both faces, so that it neither curls nor marks.",
		"Not in sun, draft or frost; do not stack; turn thin slabs on edge.",
	),
	{ at: "A60", look: "caution", rows: [["Cautions"]] },
	lines(
		"A61",
		"note",
		"Silica dust: grind and polish wet; exposure limits of 29 CFR 1926.1153 (construction) and 1910.1053 (shops). Dry sweeping brings it back.",
		"Wash and polishing water is caustic: it burns skin and eyes and does not go down a drain.",
		"Sealer vapor: air through, the respirator of its data sheet, no flame or spark.",
		"Powered wet tools on a ground-fault interrupter (GFCI).",
		"Local codes, the data sheet of the actual material and a licensed engineer come before any number here.",
	),
];
