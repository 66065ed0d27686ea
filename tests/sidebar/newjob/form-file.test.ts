import { expect, test } from "vitest";
import { fieldMistakes } from "../../../src/job/jobfile";
import { shareLeft, withPieceName } from "../../../src/sidebar/newjob/form";
import { formOf, jobOf } from "../../../src/sidebar/newjob/form-file";
import { demo } from "../../../templates/index";
import { starterStudio } from "../../../templates/starterstudio";
import { STUDIO } from "../studio";
import { BARS, cutout, piece, tone } from "./forms";

test("a form becomes the job as a person would write it in a file", () => {
	const form = {
		...BARS,
		client: ' =HYPERLINK("x") ',
		pourDate: "2026-12-01",
		pieces: [
			piece({
				name: "Bar",
				quantity: "2",
				shape: "L",
				a: "8' 1/2\"",
				b: "1800",
				c: "1,5 m",
				d: "1200",
				thickness: "38",
				face: "face down",
			}),
			piece({}),
		],
		cutouts: [cutout({ piece: "Bar", shape: "round", a: "350" })],
	};
	expect(jobOf(form)).toEqual({
		units: "metric",
		client: '=HYPERLINK("x")',
		title: "Two bars",
		pourDate: "2026-12-01",
		mix: "Plain mix",
		pieces: [
			{
				name: "Bar",
				quantity: 2,
				shape: "L",
				a: "8' 1/2\"",
				b: 1800,
				c: "1,5 m",
				d: 1200,
				thickness: 38,
				face: "face down",
			},
		],
		cutouts: [{ piece: "Bar", count: 1, shape: "round", a: 350 }],
		tones: [
			{ name: "Base", share: 0.75, doses: { Umber: 0.02 } },
			{ name: "Vein", share: 0.25, doses: { Umber: 0.02, Black: 0.05 } },
		],
	});
});

test("a dose of a pigment taken out of the job does not come along", () => {
	expect(jobOf({ ...BARS, pigments: ["Black"] }).tones).toEqual([
		{ name: "Base", share: 0.75, doses: {} },
		{ name: "Vein", share: 0.25, doses: { Black: 0.05 } },
	]);
});

test("a number that is none is never guessed", () => {
	const tones = [tone("Base", "half")];
	const job = jobOf({ ...BARS, tones });
	expect(job.tones[0]?.share).toBe("half");
	expect(fieldMistakes(job)).toEqual([
		{
			path: "tones[0].share",
			say: '"tones[0].share" must be a number from 0 to 1, got "half"',
		},
	]);
});

test.each([
	[["60"], "40"],
	[["60", "12.5"], "27.5"],
	[["33,3"], "66.7"],
	[["70", "30"], ""],
	[["?"], "100"],
])("after tones of %j the next one's share is %j", (shares, left) => {
	expect(shareLeft(shares.map((share) => tone("x", share)))).toBe(left);
});

test("a piece takes its cutouts along when it is renamed, and only its own", () => {
	const cutouts = [cutout({ piece: "Bar" }), cutout({ piece: "Top" })];
	const form = { ...BARS, cutouts };
	const [bar] = form.pieces;
	const renamed = bar && withPieceName(form, bar, "Counter ");
	expect(renamed?.pieces[0]?.name).toBe("Counter ");
	expect(renamed?.cutouts.map((row) => row.piece)).toEqual(["Counter", "Top"]);
});

test.each(["metric", "us"] as const)(
	"a file comes back from the form as it was, %s",
	(units) => {
		const file = demo[units];
		expect(jobOf(formOf(file, starterStudio(units)))).toEqual(
			// a number and its text are the same
			JSON.parse(JSON.stringify(file).replace(/:"([\d.]+)"/g, ":$1")),
		);
	},
);

test("what the form has no entry for is kept, and names are the studio's", () => {
	const file = {
		...jobOf(BARS),
		waste: 0.05,
		stage: "ordered",
		mix: "plain MIX",
		knockouts: [{ piece: "Bar", what: "Sink", volume: 5 }],
		tones: [{ name: "Base", share: 1, doses: { umber: 0.02, Black: "" } }],
	};
	expect(jobOf(formOf(file, STUDIO.studio))).toEqual({
		...file,
		mix: "Plain mix",
		tones: [{ name: "Base", share: 1, doses: { Umber: 0.02 } }],
	});
});
