import type { Tab } from "../src/template/plan";

/** The mix, its tones and the pigment they take. */
export const tones: Tab = {
	name: "Tones",
	color: "#8a5a2b",
	rows: 38,
	widths: [
		180, 180, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100,
		100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100,
	],
	frozenRows: 1,
	frozenColumns: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Tones · "&{job}title']] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"A dose is dry pigment as a share of binder. Shares are of the whole batch.",
				],
			],
		},
		{
			at: "A3",
			look: "label",
			rows: [
				["Mix"],
				["Binder in fresh mix"],
				["Fresh density, {density}"],
				["Water to binder"],
				["Cement in binder"],
				["Vessels to dose in"],
			],
		},
		{ at: "B3", look: "input", size: [1, 1], formats: "text", slot: "mix" },
		{
			at: "B4",
			look: "result",
			rows: [['=IF(COUNT(B23:B34)=0;"";BINDER_SHARE(B23:B34;D23:D34))']],
			formats: "share",
			name: "binder",
		},
		{
			at: "B5",
			look: "result",
			rows: [
				[
					'=IF(COUNT(B23:B34)=0;"";MIX_DENSITY(B23:B34;C23:C34;{studio:air};{studio:units}))',
				],
			],
			formats: "density",
			name: "density",
		},
		{
			at: "B6",
			look: "result",
			rows: [
				[
					'=IF(COUNT(B23:B34)=0;"";WATER_BINDER_RATIO(B23:B34;D23:D34;F23:F34))',
				],
			],
			formats: "number",
		},
		{
			at: "B7",
			look: "result",
			rows: [
				[
					'=IF(COUNT(B23:B34)=0;"";SUMPRODUCT(B23:B34;E23:E34)/SUMPRODUCT(B23:B34;D23:D34))',
				],
			],
			formats: "share",
		},
		{
			at: "B8",
			look: "result",
			rows: [["={at:Pour card.vessels}"]],
			formats: "whole",
			slot: "vessels",
		},
		{ at: "A9", look: "total", rows: [["Tones"]] },
		{
			at: "C9",
			look: "note",
			rows: [["Dose of each pigment (name it in the tinted cells below)"]],
		},
		{
			at: "A10",
			look: "heading",
			rows: [["Tone", "Share"]],
		},
		{
			at: "C10",
			look: "input",
			size: [1, 4],
			formats: "text",
			name: "pigments",
			align: "right",
		},
		{
			at: "G10",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Undosed mix, {mass}",
					"On the scale, {mass}",
					'=IF(C10="";"";C10&", g")',
					'=IF(D10="";"";D10&", g")',
					'=IF(E10="";"";E10&", g")',
					'=IF(F10="";"";F10&", g")',
					"Below the limit by",
				],
			],
		},
		{
			at: "A11",
			look: "input",
			size: [6, 6],
			slot: "typed_tones",
			formats: ["text", "share", "share", "share", "share", "share"],
		},
		{
			at: "N11",
			look: "result",
			size: [6, 6],
			name: "tones",
			rows: [['=ARRAYFORMULA(IF(A11:F16="";"";A11:F16))']],
			formats: ["text", "share", "share", "share", "share", "share"],
		},
		{
			at: "T11",
			look: "result",
			size: [6, 6],
			slot: "dosed",
			rows: [['=ARRAYFORMULA(IF(A11:F16="";"";A11:F16))']],
			formats: ["text", "share", "share", "share", "share", "share"],
		},
		{ at: "Z3", look: "input", size: [1, 1], formats: "text", slot: "way" },
		{
			at: "Z4",
			look: "input",
			size: [1, 1],
			formats: "length",
			slot: "face_depth",
		},
		{ at: "Z5", look: "input", size: [1, 1], formats: "text", slot: "backing" },
		{
			at: "Z6",
			look: "input",
			size: [1, 1],
			formats: "text",
			slot: "sample_number",
		},
		{ at: "Z7", look: "result", size: [1, 1], slot: "look" },
		{ at: "Z11", look: "result", size: [6, 1], slot: "expected" },
		{ at: "I20", look: "result", size: [1, 4], slot: "pigment_totals" },
		{
			at: "G11",
			slot: "tone_weights",
			look: "result",
			size: [6, 6],
			rows: [
				[
					'=IF(AND({job}mix_total>0;SUM(B11:B16)>0);TONE_WEIGHTS({job}tones;{job}pigments;{job}mix_total;{job}binder;{studio:units});"")',
				],
			],
			formats: ["mass", "mass", "pigment", "pigment", "pigment", "pigment"],
		},
		{
			at: "M11",
			slot: "headroom",
			look: "result",
			size: [6, 1],
			rows: [
				[
					'=IF(OR(SUM(C11:F16)=0;B7="");"";PIGMENT_HEADROOM(C11:F16;C19:F19;B7))',
				],
			],
			formats: "share",
		},
		{
			at: "A17",
			look: "caution",
			rows: [
				[
					'=IF(COUNT({at:Pour card.weights})>0;"Weights are typed on the Pour card: a change here makes another plan, and the card will say so.";"")',
				],
			],
		},
		{
			at: "A18",
			look: "total",
			rows: [["Together"]],
		},
		{
			at: "B18",
			look: "total",
			rows: [["=SUM(B11:B16)"]],
			formats: "share",
			slot: "share_total",
		},
		{
			at: "G18",
			look: "total",
			rows: [
				[
					"=SUM(G11:G16)",
					"=SUM(H11:H16)",
					"=SUM(I11:I16)",
					"=SUM(J11:J16)",
					"=SUM(K11:K16)",
					"=SUM(L11:L16)",
				],
			],
			formats: ["mass", "mass", "pigment", "pigment", "pigment", "pigment"],
		},
		{ at: "A19", look: "label", rows: [["Most allowed, of cement"]] },
		{
			at: "C19",
			slot: "maxima",
			look: "result",
			rows: [
				[
					'=IF(C10="";"";IFERROR(IF(INDEX({tab:Pigments}!E5:E34;MATCH(C10;studio_pigment_names;0))>0;INDEX({tab:Pigments}!E5:E34;MATCH(C10;studio_pigment_names;0));1/10);""))',
					'=IF(D10="";"";IFERROR(IF(INDEX({tab:Pigments}!E5:E34;MATCH(D10;studio_pigment_names;0))>0;INDEX({tab:Pigments}!E5:E34;MATCH(D10;studio_pigment_names;0));1/10);""))',
					'=IF(E10="";"";IFERROR(IF(INDEX({tab:Pigments}!E5:E34;MATCH(E10;studio_pigment_names;0))>0;INDEX({tab:Pigments}!E5:E34;MATCH(E10;studio_pigment_names;0));1/10);""))',
					'=IF(F10="";"";IFERROR(IF(INDEX({tab:Pigments}!E5:E34;MATCH(F10;studio_pigment_names;0))>0;INDEX({tab:Pigments}!E5:E34;MATCH(F10;studio_pigment_names;0));1/10);""))',
				],
			],
			formats: "share",
		},
		{ at: "A21", look: "total", rows: [["Mix"]] },
		{
			at: "A22",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Ingredient",
					"Parts",
					"Specific gravity",
					"Binder share",
					"Cement share",
					"Water share",
					"Temperature group",
					"Moisture",
					"Absorption",
					"Pack, {mass}",
					"Pack price",
					"For this job, {mass}",
				],
			],
		},
		{
			at: "A23",
			look: "result",
			size: [12, 11],
			slot: "mix_table",
			rows: [
				[
					'=IF(B3="";"";IFERROR(FILTER({tab:Mixes}!B5:L64;{tab:Mixes}!A5:A64=B3);""))',
				],
			],
			formats: [
				"text",
				"number",
				"number",
				"share",
				"share",
				"share",
				"text",
				"share",
				"share",
				"mass",
				"money",
			],
		},
		{
			at: "L23",
			slot: "mix_weights",
			look: "result",
			size: [12, 1],
			rows: [
				[
					'=IF(OR({job}mix_total=0;COUNT(B23:B34)=0);"";WEIGH_OUT(B23:B34;{job}mix_total))',
				],
			],
			formats: "mass",
		},
		{ at: "A36", look: "caution", rows: [["Cautions"]] },
		{
			at: "A37",
			look: "note",
			rows: [
				[
					"Pigment and cement dust: measure out with extraction or a fitted respirator, and wet down spills. The data sheet of the actual pigment comes before any number here.",
				],
				[
					"A dose above what its maker allows weakens the piece; fiber-rich mixes stiffen early with strong doses: cast a sample first.",
				],
			],
		},
	],
	choices: [
		{ range: "C10:F10", from: "studio_pigment_names" },
		{ range: "B3", from: "studio_mix_names" },
	],
	rules: [
		{ range: "M11:M16", when: "=AND(ISNUMBER(M11);M11<0)", look: "warning" },
	],
};
