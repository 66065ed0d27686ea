import type { Block, Value } from "../src/template/plan";

const A_FACE = '=IF({studio:units}="us";"10 ft²";"m²")';
const FACES = '=N({at:Job.finish_area})/IF({studio:units}="us";10;1)';
const CASTINGS = "=SUM({at:Job.quantities})";

/** What is done, for each what, how many there are, and invented hours for each to be replaced by the studio's own. */
const OPERATIONS: readonly (readonly [
	name: string,
	unit: string,
	count: Value,
	hoursEach: number,
])[] = [
	["Measure and template", "casting", CASTINGS, 0.75],
	["Build the mold", "casting", CASTINGS, 2],
	["Weigh, mix and pour", "load", "=N({job}loads)", 2.5],
	["Demold, clean the mold", "casting", CASTINGS, 0.5],
	["Fill and polish", A_FACE, FACES, 1.5],
	["Seal", A_FACE, FACES, 0.4],
	["Deliver and install", "job", 1, 4],
];

export const workBlocks: readonly Block[] = [
	{ at: "A59", look: "total", rows: [["Work"]] },
	{
		at: "A60",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Operation",
				"For each",
				"How many",
				"Hours each",
				"Worked out, hours",
				"Typed, hours",
				"Hours",
				"Amount",
				"Hours it took",
			],
		],
	},
	{
		at: "A61",
		look: "result",
		rows: OPERATIONS.map(([name, unit, count]) => [name, unit, count]),
		formats: ["text", "text", "number"],
	},
	{
		at: "D61",
		look: "input",
		rows: OPERATIONS.map(([, , , hours]) => [hours]),
		formats: "number",
		slot: "hours_each",
	},
	{
		at: "E61",
		look: "result",
		size: [7, 1],
		rows: [["=ARRAYFORMULA(C61:C67*D61:D67)"]],
		formats: "number",
	},
	{
		at: "F61",
		look: "input",
		size: [7, 1],
		formats: "number",
		slot: "labor_hours",
	},
	{
		at: "G61",
		look: "result",
		size: [7, 2],
		rows: [
			[
				'=ARRAYFORMULA(IF(F61:F67="";E61:E67;F61:F67*1))',
				"=ARRAYFORMULA(G61:G67*{studio:labor_rate})",
			],
		],
		formats: ["number", "money"],
	},
	{
		at: "I61",
		look: "input",
		size: [7, 1],
		formats: "number",
		slot: "hours_worked",
		once: true,
	},
	{
		at: "A68",
		look: "total",
		rows: [["Total"]],
	},
	{
		at: "G68",
		look: "total",
		rows: [["=SUM(G61:G67)", "=SUM(H61:H67)"]],
		formats: ["number", "money"],
	},
	{
		at: "A69",
		look: "note",
		rows: [
			[
				"Hours each are invented: put your own. Typed hours count in place of those worked out.",
			],
		],
	},
];
