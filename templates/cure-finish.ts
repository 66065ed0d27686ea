import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** Columns of the pigments in the paste. */
const PIGMENTS = ["$B$1:$E$1"];

/** Sealer, when to put it on, and paste in the color of the tones together. */
export const finishBlocks: readonly Block[] = [
	{ at: "A55", look: "total", rows: [["Seal on a reading, not on a date"]] },
	{
		at: "A56",
		look: "label",
		rows: [
			["Limit, from the sealer's data sheet"],
			["Moisture reading, same scale"],
			["Dry enough"],
			["To seal, {area}"],
			["Left in pots and rollers"],
			["Sealer for all coats, {coating}"],
		],
	},
	{
		at: "B56",
		look: "input",
		size: [2, 1],
		formats: "number",
		slot: "moisture",
		once: true,
		align: "right",
	},
	{
		at: "B58",
		look: "result",
		rows: [
			[
				'=IF(COUNTA(B56:B57)=0;"not known: type limit and reading";IF(COUNT(B56:B57)<2;"Look: type both numbers, limit and reading";IF(B57>B56;"Look: too damp to seal: air on both faces, read again";"by this reading, yes")))',
			],
			["={at:Job.finish_area}"],
		],
		formats: "area",
	},
	{
		at: "B60",
		look: "input",
		rows: [[0.1]],
		formats: "share",
		slot: "sealer_waste",
	},
	{
		at: "B61",
		look: "total",
		rows: [
			[
				'=IF(ISERROR(B59);B59;IF(N(B59)=0;"";COATING_AMOUNT(B59;{studio:sealer_coverage};{studio:sealer_coats};B60;{studio:units})))',
			],
		],
		formats: "coating",
		slot: "sealer",
	},
	{ at: "A63", look: "total", rows: [["Paste for voids"]] },
	{
		at: "A64",
		look: "label",
		rows: [["Wiped off and left over"], ["Paste, {volume}"], ["Paste, {mass}"]],
	},
	{
		at: "B64",
		look: "input",
		rows: [[0.3]],
		formats: "share",
		slot: "paste_waste",
	},
	{
		at: "B65",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(B59);B59;IF(N(B59)=0;"";VOID_FILL(B59;{studio:void_share};{studio:void_depth};{studio:skim};B64;{studio:units})))',
			],
		],
		formats: "volume",
	},
	{
		at: "B66",
		look: "total",
		rows: [
			[
				'=IF(ISERROR(B65);B65;IF(ISERROR({job}density);{job}density;IF((B65="")+({job}density="")>0;"";B65*{job}density/IF({studio:units}="us";1;1000))))',
			],
		],
		formats: "mass",
		slot: "paste",
	},
	{
		at: "A67",
		look: "label",
		rows: [
			["Pigment in it, for the color of all tones"],
			["Mean dose of binder"],
			["Dry, g"],
			["As bought, g"],
		],
	},
	{
		at: "B67",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=ARRAYFORMULA(IF({job}pigments="";"";{job}pigments))',
				),
			],
		],
		align: "right",
	},
	{
		at: "B68",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR({job}binder);{job}binder;IF(SUM(INDEX({at:Tones.typed_tones};0;2))=0;"";ARRAYFORMULA(IF({job}pigments="";"";MMULT(TRANSPOSE(IF(ISNUMBER(INDEX({at:Tones.typed_tones};0;2));INDEX({at:Tones.typed_tones};0;2);0));IF(ISNUMBER({at:Tones.dry_doses});{at:Tones.dry_doses};0))/SUM(INDEX({at:Tones.typed_tones};0;2))))))',
				),
			],
		],
		formats: "share",
	},
	{
		at: "B69",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR(B66);B66;IF((N(B66)=0)+(COUNT(B68:E68)=0)>0;"";TRANSPOSE(PIGMENT_GRAMS(B66;{job}binder;B68:E68;{studio:units}))))',
				),
			],
		],
		formats: "pigment",
	},
	{
		at: "B70",
		look: "total",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR(B69);B69;ARRAYFORMULA(IF(ISNUMBER(B69:E69);B69:E69/{at:Tones.solids};"")))',
				),
			],
		],
		formats: "pigment",
		slot: "paste_pigment",
	},
	{
		at: "A71",
		look: "note",
		rows: [
			[
				"The paste is this mix without fiber, weighed as if with it. Try its color on the sample first: a filled void cures darker or lighter than the face.",
			],
		],
	},
];
