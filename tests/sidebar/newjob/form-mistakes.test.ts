import { describe, expect, test } from "vitest";
import { callFunction } from "../../../src/functions/call";
import { PIECE_TAKEOFF } from "../../../src/functions/takeoff";
import { basisOf } from "../../../src/job/answers/basis";
import type {
	CutoutRow,
	JobForm,
	PieceRow,
} from "../../../src/sidebar/newjob/form";
import { jobOf } from "../../../src/sidebar/newjob/form-file";
import { mistakesIn } from "../../../src/sidebar/newjob/form-mistakes";
import { STUDIO } from "../studio";
import { BARS, cutout, piece, tone } from "./forms";

const mistakesOf = (form: JobForm) =>
	mistakesIn(form, basisOf(STUDIO.studio, jobOf(form)));

/** Mistakes by field, each as `field: sentence`, with the row's key left out. */
function told(form: JobForm): string[] {
	return [...mistakesOf(form)].map(
		([id, sentence]) => `${id.replace(/^row\d+-/, "")}: ${sentence}`,
	);
}

const withPieces = (...pieces: Partial<PieceRow>[]): JobForm => ({
	...BARS,
	pieces: pieces.map(piece),
});
const BAR = { name: "Bar", a: "2000", b: "500", thickness: "40" };
const withCutouts = (...cutouts: Partial<CutoutRow>[]): JobForm => ({
	...withPieces(BAR),
	cutouts: cutouts.map(cutout),
});

test("a sound job has none", () => {
	expect(told(BARS)).toEqual([]);
});

test("client, title and mix are wanted", () => {
	expect(told({ ...BARS, client: " ", title: "", mix: "" })).toEqual([
		"client: client is blank",
		"title: title is blank",
		"mix: mix is blank",
	]);
});

test("a mix that has gone from its tab is said", () => {
	expect(told({ ...BARS, mix: "Old mix" })).toEqual([
		'mix: mix "Old mix" is not on the Mixes tab: there are "Plain mix"',
	]);
});

describe("pieces", () => {
	test.each<[Partial<PieceRow>, string]>([
		[{ ...BAR, name: "" }, "name: name is blank"],
		[
			{ ...BAR, quantity: "two" },
			'quantity: quantity must be a number, got "two"',
		],
		[{ ...BAR, quantity: "1.5" }, "quantity: quantity must be a whole number"],
		[{ ...BAR, shape: "star" }, "shape: shape must be one of rectangle"],
		[
			{ ...BAR, thickness: "-20" },
			"thickness: thickness must be above 0 mm, got -20",
		],
		[{ ...BAR, a: "" }, "a: A is blank"],
		[{ ...BAR, a: "2,440" }, 'a: A: "2,440" can be read in two ways'],
		[{ ...BAR, b: "wide" }, 'b: B: "wide" is not a length'],
		[{ ...BAR, shape: "area", a: "-2" }, "a: A must be above 0 m², got -2"],
		[{ ...BAR, shape: "area", a: "2 m2" }, "a: A must be a number"],
		[{ ...BAR, c: "100" }, "c: C must be blank"],
		[{ ...BAR, shape: "L", c: "2000", d: "100" }, "c: C must be below A"],
		[{ ...BAR, dropHeight: "60" }, "dropRun: drop run is blank"],
	])("%j", (fields, mistake) => {
		const [first, ...others] = told(withPieces(fields));
		expect(first).toContain(mistake);
		expect(others).toEqual([]);
	});

	test("every wrong field is marked at once", () => {
		const form = withPieces(
			{ ...BAR, quantity: "-1", thickness: "" },
			{ ...BAR, name: "Top", a: "?", b: "-1" },
		);
		expect(told(form).map((line) => line.split(":")[0])).toEqual([
			"quantity",
			"thickness",
			"a",
			"b",
		]);
	});

	test("two of one name: at the second", () => {
		const form = withPieces(BAR, { ...BAR, name: "bar" });
		const [[id, sentence] = []] = mistakesOf(form);
		expect(id).toBe(`row${form.pieces[1]?.key}-name`);
		expect(sentence).toContain("name must be unique");
	});

	test("a row that nobody has begun is no mistake, but no piece at all is", () => {
		expect(told(withPieces(BAR, {}))).toEqual([]);
		expect(told(withPieces({}))).toEqual(["name: name is blank"]);
	});

	test("the sentence is the cell's own", () => {
		const [sentence] = mistakesOf(
			withPieces({ ...BAR, thickness: "-20" }),
		).values();
		const row = ["Bar", 1, "rectangle", 2000, 500, "", "", -20, "", "", ""];
		expect(() => callFunction(PIECE_TAKEOFF, [[row]])).toThrow(
			String(sentence),
		);
	});
});

describe("cutouts", () => {
	test.each<[Partial<CutoutRow>, string]>([
		[{ piece: "Bar", count: "0", a: "400", b: "300" }, "count: count must be"],
		[{ piece: "", a: "400", b: "300" }, "piece: piece is blank"],
		[{ piece: "Top", a: "400", b: "300" }, "piece: piece"],
		[{ piece: "Bar", a: "3000", b: "300" }, "row:"],
		[{ piece: "Bar", a: "400" }, "b: B is blank"],
		[
			{ piece: "Bar", shape: "round", a: "400", b: "300" },
			"b: B must be blank",
		],
	])("%j", (fields, mistake) => {
		const [first, ...others] = told(withCutouts(fields));
		expect(first).toContain(mistake);
		expect(others).toEqual([]);
	});
});

describe("tones", () => {
	test.each([
		[[tone("", "100")], "name: name is blank"],
		[[tone("Base", "")], "share: share is blank"],
		[[tone("Base", "half")], 'share: share must be a number, got "half"'],
		[[tone("Base", "-5")], "share: share must be"],
		[
			[tone("Base", "100", { Umber: "400" })],
			"dose-Umber: Umber must be between 0% and 20%, got 400%",
		],
		[[tone("Base", "0"), tone("Vein", "0")], "share"],
	])("%#: %j", (tones, mistake) => {
		expect(told({ ...BARS, tones }).join("\n")).toContain(mistake);
	});

	test("doses of a pigment that is not in the job are not looked at", () => {
		const form = {
			...BARS,
			pigments: ["Black"],
			tones: [tone("Base", "100", { Umber: "much" })],
		};
		expect(told(form)).toEqual([]);
	});
});
