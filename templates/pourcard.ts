import type { Tab } from "../src/template/plan";
import { MOVED } from "./intact";
import { chosenBlocks, LOAD_COLUMNS, ofLoad } from "./pourcard-load";
import { orderBlocks } from "./pourcard-order";
import { recordBlocks } from "./pourcard-record";
import { stepBlocks } from "./pourcard-steps";
import { timeBlocks } from "./pourcard-times";
import { waterBlocks } from "./pourcard-water";
import { weighBlocks } from "./pourcard-weigh";

/** What lies beside the mixer on pour day: one load at a time, each with its own weights. */
export const pourCard: Tab = {
	name: "Pour card",
	color: "#8a5a2b",
	rows: 112,
	widths: [
		24, 154, 78, 30, 52, 52, 52, 52, 52, 52, 52, 52, 200, 52, 52, 52, 64, 64,
		100, 100, 100, 100, 100, 100, 100, 100, 100, 100,
	],
	frozenRows: 4,
	frozenColumns: 4,
	hidden: 10,
	blocks: [
		{
			at: "A1",
			look: "title",
			rows: [['="Pour card · "&{at:Job.heading}']],
		},
		{
			at: "A2",
			look: "result",
			slot: "card_check",
			rows: [
				[
					`=IF(ISERROR($S$12);"${MOVED}";IF(LEFT(C5;4)="Look";C5;IF(M10<>"fine";M10;IF(({at:Tones.tones_check}<>"fine")*(LEFT({at:Tones.tones_check};7)<>"Weights");IF(LEFT({at:Tones.tones_check};4)="Look";"Look: on the Tones tab: "&MID({at:Tones.tones_check};7;200);"On the Tones tab: "&{at:Tones.tones_check});IF(ISERROR(C20)+ISERROR(A65)+ISERROR(C18)>0;"Look: a cell below shows an error: point at it to read why";IF(LEFT(M33;4)="Look";M33;IF(LEFT(E55;4)="Look";E55;"Type weights in the load's own column, marked below.")))))))`,
				],
			],
		},
		{ at: "A3", look: "large", rows: [["Load"]] },
		{ at: "C3", look: "input", rows: [[1]], formats: "whole", name: "load" },
		{
			at: "E3",
			look: "large",
			rows: [['=IF(ISERROR({job}loads);"";"of "&{job}loads)']],
		},
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [
				[
					"",
					"Do",
					"On the scale",
					"",
					...LOAD_COLUMNS.map((_, i) => `Load ${i + 1}`),
					"Note",
					"g per {mass} left",
					"Left, {mass}",
					"Dose, wet",
					"",
					"",
				],
			],
		},
		{ at: "C4", look: "heading", size: [1, 1], align: "right" },
		{ at: "N4", look: "heading", size: [1, 3], align: "right" },
		{
			at: "B5",
			look: "label",
			rows: [
				["In this load"],
				["Mix in this load, {mass}"],
				["Water held for pigment"],
				["Reserve, undosed"],
				["Mix to tone, undosed"],
				["Plan number"],
				["Weights fit the plan"],
			],
		},
		{
			at: "C5",
			look: "result",
			rows: [
				[
					'=IF(ISERROR({job}loads);"Look: the Job tab shows an error: see its checks";IF({job}loads=0;"no piece yet: fill in the Job tab";IF(N($C$3)<1;"Look: choose the load above";IF({job}load>{job}loads;"Look: this job has no load "&{job}load;TEXTJOIN(", ";TRUE;ARRAYFORMULA(IF({at:Job.load_numbers}={job}load;{at:Job.load_castings};"")))))))',
				],
			],
		},
		{
			at: "C6",
			look: "total",
			rows: [
				[
					"=IF(ISERROR({job}loads);{job}loads;SUMIF({at:Job.load_numbers};{job}load;{at:Job.load_masses}))",
				],
				["=IF(C6=0;0;C6*{at:Tones.pigment_water})"],
				[
					"=IF(ISERROR(T20);T20;ROUND(SUM(T20:T32)*{studio:reserve}/{studio:mix_division};0)*{studio:mix_division})",
				],
				[
					`=IF(ISERROR(T20);T20;SUM(T20:T32)-IF(ISNUMBER(${ofLoad("64")});${ofLoad("64")};C8))`,
				],
			],
			formats: "mass",
		},
		{ at: "C9", look: "total", size: [1, 1], slot: "toned" },
		{ at: "C7", look: "total", size: [1, 1], slot: "water_held" },
		{
			at: "D6",
			look: "result",
			rows: [["{mass}"], ["{mass}"], ["{mass}"], ["{mass}"]],
		},
		{
			at: "C10",
			slot: "plan_number",
			look: "total",
			rows: [
				[
					'=IF(COUNTA(INDEX({at:Tones.typed_tones};0;2))=0;"";PLAN_NUMBER({at:Tones.dosed};{job}pigments;INDEX({at:Tones.mix_table};0;2);{job}binder))',
				],
			],
			formats: "whole",
		},
		{
			at: "E10",
			look: "input",
			size: [1, 8],
			formats: "whole",
			slot: "plan_numbers",
			once: true,
			note: "Type the plan number here when you begin a load. If tones, shares, pigments or the mix change after weights were typed, the numbers differ and the card says so.",
		},
		{
			at: "M10",
			slot: "plan_check",
			look: "result",
			rows: [
				[
					'=IF(COUNTIF(E11:L11;"Look: other")>0;"Look: weights were typed for another plan: bring back the tones, or clear the weights of that load";IF(COUNTIF(E11:L11;"Look: none")>0;"Look: type the plan number where a load has weights, so that a later change shows";"fine"))',
				],
			],
		},
		{
			at: "E11",
			look: "result",
			wrap: true,
			align: "right",
			rows: [
				LOAD_COLUMNS.map(
					(column) =>
						`=IF(COUNT(${column}20:${column}32)+COUNT(${column}64:${column}100)=0;"";IF(${column}10="";"Look: none";IF(${column}10=$C$10;"same";"Look: other")))`,
				),
			],
		},
		...chosenBlocks,
		...waterBlocks,
		...weighBlocks,
		...orderBlocks,
		...timeBlocks,
		...stepBlocks,
		...recordBlocks,
	],
	choices: [{ range: "C3", list: ["1", "2", "3", "4", "5", "6", "7", "8"] }],
	rules: [
		{
			range: "E4:L4,E10:L11,E14:L16,E20:L32,E45:L53,E64:L100",
			when: "=COLUMN(E4)-4=$C$3",
			look: "current",
		},
	],
};
