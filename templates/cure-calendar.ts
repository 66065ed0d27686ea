import type { Block } from "../src/template/plan";

/** Days that the calendar looks ahead, or back, for one on which the studio works. */
const SEARCHED = "(ROW($A$1:$A$60)-1)";
/** The last weekday of work, 1 Monday to 7 Sunday. */
const LAST_WEEKDAY = "$J$10";
/** Days between the first coat and the last. */
const COATING_DAYS = "$J$11";
/** A number of a day that no calendar reaches: no day of work was found. */
export const NEVER = "10^6";

const isOpen = (day: string) =>
	`(WEEKDAY(${day};2)<=${LAST_WEEKDAY})*(COUNTIF({studio:closed_days};${day})=0)`;

const dayOrBlank = (cell: string, day: string) =>
	`=IF(ISERROR(${cell});${cell};IF(ISNUMBER(${cell});${day};""))`;

/** The first day of work from the day in a cell on. */
const openFrom = (cell: string) => {
	const day = `${cell}+${SEARCHED}`;
	return dayOrBlank(
		cell,
		`MIN(ARRAYFORMULA(IF(${isOpen(day)};${day};${NEVER})))`,
	);
};

/** The last day of work until the day in a cell. */
const openUntil = (cell: string) => {
	const day = `${cell}-${SEARCHED}`;
	return dayOrBlank(cell, `MAX(ARRAYFORMULA(IF(${isOpen(day)};${day};0)))`);
};

const ROWS = [10, 11, 12, 13, 14, 15, 16];
const DEMOLD_DAYS = "ROUNDUP({studio:demold_hours}/24;0)";

/** The day before which each step cannot be, from the days before it. */
const NOT_BEFORE = [
	'=IF(B3="due date";D10;IF(ISNUMBER(B4);B4;""))',
	dayOrBlank("B10", `B10+${DEMOLD_DAYS}`),
	dayOrBlank("B10", "MAX(B11;B10+{studio:fill_days})"),
	dayOrBlank("B10", "MAX(B12+1;B10+{studio:polish_days})"),
	dayOrBlank("B10", "MAX(B13+1;B10+{studio:seal_days})"),
	dayOrBlank("B14", `B14+${COATING_DAYS}`),
	dayOrBlank("B15", "B15+{studio:deliver_days}"),
];

/** The day after which each step would be too late, from the days after it. */
const NOT_AFTER = [
	dayOrBlank(
		"D14",
		`MIN(D11-${DEMOLD_DAYS};D12-{studio:fill_days};D13-{studio:polish_days};D14-{studio:seal_days})`,
	),
	dayOrBlank("D12", "D12"),
	dayOrBlank("D13", "D13-1"),
	dayOrBlank("D14", "D14-1"),
	dayOrBlank("D15", `D15-${COATING_DAYS}`),
	dayOrBlank("D16", "D16-{studio:deliver_days}"),
	'=IF(ISNUMBER(B5);B5;"")',
];

const WHAT_TO_DO = [
	"Cover when firm to the touch: sheet, then insulation. Leave the face alone.",
	'="Not before "&{studio:demold_hours}&" h at about 20 °C (68 °F), and after a test on the piece. Raise on strips that do not absorb; cover again."',
	"Pigmented paste into the voids, a skim over all: amounts below. Cover again.",
	"Flush, wet, about 200 grit; then to the grit of the sample. Then air on both faces.",
	"When the moisture reading is under the limit of the sealer's data sheet: see below.",
	'=IF({studio:sealer_coats}>1;{studio:sealer_coats}&" coats, "&{studio:recoat_hours}&" h between them, longer when cool or damp.";"One coat.")',
	"When the sealer has cured, by its data sheet. Carry as the Job tab says.",
];

/** Each step's day, forwards, and the last on which it may be. */
export const calendarBlocks: readonly Block[] = [
	{ at: "A8", look: "total", rows: [["Calendar"]] },
	{
		at: "A9",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Step",
				"Day",
				"",
				"At the latest",
				"Strength at 20\u00a0°C (68\u00a0°F)",
				"What to do",
			],
		],
	},
	{
		at: "A10",
		look: "label",
		rows: [
			["Pour"],
			["Demold"],
			["Fill voids"],
			["Polish"],
			["Seal"],
			["Last coat"],
			["Deliver"],
			["Today, by the log below"],
		],
	},
	{
		at: "B10",
		look: "total",
		rows: ROWS.map((row) => [openFrom(`H${row}`)]),
		formats: "date",
		align: "left",
	},
	{
		at: "C10",
		look: "result",
		size: [7, 1],
		rows: [
			[
				'=ARRAYFORMULA(IF(ISNUMBER(B10:B16);MID("MonTueWedThuFriSatSun";WEEKDAY(B10:B16;2)*3-2;3);""))',
			],
		],
	},
	{
		at: "D10",
		look: "result",
		rows: ROWS.map((row) => [openUntil(`I${row}`)]),
		formats: "date",
		align: "left",
	},
	{
		at: "E10",
		look: "result",
		size: [8, 1],
		rows: [
			['=IF(COUNT(K10:K17)=0;"";STRENGTH_AT_AGE(K10:K17;{studio:cement}))'],
		],
		formats: "percent",
	},
	{
		at: "F10",
		look: "result",
		wrap: true,
		rows: WHAT_TO_DO.map((words) => [words]),
	},
	{ at: "H10", look: "result", rows: NOT_BEFORE.map((day) => [day]) },
	{ at: "I10", look: "result", rows: NOT_AFTER.map((day) => [day]) },
	{
		at: "J10",
		look: "result",
		rows: [
			['=IF({studio:weekend}="Sunday";6;IF({studio:weekend}="none";7;5))'],
			[
				"=IF(({studio:sealer_coats}-1)*{studio:recoat_hours}<=8;0;ROUNDUP(({studio:sealer_coats}-1)*{studio:recoat_hours}/24;0))",
			],
		],
	},
	{
		at: "K10",
		look: "result",
		rows: [
			...ROWS.map((row) => [
				row === 10 ? "" : `=IF(ISNUMBER(B${row});B${row}-$B$10;"")`,
			]),
			['=IF(ISNUMBER(B26);B26/24;"")'],
		],
	},
	{
		at: "L10",
		look: "result",
		rows: [["=B10", "=B11", "=B12", "=B13", "=B14", "=B16"]],
		formats: "date",
		name: "dates",
	},
	...["L10", "M10", "N10", "O10", "P10", "Q10"].map(
		(at, index): Block => ({
			at,
			look: "result",
			size: [1, 1],
			slot: `day_${index + 1}`,
		}),
	),
];
