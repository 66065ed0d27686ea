import type { Tab } from "../src/template/plan";
import { checkBlocks, TO_LOOK_AT, WORST } from "./checks";
import { hintOrMoved } from "./intact";
import { SUMMARY_FORMATS } from "./jobs";
import { knockoutBlocks } from "./knockouts";
import { pieceBlocks } from "./pieces";

const summed = (column: string) =>
	`=IF(ISERROR(P11);P11;SUM(ARRAYFORMULA(IF(ISNUMBER(${column}11:${column}30);${column}11:${column}30*B11:B30;0))))`;

/** A cell of another tab, blank where that is blank. */
const ofTab = (cell: string) => `=IF(${cell}="";"";${cell})`;

const dateOf = (index: number) => ofTab(`{at:Cure.day_${index}}`);

/** The pieces of a job, what they weigh, how they are lifted and cast, and what is wrong with the job. */
export const job: Tab = {
	name: "Job",
	color: "#8a5a2b",
	rows: 112,
	widths: [
		...[160, ...Array<number>(25).fill(92)],
		...Array<number>(7).fill(270),
		...Array<number>(6).fill(80),
	],
	frozenRows: 1,
	frozenColumns: 1,
	hidden: 6,
	blocks: [
		{
			at: "A1",
			look: "title",
			rows: [['=IF(C3&C4="";"New job";C3&IF((C3="")+(C4="")>0;"";" · ")&C4)']],
			slot: "heading",
		},
		{
			at: "A2",
			look: "note",
			rows: [
				[
					hintOrMoved(
						"$A$1:$AM$1",
						"Type in the tinted cells. Lengths as you say them: 8 ft 1/2 in, 25-1/2 in, 2.4 m, 65 cm. Without a unit: {length}.",
					),
				],
			],
		},
		{
			at: "A3",
			look: "label",
			rows: [
				["Client"],
				["Job"],
				["Pour date"],
				["Due date"],
				["Stage"],
				["Waste"],
			],
		},
		{ at: "C3", look: "input", size: [6, 3] },
		{ at: "C3", look: "input", size: [1, 1], formats: "text", slot: "client" },
		{ at: "C4", look: "input", size: [1, 1], formats: "text", name: "title" },
		{
			at: "C5",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "pour_date",
			once: true,
			align: "left",
		},
		{
			at: "C6",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "due_date",
			once: true,
			align: "left",
		},
		{
			at: "C7",
			look: "input",
			rows: [["priced"]],
			formats: "text",
			slot: "stage",
			once: true,
		},
		{
			at: "C8",
			look: "input",
			size: [1, 1],
			formats: "share",
			slot: "waste",
			align: "left",
		},
		{
			at: "G3",
			look: "label",
			rows: [
				["Mix to make, {mass}"],
				["Mixer loads"],
				["Heaviest piece, {mass}"],
				["Face of all, {area}"],
				["To fill, polish and seal, {area}"],
				["Volume of all, {volume}"],
			],
		},
		{
			at: "I3",
			look: "total",
			rows: [["=IF(ISERROR(V11);V11;SUM(V11:V30))"]],
			formats: "mass",
			name: "mix_total",
		},
		{
			at: "I4",
			look: "total",
			rows: [["=IF(ISERROR(L49);L49;MAX(L49:L88))"]],
			formats: "whole",
			name: "loads",
		},
		{
			at: "I5",
			look: "total",
			rows: [["=IF(ISERROR(U11);U11;MAX(U11:U30))"]],
			formats: "mass",
			slot: "heaviest",
		},
		{
			at: "I6",
			look: "total",
			rows: [[summed("P")]],
			formats: "area",
			slot: "face_total",
		},
		{
			at: "I7",
			look: "total",
			rows: [[summed("S")]],
			formats: "area",
			slot: "finish_area",
		},
		{
			at: "I8",
			look: "total",
			rows: [["=IF(ISERROR(P11);P11;SUM(T11:T30))"]],
			formats: "volume",
			slot: "volume_total",
		},
		{
			at: "L3",
			look: "label",
			rows: [
				['="Price, "&{studio:currency}'],
				["Deposit received"],
				["Balance received"],
				["People to lift, if not all"],
				["Checks to look at"],
			],
		},
		{
			at: "O3",
			look: "total",
			rows: [[ofTab("{at:Cost.price}")]],
			formats: "money",
		},
		{
			at: "O4",
			look: "input",
			size: [1, 1],
			formats: "money",
			slot: "deposit_received",
			once: true,
		},
		{
			at: "O5",
			look: "input",
			size: [1, 1],
			formats: "money",
			slot: "balance_received",
			once: true,
		},
		{
			at: "O6",
			look: "input",
			size: [1, 1],
			formats: "whole",
			slot: "crew",
		},
		{ at: "O7", look: "total", rows: [[TO_LOOK_AT]], formats: "whole" },
		{ at: "L8", look: "result", rows: [[WORST]], slot: "worst" },
		...pieceBlocks,
		{ at: "A32", look: "total", rows: [["Cutouts"]] },
		{
			at: "A33",
			look: "heading",
			rows: [["In piece", "Each", "Shape", "A", "B"]],
		},
		{
			at: "A34",
			look: "input",
			size: [12, 5],
			slot: "cutouts",
			formats: ["text", "whole", "text", "text", "text"],
		},
		...knockoutBlocks,
		...checkBlocks,
		{ at: "L47", look: "total", rows: [["Mixer loads"]] },
		{
			at: "L48",
			look: "heading",
			rows: [["Load", "Casting", "Mix, {mass}", "Load is full"]],
		},
		{ at: "N48", look: "heading", size: [1, 2], align: "right" },
		{
			at: "L49",
			look: "result",
			size: [40, 4],
			rows: [
				[
					'=IF(ISERROR(U11);U11;IF(COUNT(U11:U30)=0;"";MIXER_LOADS(CASTINGS(A11:A30;B11:B30;ARRAYFORMULA(IF(ISNUMBER(U11:U30);U11:U30*(1+$C$8);"")));{studio:mixer_capacity})))',
				],
			],
			formats: ["whole", "text", "mass", "share"],
			slot: "load_table",
		},
		{ at: "L49", look: "result", size: [40, 1], slot: "load_numbers" },
		{ at: "M49", look: "result", size: [40, 1], slot: "load_castings" },
		{ at: "N49", look: "result", size: [40, 1], slot: "load_masses" },
		{ at: "O49", look: "result", size: [40, 1], slot: "load_shares" },
		{ at: "A90", look: "total", rows: [["Its line on the Jobs tab"]] },
		{
			at: "A91",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Client",
					"Job",
					"Stage",
					"Pour",
					"Due",
					"Price",
					"Cost",
					"Margin",
					"Deposit received",
					"Balance received",
					"Hours",
					"Demold",
					"Fill",
					"Polish",
					"Seal",
					"Deliver",
					"Still to be paid",
				],
			],
		},
		{
			at: "A92",
			look: "result",
			slot: "summary",
			rows: [
				[
					ofTab("C3"),
					ofTab("C4"),
					ofTab("C7"),
					'=IF(ISNUMBER({at:Cure.day_1});{at:Cure.day_1};IF(C5="";"";C5))',
					ofTab("C6"),
					ofTab("{at:Cost.price}"),
					ofTab("{at:Cost.cost}"),
					ofTab("{at:Cost.margin}"),
					ofTab("O4"),
					ofTab("O5"),
					ofTab("{at:Cost.hours}"),
					...[2, 3, 4, 5, 6].map(dateOf),
					'=IF((C7="sampling")+(C7="priced")>0;"";IF({at:Quote.total}="";"";{at:Quote.total}-N(O4)-N(O5)))',
				],
			],
			formats: SUMMARY_FORMATS,
		},
	],
	choices: [
		{
			range: "C7",
			list: [
				"sampling",
				"priced",
				"ordered",
				"molds built",
				"poured",
				"finished",
				"delivered",
			],
		},
		{
			range: "C11:C30",
			list: ["rectangle", "round", "oval", "L", "U", "basin", "tube", "area"],
			help: "L: A × B less a corner notch C × D. U: notch C wide, D deep in the longer side. Basin: A × B outside, C high. Tube: A outside, C high.",
		},
		{ range: "M11:M30", list: ["face up", "face down"] },
		{
			range: "N11:N30",
			list: [
				"front left",
				"front right",
				"back left",
				"back right",
				"front",
				"back",
				"left",
				"right",
			],
			help: "Of the finished piece, in place, seen from above: the corner of an L's notch, the side of a U's. A goes from left to right, B from front to back.",
		},
		{ range: "C34:C45", list: ["rectangle", "round", "oval"] },
	],
};
