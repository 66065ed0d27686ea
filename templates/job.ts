import type { Tab } from "../src/template/plan";

/** The pieces of a job, what they weigh and how they go through the mixer. */
export const job: Tab = {
	name: "Job",
	color: "#8a5a2b",
	rows: 87,
	widths: [
		160, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80, 80,
		80, 80, 80, 80, 330, 80, 80,
	],
	frozenRows: 1,
	frozenColumns: 1,
	hidden: ["Y:Z"],
	blocks: [
		{ at: "A1", look: "title", rows: [['=C3&" · "&C4']], slot: "heading" },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					'Type in the tinted cells. Lengths in {length}, or as you say them: 8\' 1/2", 25-1/2", 2.4 m, 65 cm.',
				],
			],
		},
		{
			at: "A3",
			look: "label",
			rows: [["Client"], ["Job"], ["Pour date"], ["Stage"], ["Waste"]],
		},
		{ at: "C3", look: "input", size: [5, 3] },
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
			rows: [["priced"]],
			formats: "text",
			slot: "stage",
		},
		{
			at: "C7",
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
				["To fill, polish and seal, {area}"],
				["To look at"],
			],
		},
		{
			at: "J3",
			look: "total",
			rows: [["=IF(ISERROR(S11);S11;SUM(S11:S30))"]],
			formats: "mass",
			name: "mix_total",
		},
		{
			at: "J4",
			look: "total",
			rows: [["=IF(ISERROR(H48);H48;MAX(H48:H87))"]],
			formats: "whole",
			name: "loads",
		},
		{
			at: "J5",
			look: "total",
			rows: [["=IF(ISERROR(R11);R11;MAX(R11:R30))"]],
			formats: "mass",
			slot: "heaviest",
		},
		{
			at: "J6",
			look: "total",
			rows: [
				[
					"=IF(ISERROR(M11);M11;SUM(ARRAYFORMULA(IF(ISNUMBER(P11:P30);P11:P30*B11:B30;0))))",
				],
			],
			formats: "area",
			slot: "finish_area",
		},
		{
			at: "J7",
			look: "total",
			rows: [['=COUNTIF(L34:L44;"<>fine")']],
			formats: "whole",
		},
		{
			at: "L3",
			look: "label",
			rows: [
				["Due date"],
				["Deposit received"],
				["Balance received"],
				["Face of all, {area}"],
				["Volume of all, {volume}"],
			],
		},
		{
			at: "O3",
			look: "input",
			size: [1, 1],
			formats: "date",
			slot: "due_date",
			once: true,
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
			look: "total",
			rows: [
				[
					"=IF(ISERROR(M11);M11;SUM(ARRAYFORMULA(IF(ISNUMBER(M11:M30);M11:M30*B11:B30;0))))",
				],
			],
			formats: "area",
			slot: "face_total",
		},
		{
			at: "O7",
			look: "total",
			rows: [["=IF(ISERROR(M11);M11;SUM(Q11:Q30))"]],
			formats: "volume",
			slot: "volume_total",
		},
		{ at: "A9", look: "total", rows: [["Pieces"]] },
		{
			at: "A10",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Piece",
					"Qty",
					"Shape",
					"A",
					"B",
					"C",
					"D",
					"Thickness",
					"Drop height",
					"Drop run",
					"Drop thickness",
					"Cast face",
					"Face, {area}",
					"Edge, {length}",
					"Volume, {volume}",
					"To finish, {area}",
					"Volume for all, {volume}",
					"Weight of one, {mass}",
					"Mix for all, {mass}",
					"Longest side, {length}",
					"Visible drop, {length}",
					"To carry",
					"Carried flat by its ends, of strength",
					"In the mold",
				],
			],
		},
		{
			at: "A11",
			look: "input",
			size: [20, 11],
			name: "pieces",
			formats: [
				"text",
				"whole",
				"text",
				"text",
				"text",
				"text",
				"text",
				"text",
				"text",
				"text",
				"text",
			],
		},
		{ at: "L11", look: "input", size: [20, 1], formats: "text", slot: "faces" },
		{
			at: "M11",
			look: "result",
			size: [20, 5],
			rows: [
				[
					'=IF(COUNTA(A11:A30)=0;"";PIECE_TAKEOFF({job}pieces;IF(COUNTA(A34:E45)=0;"";A34:E45);{studio:units}))',
				],
			],
			formats: ["area", "length", "volume", "area", "volume"],
		},
		{
			at: "R11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=IF(ISERROR(M11);M11;IF(COUNT(O11:O30)=0;"";BATCH_MASS(O11:O30;{job}density;0;{studio:units})))',
				],
			],
			formats: "mass",
		},
		{
			at: "S11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=IF(ISERROR(R11);R11;ARRAYFORMULA(IF(ISNUMBER(R11:R30);R11:R30*B11:B30*(1+$C$7);"")))',
				],
			],
			formats: "mass",
		},
		{
			at: "T11",
			look: "result",
			size: [20, 2],
			rows: [
				['=IF(COUNTA(A11:A30)=0;"";PIECE_SIZE({job}pieces;{studio:units}))'],
			],
			formats: "length",
		},
		{
			at: "V11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=IF(COUNT(R11:R30)=0;"";PEOPLE_TO_LIFT(R11:R30;{studio:one_person}))',
				],
			],
			formats: "text",
			align: "right",
		},
		{
			at: "W11",
			look: "result",
			size: [20, 1],
			rows: [
				['=ARRAYFORMULA(IF(ISNUMBER(Z11:Z30);Z11:Z30/{studio:flexural};""))'],
			],
			formats: "share",
		},
		{
			at: "X11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=ARRAYFORMULA(IF(L11:L30<>"face down";"";IF(C11:C30="L";"Mirrored: notch "&F11:F30&" × "&G11:G30&" on the other hand";"Mirrored: left and right change sides")))',
				],
			],
		},
		{
			at: "Y11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=ARRAYFORMULA(IF((C11:C30="basin")+(C11:C30="tube")+(C11:C30="area")>0;"";T11:T30))',
				],
			],
		},
		{
			at: "Z11",
			look: "result",
			size: [20, 1],
			rows: [
				[
					'=IF(COUNT(Y11:Y30)=0;"";SELF_WEIGHT_STRESS(Y11:Y30;ARRAYFORMULA(IF(ISNUMBER(Y11:Y30);H11:H30;""));{job}density;"ends";1;{studio:units}))',
				],
			],
		},
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
		{ at: "H32", look: "total", rows: [["Checks"]] },
		{
			at: "H33",
			look: "heading",
			rows: [["What is checked", "", "", "", "Result", "", "", ""]],
		},
		{
			at: "H34",
			look: "label",
			rows: [
				["Everything calculates"],
				["Tone shares add up to 100%"],
				["Every pigment is on the Pigments tab"],
				["Pigment limit of every tone"],
				["Every dose can be weighed to 5%"],
				["Every casting fits in one load"],
				["Every load is enough to blend"],
				["The card has columns for every load"],
				["Waste covers reserve and what sticks"],
				["Slabs carried flat by their ends"],
				["Weights belong to this plan"],
			],
		},
		{
			at: "L34",
			look: "result",
			rows: [
				[
					'=IF(ISERROR(M11)+ISERROR(R11)+ISERROR(H48)+ISERROR(T11)+ISERROR({job}binder)+SUMPRODUCT(ISERROR({at:Tones.tone_weights})*1)+SUMPRODUCT(ISERROR({at:Tones.headroom})*1)+SUMPRODUCT(ISERROR({at:Pour card.weigh_out})*1)+SUMPRODUCT(ISERROR({at:Pour card.plan})*1)+ISERROR({at:Pour card.plan_number})>0;"Look: a cell shows an error: point at it to read why";IF({job}mix_total=0;"Look: there is nothing to pour yet";"fine"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(ABS({at:Tones.share_total}-1)<1/1000;"fine";"Look: shares are not 100% together: they count as parts of the whole"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(COUNTA({job}pigments)=COUNT({at:Tones.maxima});"fine";"Look: a pigment is missing there: its limit counts as 10%"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(COUNTIF({at:Tones.headroom};"<0")=0;"fine";"Look: a tone is over the pigment limit: see Tones"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(COUNTIF({at:Pour card.dose_errors};">"&1/20)=0;"fine";"Look: a dose of load "&{job}load&" is too small for the gram scale"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(MAX(ARRAYFORMULA(IF(ISNUMBER(R11:R30);R11:R30*(1+$C$7);0)))<={studio:mixer_capacity};"fine";"Look: a piece needs several loads: cold joints and color differences are likely"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(COUNT(J48:J87)=0;"fine";IF(MIN(ARRAYFORMULA(IF(ISNUMBER(K48:K87);K48:K87;10^9)))*{studio:mixer_capacity}>={studio:least_blend};"fine";"Look: a load is less than the mixer blends well")))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF({job}loads<=8;"fine";"Look: the pour card has columns for 8 loads: split the job"))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF({job}loads=0;"fine";IF($C$7*{job}mix_total/(1+$C$7)>={studio:reserve}*{job}mix_total+{studio:sticks}*{job}loads*{at:Tones.vessels};"fine";"Look: waste is less than the reserve and what sticks")))',
				],
				[
					'=IF($L$34<>"fine";"waits for the first";IF(MAX(W11:W30)*2<=1;"fine";"Look: a slab may crack: carry it on edge or on a board"))',
				],
				["={at:Pour card.plan_check}"],
			],
		},
		{ at: "H46", look: "total", rows: [["Mixer loads"]] },
		{
			at: "H47",
			look: "heading",
			rows: [["Load", "Casting", "Mix, {mass}", "Load is full"]],
		},
		{
			at: "H48",
			look: "result",
			size: [40, 4],
			rows: [
				[
					'=IF(ISERROR(R11);R11;IF(COUNT(R11:R30)=0;"";MIXER_LOADS(CASTINGS(A11:A30;B11:B30;ARRAYFORMULA(IF(ISNUMBER(R11:R30);R11:R30*(1+$C$7);"")));{studio:mixer_capacity})))',
				],
			],
			formats: ["whole", "text", "mass", "share"],
			slot: "load_table",
		},
		{ at: "H48", look: "result", size: [40, 1], slot: "load_numbers" },
		{ at: "I48", look: "result", size: [40, 1], slot: "load_castings" },
		{ at: "J48", look: "result", size: [40, 1], slot: "load_masses" },
		{ at: "K48", look: "result", size: [40, 1], slot: "load_shares" },
		{ at: "R11", look: "result", size: [20, 1], slot: "weights" },
		{ at: "P11", look: "result", size: [20, 1], slot: "finish_areas" },
		{ at: "A11", look: "input", size: [20, 1], slot: "piece_names" },
		{ at: "B11", look: "input", size: [20, 1], slot: "quantities" },
		{
			at: "A48",
			look: "input",
			size: [8, 7],
			slot: "knockouts",
		},
		{ at: "A60", look: "result", size: [1, 17], slot: "summary" },
		{ at: "A62", look: "result", size: [25, 4], slot: "checks" },
	],
	choices: [
		{
			range: "C6",
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
		{ range: "L11:L30", list: ["face up", "face down"] },
		{ range: "C34:C45", list: ["rectangle", "round", "oval"] },
	],
};
