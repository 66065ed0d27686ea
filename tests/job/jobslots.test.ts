/** What is written of a job file into the cells of its tabs. */
import { expect, test } from "vitest";
import { jobSlots } from "../../src/job/cells/jobslots";
import { roomMistakes } from "../../src/job/cells/roommistakes";
import type { JobFile } from "../../src/job/jobfile";
import { spelledJob } from "../../src/job/spelledjob";
import type { StudioFile } from "../../src/job/studiofile";

const PIECE = {
	name: "Top",
	quantity: 1,
	shape: "rectangle",
	a: 900,
	b: "52 cm",
	thickness: "8' 1/2\"",
};
const JOB: JobFile = {
	units: "metric",
	client: "Client",
	title: "Title",
	mix: "White",
	pieces: [PIECE],
	tones: [{ name: "Shell", share: 1, doses: { Umber: 0.02 } }],
};
const STUDIO: StudioFile = {
	settings: { units: "metric" },
	mixes: [
		{ mix: "White", ingredient: "Cement", parts: 1 },
		{ mix: "White", ingredient: "Water", parts: 0.4 },
		{ mix: "Gray, fine", ingredient: "Dry", parts: 1 },
	],
	pigments: ["Umber", "Black", "Ocher", "Red", "Blue"].map((name) => ({
		name,
	})),
};

const slots = (job: object) =>
	jobSlots(spelledJob({ ...JOB, ...job }, STUDIO), STUDIO);
const room = (job: object) => roomMistakes({ ...JOB, ...job }, STUDIO);

test("lengths stay as they were typed, what is left out is blank", () => {
	expect(slots({}).pieces).toEqual([
		[
			...["Top", 1, "rectangle", 900, "52 cm", "", "", "8' 1/2\""],
			...["", "", "", "", "", "", "", ""],
		],
	]);
});

test("how a piece lies stands beside it", () => {
	const bar = { ...PIECE, face: "face down", notch: "back right" };
	const written = slots({ pieces: [bar, { ...PIECE, dropOn: "front" }] });
	expect(written.pieces).toMatchObject([
		{ 12: "face down", 13: "back right", 14: "" },
		{ 12: "", 13: "", 14: "front" },
	]);
});

test("pigments stand in the order of their first dose, spelled as the studio does", () => {
	const tones = [
		{ name: "A", share: 0.5, doses: { black: 0.01, Ocher: "" } },
		{ name: "B", share: 0.3, doses: { " UMBER": 0, Black: 0.02 } },
		{ name: "C", doses: {} },
	];
	expect(slots({ tones, mix: "gray, FINE" })).toMatchObject({
		mix: "Gray, fine",
		pigments: [["Black", "Umber"]],
		tones: [
			["A", 0.5, 0.01, ""],
			["B", 0.3, 0.02, 0],
			["C", "", "", ""],
		],
	});
});

// 25569 is 1970-01-01, the day from which computers count: Google's own epoch is 1899-12-30.
test.each([
	["1970-01-01", 25569],
	["2027-03-09", 46455],
	[" 2028-02-29 ", 46812],
])("%j is day %d, in any time zone", (day, serial) => {
	expect(slots({ pourDate: day }).pourDate).toBe(serial);
});

test("what is blank in a file is not written, and a zero is", () => {
	const written = slots({ waste: 0, crew: " ", dueDate: null });
	expect(written.waste).toBe(0);
	expect(Object.keys(written)).not.toContain("crew");
	expect(Object.keys(written)).not.toContain("dueDate");
});

test("weights stand in the rows of their ingredients, ice in the last, and in the column of their load", () => {
	const weighed = { water: 3.2, "Ice, crushed": 1 };
	const rows = slots({ pours: [{ load: 2, weighed, steps: { 0: 4, 7: 5 } }] });
	const load2 = (key: "weighed" | "steps") =>
		(rows[key] as unknown[][]).map((row) => row[1]);
	expect(load2("weighed")).toEqual([
		...["", 3.2, "", "", "", "", "", "", "", "", "", ""],
		1,
	]);
	expect(load2("steps").slice(0, 8)).toEqual([4, "", "", "", "", "", "", 5]);
});

test.each([
	[{ pieces: Array(21).fill(PIECE) }, '"pieces" has 21 rows'],
	[{ pigments: ["A", "B", "C", "D"] }, "the tones use 5 pigments"],
	[{ work: { sanding: { hours: 1 } } }, '"work.sanding" is none of template'],
	[
		{ pours: [{ load: 1, weighed: { Sugar: 1 } }] },
		'"pours[0].weighed.Sugar" is no ingredient of the mix: there are Cement, Water',
	],
	[
		{ pours: [{ load: 1, steps: { 37: 1 } }] },
		'"pours[0].steps.37" is no step',
	],
	[{ pours: [{ load: 3 }, { load: 3 }] }, '"pours[1]" is of load 3'],
])("%j is told to have no cell", (job, sentence) => {
	expect(room(job).join()).toContain(sentence);
});

test("a job that fits has a cell for everything", () => {
	expect(room({ pours: [{ load: 8, weighed: { CEMENT: 1 } }] })).toEqual([]);
});
