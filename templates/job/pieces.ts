import { TABLE_TITLES } from "../../src/job/cells/jobcells";
import { CUTOUT, KNOCKOUT } from "../../src/job/fields/openings";
import { PIECE } from "../../src/job/fields/piece";
import { JOB_LOADS, JOB_PIECES } from "../../src/job/tabs/pieces";
import { answerTable, typedTable } from "../blocks";
import type { Block } from "../plan";

const pieces = typedTable({
	at: "A12",
	slot: "pieces",
	fields: PIECE,
	rows: 20,
});
const cutouts = typedTable({
	at: "A35",
	slot: "cutouts",
	fields: CUTOUT,
	rows: 12,
});
const knockouts = typedTable({
	at: "A50",
	slot: "knockouts",
	fields: KNOCKOUT,
	rows: 8,
});

export const pieceTyping = [pieces, cutouts, knockouts];

/** The cells of the pieces, cutouts and knockouts, under their titles. */
export const PIECES_REGION = "A12:P58";

const columnOf = (key: keyof typeof PIECE): string =>
	String.fromCharCode(65 + Object.keys(PIECE).indexOf(key));

/** The column of a field of the pieces. */
const pieceColumn = (slot: string, key: keyof typeof PIECE): Block => ({
	at: `${columnOf(key)}13`,
	look: "input",
	size: [20, 1],
	slot,
});

/** The pieces with what follows for each, what is left out of them, and which castings share a load. */
export const pieceBlocks: readonly Block[] = [
	{ at: "A11", look: "total", rows: [["Pieces"]] },
	{
		at: "C11",
		look: "note",
		rows: [
			[
				"Seen from above, in place: A from left to right, B from front to back. Notch and drop edge as they are finished, not as in the mold.",
			],
		],
	},
	...pieces.blocks,
	pieceColumn("piece_names", "name"),
	pieceColumn("quantities", "quantity"),
	pieceColumn("faces", "face"),
	pieceColumn("notches", "notch"),
	...answerTable({
		at: "Q12",
		answer: JOB_PIECES,
		// The rows of the pieces end where the title of the cutouts stands.
		rows: 21,
		slots: {
			weights: 0,
			people: 1,
			carrying: 3,
			finish_areas: 8,
			longest_sides: 11,
			turned: 23,
			mold_hands: 24,
		},
	}),
	{
		at: "Q34",
		look: "caution",
		rows: [
			[
				"A screening by weight and strength, no design: torsion, sharp inside corners and a fall are not in it. Lift with clear room and one person calling. Local rules and a licensed engineer come first.",
			],
		],
	},
	{ at: "A34", look: "total", rows: [[TABLE_TITLES.cutouts]] },
	...cutouts.blocks,
	{ at: "A49", look: "total", rows: [[TABLE_TITLES.knockouts]] },
	{
		at: "Q49",
		look: "note",
		rows: [
			[
				"Forms that keep mix out, by volume or by A × B × depth below the mix. Held with: what screws, weights or bars hold down, for each. The Mold tab says what each needs.",
			],
		],
	},
	...knockouts.blocks,
	{
		at: "A59",
		look: "note",
		rows: [
			[
				"The upward mass is the least that holds it in still mix: hold with more where it is vibrated or poured from a height.",
			],
		],
	},
	{ at: "Q61", look: "total", rows: [["Mixer loads"]] },
	...answerTable({
		at: "Q62",
		answer: JOB_LOADS,
		rows: 40,
		slot: "load_table",
		slots: {
			load_numbers: 0,
			load_castings: 1,
			load_masses: 2,
			load_shares: 3,
		},
	}),
];
