import type { Block, Tab } from "../src/template/plan";
import { asMany, whileIntact } from "./intact";

const HEADINGS = [
	"Date",
	"Job",
	"Client and title",
	"Load",
	"Mix",
	"Tones and doses reached",
	"Spread, {length}",
	"Mix, {temperature}",
	"Air, {temperature}",
	"Most off target",
	"Minutes since the load before",
	"Weighed by",
	"Lots",
	"Remarks",
	"Result",
	"Cost",
	"Estimate",
];

/** Of a pour, in the log and as the Pour card offers it. */
export const POUR_FORMATS: Block["formats"] = [
	"date",
	"whole",
	"text",
	"whole",
	"text",
	"text",
	"number",
	"temperature",
	"temperature",
	"share",
	"whole",
	"text",
	"text",
	"text",
	"text",
	"money",
	"money",
];

/** Rows of pours in which the words that are looked for stand. */
const FOUND =
	'ISNUMBER(SEARCH($B$3;C20:C319&"|"&E20:E319&"|"&F20:F319&"|"&M20:M319&"|"&N20:N319&"|"&O20:O319))';

const COLOR_FOUND = `ISNUMBER(SEARCH($B$3;INDEX({at:Swatches.kinds};0;1)&"|"&{at:Swatches.lots}&"|"&{at:Swatches.remarks}))*({at:Swatches.colors}<>"")`;

/** The last 12 rows of a table that are found, as they stand in it; blank cells stay blank. */
const latest = (table: string, found: string) => {
	const count = `SUMPRODUCT(${found}*1)`;
	const rows = `ROW(${table})`;
	return `=IF($B$3="";"";IF(${count}=0;"none";FILTER(ARRAYFORMULA(IF(${table}="";"";${table}));${found}*(${rows}>=LARGE(ARRAYFORMULA(IF(${found};${rows};0));MIN(12;${count}))))))`;
};

/** What each pour was. */
export const pourLog: Tab = {
	name: "Pour log",
	rows: 319,
	widths: [
		90, 60, 190, 60, 190, 330, 90, 90, 90, 90, 90, 90, 90, 190, 190, 90, 90, 30,
		190, 90, 90, 90, 60, 60, 60, 60, 60, 60, 60, 60, 90, 90, 90, 90, 190,
	],
	frozenRows: 5,
	blocks: [
		{ at: "A1", look: "title", rows: [["Pour log"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Type a client, a word of a title, a mix, a tone or a lot: the last 12 pours with it stand below, and in column S the colors measured (Swatches with it in mix, lot or remark).",
				],
			],
		},
		{ at: "A3", look: "label", rows: [["Find"]] },
		{ at: "B3", look: "input", size: [1, 2], formats: "text", slot: "find" },
		{
			at: "D3",
			look: "result",
			rows: [
				[
					`=IF($B$3="";IF(COUNTA(A20:A319)=0;"No pour yet: choose Record a pour in the Tonefold menu, or paste its row from the Pour card below.";"");IF(SUMPRODUCT(${FOUND}*1)=0;"No pour has this.";SUMPRODUCT(${FOUND}*1)&" found"))`,
				],
			],
		},
		{ at: "A5", look: "heading", wrap: true, rows: [HEADINGS] },
		{ at: "A4", look: "total", rows: [["Found"]] },
		{ at: "S4", look: "total", rows: [["Colors measured"]] },
		{
			at: "S5",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Mix",
					"Finish",
					"Sealed",
					"State",
					whileIntact(
						["$W$1:$AD$1"],
						`=IF(${asMany("{at:Swatches.swatch_pigments}", 8)};ARRAYFORMULA(IF({at:Swatches.swatch_pigments}="";"";{at:Swatches.swatch_pigments}));NA())`,
					),
					"",
					"",
					"",
					"",
					"",
					"",
					"",
					"Color",
					"Age, days",
					"Lot",
					"Date",
					"Remark",
				],
			],
		},
		{
			at: "A6",
			look: "result",
			size: [12, 17],
			rows: [[latest("A20:Q319", FOUND)]],
			formats: POUR_FORMATS,
			slot: "found",
		},
		{
			at: "S6",
			look: "result",
			size: [12, 17],
			rows: [
				[
					whileIntact(
						["$S$1:$AI$1"],
						`=IF(${asMany("{at:Swatches.swatches}", 17)};${latest("{at:Swatches.swatches}", COLOR_FOUND).slice(1)};NA())`,
					),
				],
			],
			formats: [
				"text",
				"text",
				"text",
				"text",
				...Array<"share">(8).fill("share"),
				"text",
				"whole",
				"text",
				"date",
				"text",
			],
			slot: "found_colors",
		},
		{ at: "A19", look: "total", rows: [["Every pour, one row per load"]] },
		{
			at: "A20",
			look: "input",
			size: [300, 17],
			name: "pours",
			formats: POUR_FORMATS,
		},
	],
};
