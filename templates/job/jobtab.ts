import type { Tab } from "../plan";
import { checkBlocks } from "./jobchecks";
import { headBlocks, headTyping } from "./jobhead";
import { PIECES_REGION, pieceBlocks, pieceTyping } from "./pieces";

const CLIENT = "{at:Job.client}";
const TITLE = "{at:Job.title}";

/** The pieces of a job, what they weigh, how they are lifted and cast, and what is wrong with the job. */
export const job: Tab = {
	name: "Job",
	color: "#8a5a2b",
	rows: 130,
	widths: [
		...[150, 40, 104],
		...Array<number>(4).fill(60),
		...Array<number>(5).fill(80),
		...[100, 100, 100, 80],
		...[90, 90, 360, 420, 380],
		...Array<number>(8).fill(90),
		200,
		...Array<number>(10).fill(90),
		...Array<number>(5).fill(200),
	],
	frozenRows: 1,
	frozenColumns: 1,
	names: { head: "A3:C9", pieces: PIECES_REGION },
	blocks: [
		{
			at: "A1",
			look: "title",
			rows: [
				[
					`=IF(${CLIENT}&${TITLE}="";"New job";${CLIENT}&IF((${CLIENT}="")+(${TITLE}="")>0;"";" · ")&${TITLE})`,
				],
			],
			slot: "heading",
		},
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Type in the tinted cells. Lengths as you say them: 8 ft 1/2 in, 25-1/2 in, 2.4 m, 65 cm. Without a unit: {length}.",
				],
			],
		},
		...headBlocks,
		...pieceBlocks,
		...checkBlocks,
	],
	choices: [
		...headTyping.choices,
		...pieceTyping.flatMap(({ choices }) => choices),
	],
};
