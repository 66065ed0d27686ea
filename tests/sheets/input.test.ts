import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { checkedFields } from "../../src/sheets/input";
import { jobSlots, type Known } from "../../src/sheets/slots";
import type { JobInput } from "../../src/template/job";

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
const KNOWN: Known = {
	units: "metric",
	unitsFixed: true,
	mixes: ["White", "Gray, fine"],
	pigments: ["Umber", "Black", "Ocher", "Red", "Blue"],
	waste: 0.08,
};

const slots = (job: object, known: Known = KNOWN) =>
	jobSlots(checkedFields({ ...JOB, ...job }), known);
const sentence = (work: () => unknown): string => {
	try {
		work();
	} catch (error) {
		if (error instanceof InputError) return error.message;
		throw error;
	}
	return "";
};

describe("fields of a job", () => {
	test.each<[string, object, string]>([
		[
			"an unknown field",
			{ pieces: [PIECE, PIECE, { ...PIECE, lenght: 3 }] },
			'unknown field "pieces[2].lenght": allowed are name, quantity, shape, a, b, c, d, thickness, dropHeight, dropRun, dropThickness, face, notch, dropOn',
		],
		[
			"an unknown field of the job",
			{ customer: "A" },
			'unknown field "customer": allowed are about, units, client, title, pourDate, dueDate, mix, waste, pieces, cutouts, knockouts, tones',
		],
		["a missing field", { client: undefined }, 'missing field "client"'],
		["a blank one", { title: "  " }, 'missing field "title"'],
		[
			"a missing field of a row",
			{ pieces: [{ ...PIECE, thickness: "" }] },
			'missing field "pieces[0].thickness"',
		],
		["no pieces", { pieces: [] }, '"pieces" has no row'],
		["pieces that are no list", { pieces: {} }, '"pieces" must be a list'],
		[
			"a row that is none",
			{ tones: ["Shell"] },
			"tones[0] must be an object with name, share, doses",
		],
		[
			"more rows than there is room for",
			{ pieces: Array(21).fill(PIECE) },
			'"pieces" has 21 rows: there is room for 20',
		],
		[
			"more tones",
			{ tones: Array(7).fill(TONE) },
			'"tones" has 7 rows: there is room for 6',
		],
		[
			"a text in place of a number",
			{ pieces: [{ ...PIECE, quantity: "two" }] },
			'"pieces[0].quantity" must be a number, got "two"',
		],
		[
			"a truth value in place of a length",
			{ pieces: [{ ...PIECE, a: true }] },
			'"pieces[0].a" must be a number or a text, got true',
		],
		[
			"a share typed as percent",
			{ waste: 8 },
			'"waste" must be between 0% and 100% (that is 800%; write 0.08 for 8%), got 8',
		],
		[
			"a dose below nothing",
			{ tones: [{ ...TONE, doses: { Umber: -0.01 } }] },
			'"tones[0].doses.Umber" must be between 0% and 100% (that is -1%; write 0.08 for 8%), got -0.01',
		],
		[
			"a day that does not exist",
			{ pourDate: "2027-02-29" },
			'"pourDate" must be a day that exists, as yyyy-mm-dd, got "2027-02-29"',
		],
		[
			"other units",
			{ units: "imperial" },
			'"units" must be one of "metric", "us", got "imperial"',
		],
		[
			"another face",
			{ pieces: [{ ...PIECE, face: "up" }] },
			'"pieces[0].face" must be one of "face up", "face down", got "up"',
		],
	])("%s", (_, change, expected) => {
		expect(sentence(() => slots(change))).toBe(expected);
	});

	test("each mistake has a line of its own", () => {
		const { client, mix, ...rest } = JOB;
		expect(sentence(() => checkedFields(rest)).split("\n")).toEqual([
			'missing field "client"',
			'missing field "mix"',
		]);
	});

	test.each([[null], [[]], ["job"], [7]])("%j is no job", (input) => {
		expect(sentence(() => checkedFields(input))).toMatch(
			/^the job must be an object with about, units/,
		);
	});
});

describe("a job that the workbook refuses", () => {
	test.each<[string, object, string]>([
		[
			"an unknown mix",
			{ mix: "Wite" },
			'"mix" is "Wite", which is not on the Mixes tab: there are "White", "Gray, fine"',
		],
		[
			"an unknown pigment",
			{ tones: [{ ...TONE, doses: { Umbra: 0.01 } }] },
			'"tones[0].doses" is "Umbra", which is not on the Pigments tab: there are "Umber", "Black", "Ocher", "Red", "Blue"',
		],
		[
			"five pigments",
			{
				tones: [
					{
						...TONE,
						doses: { Umber: 0.1, Black: 0.1, Ocher: 0.1, Red: 0.1, Blue: 0 },
					},
				],
			},
			"the tones use 5 pigments (Umber, Black, Ocher, Red, Blue): there is room for 4",
		],
		[
			"other units than the workbook's",
			{ units: "us" },
			'"units" is "us", but this workbook is in metric',
		],
	])("%s", (_, change, expected) => {
		expect(sentence(() => slots(change))).toBe(expected);
	});

	test("units are free until the workbook has its own", () => {
		expect(
			sentence(() => slots({ units: "us" }, { ...KNOWN, unitsFixed: false })),
		).toBe("");
	});

	test.each<[string, object, RegExp]>([
		[
			"a shape that is none",
			{ pieces: [PIECE, { ...PIECE, name: "B", shape: "square" }] },
			/^pieces row 2: shape/,
		],
		[
			"a missing side",
			{ pieces: [{ ...PIECE, b: "" }] },
			/^pieces row 1: B is blank/,
		],
		[
			"a cutout in a piece that is not there",
			{ cutouts: [{ piece: "Bar", count: 1, shape: "round", a: 40 }] },
			/cutouts row 1: .*Bar/,
		],
		[
			"two tones of one name",
			{ tones: [TONE, { ...TONE, name: " shell " }] },
			/^tones must each have a name/,
		],
		[
			"shares that are all nothing, of tones without pigment",
			{ tones: [{ name: "A", share: 0, doses: {} }] },
			/share/,
		],
	])("%s, in the words of the sheet function", (_, change, expected) => {
		expect(sentence(() => slots(change))).toMatch(expected);
	});
});

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
		] as unknown as JobInput["tones"];
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

	test.each([
		[{ dueDate: "2027-02-30" }, /"dueDate" must be a day that exists/],
		[
			{ pieces: [{ ...bar, notch: "behind" }] },
			/"pieces\[0\].notch" must be one of "front left"/,
		],
		[
			{ pieces: [{ ...bar, notch: "back" }] },
			/^pieces row 1: notch at must be one of front left/,
		],
		[
			{ pieces: [{ ...bar, dropOn: "front" }] },
			/^pieces row 1: drop edge on must be blank/,
		],
		[
			{ knockouts: [{ piece: "Top", what: "Sink", a: 480, b: 390 }] },
			/^knockouts row 1: thickness is blank/,
		],
	])("%j is refused", (job, words) => {
		expect(sentence(() => slots(job))).toMatch(words);
	});
});
