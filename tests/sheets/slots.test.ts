import { describe, expect, test } from "vitest";
import type { JobFile } from "../../src/job/jobfile";
import { checkedJob } from "../../src/job/jobmistakes";
import type { StudioFile } from "../../src/job/studiofile";
import { jobSlots } from "../../src/sheets/slots";

const PIECE = {
	name: "Top",
	quantity: 1,
	shape: "rectangle",
	a: 900,
	b: "52 cm",
	thickness: "8' 1/2\"",
};
const TONE = { name: "Shell", share: 1, doses: { Umber: 0.02 } };
const JOB = {
	units: "metric",
	client: "Client",
	title: "Title",
	mix: "White",
	pieces: [PIECE],
	tones: [TONE],
};
const MIX = { ingredient: "Dry", parts: 1, specificGravity: 2.5 };
const STUDIO: StudioFile = {
	settings: { units: "metric", air: 0.02, waste: 0.08 },
	mixes: [
		{ mix: "White", ...MIX },
		{ mix: "White", ingredient: "Water", parts: 0.1, specificGravity: 1 },
		{ mix: "Gray, fine", ...MIX },
	],
	pigments: ["Umber", "Black", "Ocher", "Red", "Blue"].map((name) => ({
		name,
	})),
};

const slots = (job: object) =>
	jobSlots(checkedJob(STUDIO, { ...JOB, ...job }), STUDIO);

describe("cells of a job", () => {
	test("lengths stay as they were typed, what is left out is blank", () => {
		expect(slots({}).pieces).toEqual([
			["Top", 1, "rectangle", 900, "52 cm", "", "", "8' 1/2\"", "", "", ""],
		]);
	});

	test("pigments stand in the order of their first dose, spelled as the studio does", () => {
		const tones = [
			{ name: "A", share: 0.5, doses: { black: 0.01, Ocher: "" } },
			{ name: "B", share: 0.3, doses: { " UMBER": 0, Black: 0.02 } },
			{ name: "C", doses: {} },
		] as unknown as JobFile["tones"];
		expect(slots({ tones })).toMatchObject({
			pigments: [["Black", "Umber"]],
			typed_tones: [
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
		["2028-02-29", 46812],
	])("%s is day %d, in any time zone", (day, serial) => {
		expect(slots({ pourDate: day }).pour_date).toBe(serial);
	});

	test("the usual waste stands in for one left out, and not for none", () => {
		expect(slots({}).waste).toBe(0.08);
		expect(slots({ waste: 0 }).waste).toBe(0);
	});
});

describe("due date, hand and knockouts", () => {
	const bar = {
		...PIECE,
		shape: "L",
		a: 2000,
		b: 1500,
		c: 1400,
		d: 900,
		thickness: 30,
		face: "face down",
	};

	test("stand beside their pieces", () => {
		const written = slots({
			dueDate: "2027-04-30",
			pieces: [
				{ ...bar, notch: "back right" },
				{ ...PIECE, name: "Shelf" },
			],
			knockouts: [
				{ piece: "Top", what: "Sink", volume: 5.6, mass: 1, held: 15 },
			],
		});
		// Days from 1899-12-30 to 2027-04-30: 127 years of 365 days, 31 leap days from 1904 to 2024, and 121 days.
		expect(written.due_date).toBe(127 * 365 + 31 + 121);
		expect(written.faces).toEqual([["face down"], [""]]);
		expect(written.notches).toEqual([["back right"], [""]]);
		expect(written.drop_sides).toEqual([[""], [""]]);
		expect(written.knockouts).toEqual([
			["Top", "Sink", 5.6, "", "", "", 1, "", 15],
		]);
	});
});
