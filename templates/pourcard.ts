import type { Tab } from "../src/template/plan";

const LOADS = [1, 2, 3, 4, 5, 6, 7, 8].map((load) => `Load ${load}`);

/** What lies beside the mixer on pour day: one load at a time, each with its own weights. */
export const pourCard: Tab = {
	name: "Pour card",
	color: "#8a5a2b",
	rows: 83,
	widths: [
		60, 190, 90, 60, 60, 60, 60, 60, 60, 60, 60, 60, 300, 90, 90, 90, 60, 60,
		60, 60, 60, 60, 60, 60, 60, 60,
	],
	frozenRows: 3,
	hidden: ["Q:Z"],
	blocks: [
		{
			at: "A1",
			look: "title",
			rows: [['="Pour card · "&{tab:Job}!A1']],
		},
		{ at: "A3", look: "large", rows: [["Load"]] },
		{ at: "C3", look: "input", rows: [[1]], formats: "whole", name: "load" },
		{ at: "D3", look: "large", rows: [['="of "&{job}loads']] },
		{
			at: "F3",
			look: "note",
			rows: [
				["Choose the load here; type weights in its own column, marked below."],
			],
		},
		{
			at: "A4",
			look: "label",
			rows: [
				["In this load"],
				["Mix in this load, {mass}"],
				["Reserve, pulled off undosed, {mass}"],
				["Mix to tone, undosed, {mass}"],
				["Plan number"],
			],
		},
		{
			at: "C4",
			look: "result",
			rows: [
				[
					'=IF({job}loads=0;"no piece yet: fill in the Job tab";IF({job}load>{job}loads;"Look: this job has no load "&{job}load;TEXTJOIN(", ";TRUE;ARRAYFORMULA(IF({tab:Job}!H48:H87={job}load;{tab:Job}!I48:I87;"")))))',
				],
			],
		},
		{
			at: "C5",
			look: "total",
			rows: [
				[
					"=IF(ISERROR({job}loads);{job}loads;SUMIF({tab:Job}!H48:H87;{job}load;{tab:Job}!J48:J87))",
				],
				[
					"=ROUND(SUM(R12:R23)*{studio:reserve}/{studio:mix_division};0)*{studio:mix_division}",
				],
				["=SUM(R12:R23)-C6"],
			],
			formats: "mass",
		},
		{
			at: "C8",
			slot: "plan_number",
			look: "total",
			rows: [
				[
					'=IF(SUM({tab:Tones}!B11:B16)=0;"";PLAN_NUMBER({job}tones;{job}pigments))',
				],
			],
			formats: "whole",
		},
		{
			at: "E8",
			slot: "plan_check",
			look: "result",
			rows: [
				[
					'=IF(COUNTIF(E45:L45;"Look: other plan")>0;"Look: weights were typed for another plan: bring back the tones, or clear the weights of that load";IF(COUNTIF(E45:L45;"Look: no number")>0;"Look: type the plan number where a load has weights, so that a later change shows";"fine"))',
				],
			],
		},
		{ at: "A10", look: "total", rows: [["Weigh out"]] },
		{
			at: "A11",
			look: "heading",
			rows: [
				["", "Ingredient", "Weigh", "", ...LOADS, "In whole packs", "", "", ""],
			],
		},
		{
			at: "B12",
			look: "result",
			size: [12, 3],
			rows: [
				[
					'=ARRAYFORMULA(IF({tab:Tones}!A23:A34="";"";{tab:Tones}!A23:A34))',
					'=IF(ISERROR(R12);R12;ARRAYFORMULA(IF(ISNUMBER(R12:R23);ROUND(R12:R23/{studio:mix_division};0)*{studio:mix_division};"")))',
					'=ARRAYFORMULA(IF(ISNUMBER(R12:R23);"{mass}";""))',
				],
			],
			formats: ["text", "mass", "text"],
		},
		{
			at: "E12",
			look: "input",
			size: [12, 8],
			formats: "mass",
			slot: "mixed",
			once: true,
		},
		{
			at: "M12",
			look: "result",
			size: [12, 1],
			rows: [
				[
					'=ARRAYFORMULA(IF(ISNUMBER(C12:C23)*ISNUMBER({tab:Tones}!J23:J34)=0;"";IF({tab:Tones}!J23:J34<=0;"";IF(C12:C23<{tab:Tones}!J23:J34;"";INT(C12:C23/{tab:Tones}!J23:J34)&" of "&{tab:Tones}!J23:J34&" {mass} + "&ROUND(C12:C23-INT(C12:C23/{tab:Tones}!J23:J34)*{tab:Tones}!J23:J34;3)&" {mass}"))))',
				],
			],
		},
		{
			at: "Q12",
			slot: "weigh_out",
			look: "result",
			size: [12, 2],
			rows: [
				[
					'=IF(C5>0;WEIGH_OUT({tab:Tones}!B23:B34;C5);"")',
					'=IF(ISERROR(Q12);Q12;IF(COUNT(Q12:Q23)=0;"";RESCALE_BATCH(Q12:Q23;INDEX(E12:L23;0;{job}load))))',
				],
			],
			formats: "number",
		},
		{
			at: "B24",
			look: "total",
			rows: [["Together", "=SUM(C12:C23)", "{mass}"]],
			formats: ["text", "mass", "text"],
		},
		{
			at: "E24",
			look: "note",
			rows: [
				[
					"Weighed too much of one? The others rise with it, so that the mix stays the same.",
				],
			],
		},
		{ at: "A26", look: "total", rows: [["Mixing order"]] },
		{
			at: "A27",
			look: "result",
			rows: [
				[
					1,
					"Water, chilled if the mix would get warm; most of the water reducer.",
				],
				[2, "About three quarters of the dry material. Blend."],
				[3, "The rest of the dry material. Blend until even, scrape down."],
				[4, "It must be very fluid before fibers: else the held-back reducer."],
				[5, "The longer fibers, then the shorter. Blend."],
				[6, "Pull off and dose as below, pigment wetted first."],
				[7, "Fold less for bolder veins. Once placed, leave the face alone."],
			],
			formats: ["whole", "text"],
		},
		{
			at: "A34",
			look: "note",
			rows: [["Common practice; the data sheet of the material comes first."]],
		},
		{ at: "F26", look: "caution", rows: [["Cautions"]] },
		{
			at: "F27",
			look: "note",
			rows: [
				["Wet cement burns skin and eyes: gloves, goggles, rinse at once."],
				["Wash water does not go down a drain."],
				["Silica, pigment and fiber dust: extraction or a fitted respirator."],
				["Mixers catch sleeves: off and unplugged before reaching in."],
				["Powered wet tools on a ground-fault interrupter (GFCI)."],
				["Lift with enough people or a cart: see To carry on the Job tab."],
				[
					"Local codes, the material's data sheet and a licensed engineer come before any number here.",
				],
			],
		},
		{ at: "A35", look: "total", rows: [["Fresh tests and times"]] },
		{
			at: "B36",
			look: "label",
			rows: [
				["Spread, {length}"],
				["Mix temperature, {temperature}"],
				["Air temperature, {temperature}"],
				["Water in, at"],
				["Last tone placed, at"],
				["Weighed by"],
			],
		},
		{
			at: "E36",
			look: "input",
			size: [6, 8],
			align: "right",
			slot: "fresh",
			once: true,
		},
		{ at: "A43", look: "result", size: [1, 17], slot: "record" },
		{ at: "A43", look: "total", rows: [["Pull off and dose"]] },
		{
			at: "A44",
			look: "label",
			rows: [
				[
					"Vessels to dose in",
					"",
					'=IF(ISERROR(Q48);Q48;COUNTIF(S48:S83;"keep"))',
				],
			],
			formats: ["text", "text", "whole"],
		},
		{ at: "C44", look: "label", size: [1, 1], slot: "vessels" },
		{
			at: "E44",
			look: "result",
			rows: [
				[
					'=IF(C6>0;"First pull off "&C6&" {mass} undosed and cover it: it lightens a tone that came out too dark.";"")',
				],
			],
		},
		{
			at: "B45",
			look: "label",
			rows: [["Weights and plan"], ["Plan number when this load began"]],
		},
		{
			at: "E45",
			look: "result",
			rows: [
				["E", "F", "G", "H", "I", "J", "K", "L"].map(
					(column) =>
						`=IF(COUNT(${column}48:${column}83)=0;"";IF(${column}46="";"Look: no number";IF(${column}46=$C$8;"this plan";"Look: other plan")))`,
				),
			],
			align: "right",
		},
		{
			at: "E46",
			look: "input",
			size: [1, 8],
			formats: "whole",
			slot: "plan_numbers",
			once: true,
			note: "Type the plan number from above when you begin a load. If tones or shares change after weights were typed, the numbers differ and the card says so.",
		},
		{
			at: "A47",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Step",
					"Do",
					"Scale says",
					"",
					...LOADS,
					"Mind",
					"g a {mass} left",
					"Left, undosed, {mass}",
					"Dose then",
				],
			],
		},
		{
			at: "A48",
			look: "result",
			size: [36, 4],
			rows: [
				[
					'=ARRAYFORMULA(IF(Q48:Q83="";"";Q48:Q83))',
					'=ARRAYFORMULA(IF(Q48:Q83="";"";IF(S48:S83="add";"Add "&T48:T83&" to "&SUBSTITUTE(R48:R83;"mixer";"the mixer");IF(S48:S83="keep";"Keep "&T48:T83&" in "&SUBSTITUTE(R48:R83;"mixer";"the mixer");IF(LEFT(T48:T83;7)="bucket ";"Fill "&T48:T83&" from the mixer";"Pull off "&T48:T83&" from "&SUBSTITUTE(R48:R83;"mixer";"the mixer"))))))',
					'=ARRAYFORMULA(IF(Q48:Q83="";"";IF(V48:V83="g";ROUND(U48:U83/{studio:gram_division};0)*{studio:gram_division};ROUND(U48:U83/{studio:mix_division};0)*{studio:mix_division})))',
					'=ARRAYFORMULA(IF(Q48:Q83="";"";V48:V83))',
				],
			],
			formats: ["whole", "text", "mass", "text"],
		},
		{
			at: "E48",
			look: "input",
			size: [36, 8],
			formats: "mass",
			slot: "weights",
			once: true,
		},
		{
			at: "M48",
			look: "result",
			size: [36, 4],
			rows: [
				[
					'=ARRAYFORMULA(IF(Q48:Q83="";"";IF(Y48:Y83<>"";"Look: "&Y48:Y83;IF(S48:S83="keep";"about "&{studio:sticks}&" {mass} of it sticks";""))))',
					'=ARRAYFORMULA(IF(S48:S83="add";IF(X48:X83>0;U48:U83/X48:X83;"");""))',
					'=ARRAYFORMULA(IF(Q48:Q83="";"";X48:X83))',
					'=ARRAYFORMULA(IF(Q48:Q83="";"";W48:W83))',
				],
			],
			formats: ["text", "number", "mass", "share"],
		},
		{
			at: "Q48",
			slot: "plan",
			look: "result",
			size: [36, 9],
			rows: [
				[
					'=IF(AND(C7>0;SUM({tab:Tones}!B11:B16)>0);PULL_OFF_PLAN({job}tones;{job}pigments;C7;{job}binder;INDEX(E48:L83;0;{job}load);{studio:units});"")',
				],
			],
		},
		{
			at: "Z48",
			slot: "dose_errors",
			look: "result",
			size: [36, 1],
			rows: [
				[
					'=IF(COUNTIF(S48:S83;"add")=0;"";DOSE_UNCERTAINTY(ARRAYFORMULA(IF(S48:S83="add";IF(U48:U83>0;U48:U83;"");""));{studio:gram_division};ARRAYFORMULA(IF(S48:S83="add";IF(U48:U83>0;X48:X83;"");""));{studio:mix_division};1;{studio:units}))',
				],
			],
		},
	],
	choices: [
		{
			range: "C3",
			list: ["1", "2", "3", "4", "5", "6", "7", "8"],
		},
	],
	rules: [
		{
			range: "E11:L23,E36:L41,E45:L83",
			when: "=COLUMN(E11)-4=$C$3",
			look: "current",
		},
	],
};
