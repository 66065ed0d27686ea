import { expect, test } from "vitest";
import { shareLeft, withPieceName } from "../../../src/sidebar/newjob/edits";
import { jobInput } from "../../../src/sidebar/newjob/job-input";
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
	expect(jobInput(form)).toEqual({
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
	expect(jobInput({ ...BARS, pigments: ["Black"] }).tones).toEqual([
		{ name: "Base", share: 0.75, doses: {} },
		{ name: "Vein", share: 0.25, doses: { Black: 0.05 } },
	]);
});

test("a number that is none is never guessed", () => {
	const tones = [tone("Base", "half")];
	expect(() => jobInput({ ...BARS, tones })).toThrow(
		'share must be a number, got "half"',
	);
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
