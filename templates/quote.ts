import type { Tab } from "../src/template/plan";
import { asMany, whileIntact } from "./intact";

const of = (column: number) => `INDEX({job}pieces;0;${column})`;
/** A length as it was typed; a bare number with its unit. No line breaks in it: 1 | 1/4 in would read as 1/4. */
const length = (column: number) =>
	`SUBSTITUTE(${of(column)}&IF(ISNUMBER(FIND(RIGHT(${of(column)};1);"0123456789½¼¾⅛⅜⅝⅞"));" {length}";"");" ";"\u00a0")`;
const [A, B, C, D, THICKNESS, DROP] = [4, 5, 6, 7, 8, 9].map(length);
const NOTCHED = `${A}&" × "&${B}&", notch "&${C}&" × "&${D}`;

/** Each shape in words; any other is its two sides. */
const SHAPES: readonly (readonly [shape: string, words: string])[] = [
	["round", `"round, "&${A}&" across"`],
	["oval", `"oval, "&${A}&" × "&${B}`],
	["L", `"L, "&${NOTCHED}`],
	["U", `"U, "&${NOTCHED}`],
	["basin", `"basin, "&${A}&" × "&${B}&", "&${C}&" high"`],
	["tube", `"tube, "&${A}&" across, "&${C}&" high"`],
	["area", `"to template, "&${of(4)}&" {area}"`],
];

const shapeWords = SHAPES.reduceRight(
	(rest, [shape, words]) => `IF(${of(3)}="${shape}";${words};${rest})`,
	`${A}&" × "&${B}`,
);

const PIECES = `=IF(${asMany("{job}pieces", 11)};ARRAYFORMULA(IF((${of(1)}="")+(IF(ISNUMBER(${of(2)});${of(2)};0)=0)>0;"";${of(2)}&" × "&${of(1)}&": "&${shapeWords}&", "&${THICKNESS}&" thick"&IF(${of(9)}="";"";", drop edge "&${DROP})));NA())`;

/** The page for the client. */
export const quote: Tab = {
	name: "Quote",
	color: "#8a5a2b",
	paper: true,
	rows: 112,
	widths: [420, 20, 150, 150, 60],
	frozenRows: 1,
	hidden: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [["Quote"]] },
		{
			at: "A2",
			look: "input",
			size: [1, 1],
			formats: "text",
			slot: "studio_name",
		},
		{
			at: "A3",
			look: "result",
			rows: [
				['=IF({at:Job.client}="";"";"For "&{at:Job.client})'],
				['={job}title&""'],
				['=IF({at:Tones.look}="";"";"Tones: "&{at:Tones.look})'],
				[
					'=IF({at:Tones.sample_number}="";"";"As the sample you approved: "&{at:Tones.sample_number})',
				],
			],
			wrap: true,
		},
		{
			at: "A7",
			look: "note",
			rows: [
				[
					'=IF((A2="")+(D3="")=0;"";"Before it goes out, type "&IF(A2="";"the studio\'s name above"&IF(D3="";" and ";"");"")&IF(D3="";"the date of the quote";"")&".")',
				],
			],
		},
		{ at: "C3", look: "label", rows: [["Date"], ["Holds until"]] },
		{
			at: "D3",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "quote_date",
			once: true,
			align: "right",
		},
		{
			at: "D4",
			look: "result",
			rows: [
				[
					'=IF(D3="";"";IF(ISNUMBER(D3);D3+{studio:quote_days};"Look: not a date"))',
				],
			],
			formats: "date",
			align: "right",
		},
		{ at: "A8", look: "heading", rows: [["Pieces"]] },
		{
			at: "A9",
			look: "result",
			size: [20, 1],
			wrap: true,
			rows: [[PIECES]],
		},
		{
			at: "C8",
			look: "heading",
			rows: [["Price", "={studio:currency}"]],
		},
		{
			at: "C9",
			look: "label",
			rows: [["Pieces as listed"]],
		},
		{
			at: "D9",
			look: "result",
			rows: [["={at:Cost.base_price}"]],
			formats: "money",
		},
		{
			at: "C10",
			look: "result",
			size: [6, 2],
			rows: [
				[
					whileIntact(
						["$C$1:$D$1"],
						`=IF(COUNT({at:Cost.changes_agreed})=0;"";IF(${asMany("{at:Cost.changes_shown}", 2)};FILTER({at:Cost.changes_shown};ISNUMBER({at:Cost.changes_agreed}));NA()))`,
					),
				],
			],
			formats: ["text", "money"],
		},
		{
			at: "C16",
			look: "label",
			rows: [
				['="Tax, "&ROUND({studio:tax}*100;3)&"%"'],
				["Total"],
				['="Deposit to begin, "&ROUND({studio:deposit}*100;1)&"%"'],
				["Balance on delivery"],
			],
		},
		{
			at: "D16",
			look: "result",
			rows: [
				['=IF({at:Cost.price}="";"";ROUND({at:Cost.price}*{studio:tax};2))'],
			],
			formats: "money",
		},
		{
			at: "D17",
			look: "total",
			rows: [['=IF({at:Cost.price}="";"";ROUND({at:Cost.price}+D16;2))']],
			formats: "money",
			name: "total",
		},
		{
			at: "D18",
			look: "total",
			size: [2, 1],
			rows: [['=IF(ISERROR(D17);D17;IF(D17="";"";SPLIT_MONEY(D17;E18:E19)))']],
			formats: "money",
		},
		{ at: "D18", look: "total", size: [1, 1], slot: "deposit" },
		{ at: "D19", look: "total", size: [1, 1], slot: "balance" },
		{
			at: "E18",
			look: "result",
			rows: [["={studio:deposit}"], ["=1-E18"]],
			formats: "share",
		},
		{ at: "A30", look: "result", size: [15, 4], slot: "picture" },
		{ at: "A47", look: "heading", rows: [["Good to know", "", "", ""]] },
		{
			at: "A48",
			look: "result",
			rows: [
				[
					"Cast by hand: tones, veins, pores and fine lines differ from the sample and from piece to piece.",
				],
				[
					"A sample or a picture shows the range, not the pattern. Color lightens as the piece dries and settles over weeks.",
				],
				[
					"Care: wipe up spills at once, since acids etch and oil stains. Mild soap, nothing that scours.",
				],
				[
					"Boards under knives, trivets under pots. Seal again when water no longer beads.",
				],
				[
					"Pieces are carried and set as agreed; what they stand on must be level and able to bear them.",
				],
				[
					'="This quote holds for "&{studio:quote_days}&" days from its date. Work begins when the deposit is paid."',
				],
				["Changes after that are priced and agreed in writing."],
			],
		},
		{
			at: "A56",
			look: "label",
			rows: [
				["Agreed, client:"],
				[""],
				["__________________________________"],
				["Name, date"],
			],
		},
		{
			at: "C56",
			look: "label",
			rows: [
				["For the studio:"],
				[""],
				["__________________________"],
				["Name, date"],
			],
		},
	],
};
