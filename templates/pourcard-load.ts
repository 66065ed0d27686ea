import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** Columns of the loads. */
export const LOAD_COLUMNS = ["E", "F", "G", "H", "I", "J", "K", "L"];

/** All columns of the Pour card. */
export const CARD = "$A$1:$AB$1";

/** Column of the chosen load. */
const CHOSEN = "$S$12";

/** What is typed for the chosen load in these rows. */
export const ofLoad = (rows: string) => {
	const [first, last] = rows.split(":");
	return `INDEX(E${first}:L${last ?? first};0;${CHOSEN})`;
};

/** What the scale said beside each step of the chosen load. */
export const WEIGHED = ofLoad("65:100");

/** A column of the mix: 1 ingredient, 2 parts, 6 water share, 7 group, 8 moisture, 9 absorption, 10 pack. */
export const mix = (column: number) =>
	`INDEX({at:Tones.mix_table};0;${column})`;

/** Water and solids of the load as they go into the mixer, for its temperature. */
export const SOLIDS = "$S$14";
export const WATER = "$S$15";

/** Which load is chosen. */
export const chosenBlocks: readonly Block[] = [
	{
		at: "S12",
		look: "result",
		// 1 to 8 whatever is typed, for INDEX gives all columns where the load is blank
		rows: [[whileIntact([CARD], "=MAX(1;MIN(8;{job}load))")]],
	},
];
