import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { checkedJob } from "../../src/job/jobmistakes";
import type { StudioFile } from "../../src/job/studiofile";

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

const check = (change: object, studio = STUDIO) =>
	checkedJob(studio, { ...JOB, ...change });
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
			{
				pieces: [
					PIECE,
					{ ...PIECE, name: "B" },
					{ ...PIECE, name: "C", lenght: 3 },
				],
			},
			'unknown field "pieces[2].lenght": allowed are name, quantity, shape, a, b, c, d, thickness, dropHeight, dropRun, dropThickness, radius, face, notch, dropOn, moldMass',
		],
		[
			"an unknown field of the job",
			{ customer: "A" },
			'unknown field "customer": allowed are about, units, client, title, pourDate, dueDate, stage, waste, crew, mix, finish, sealing, state, placing, faceDepth, backedWith, sampleNumber, look, bandStart, folds, seenFrom, sampleMass, wanted, startsFrom, strengthWanted, dryingAir, dryingHumidity, dryingMix, dryingWind, bleeds, moistureLimit, moistureReading, sealerWaste, pasteWaste, priceFrom, priceTyped, byCard, spent, quotedOn, priceAgreed, acceptedOn, load, pieces, cutouts, knockouts, tones, pours, cureLog, whatIfs, changes, payments, goods, travel, work, pigments',
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
			'"waste" must be between 0% and 100%, got 800% (type 8% or 0.08)',
		],
		[
			"a dose below nothing",
			{ tones: [{ ...TONE, doses: { Umber: -0.01 } }] },
			'"tones[0].doses.Umber" must be between 0% and 20%, got -1%',
		],
		[
			"a day that does not exist",
			{ pourDate: "2027-02-29" },
			'"pourDate" must be a day such as 2026-05-04, got "2027-02-29"',
		],
		[
			"other units",
			{ units: "imperial" },
			'"units" must be metric or us, got "imperial"',
		],
		[
			"another face",
			{ pieces: [{ ...PIECE, face: "up" }] },
			'"pieces[0].face" must be face up or face down, got "up"',
		],
	])("%s", (_, change, expected) => {
		expect(sentence(() => check(change))).toBe(expected);
	});

	test("each mistake has a line of its own", () => {
		const { client, mix, ...rest } = JOB;
		expect(sentence(() => checkedJob(STUDIO, rest)).split("\n")).toEqual([
			'missing field "client"',
			'missing field "mix"',
		]);
	});

	test.each([[null], [[]], ["job"], [7]])("%j is no job", (input) => {
		expect(sentence(() => checkedJob(STUDIO, input))).toMatch(
			/^the job must be an object with about, units/,
		);
	});
});

describe("a job that the workbook refuses", () => {
	test.each<[string, object, string]>([
		[
			"an unknown mix",
			{ mix: "Wite" },
			'"mix": mix "Wite" is not on the Mixes tab: there are "White", "Gray, fine"',
		],
		[
			"an unknown pigment",
			{ tones: [{ ...TONE, doses: { Umbra: 0.01 } }] },
			'"tones[0].doses.Umbra": "Umbra" is not on the Pigments tab: there are "Umber", "Black", "Ocher", "Red", "Blue"',
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
			'"tones": the tones use 5 pigments (Umber, Black, Ocher, Red, Blue): there is room for 4',
		],
		[
			"other units than the workbook's",
			{ units: "us" },
			'"units" is "us", but this workbook is in metric',
		],
	])("%s", (_, change, expected) => {
		expect(sentence(() => check(change))).toBe(expected);
	});

	test("units are free where the studio has none", () => {
		expect(
			sentence(() => check({ units: "us" }, { ...STUDIO, settings: {} })),
		).toBe("");
	});

	test.each<[string, object, RegExp]>([
		[
			"a shape that is none",
			{ pieces: [PIECE, { ...PIECE, name: "B", shape: "square" }] },
			/^"pieces\[1\].shape" must be one of rectangle, round/,
		],
		[
			"a missing side",
			{ pieces: [{ ...PIECE, b: "" }] },
			/^"pieces\[0\].b": B is blank/,
		],
		[
			"a cutout in a piece that is not there",
			{ cutouts: [{ piece: "Bar", count: 1, shape: "round", a: 40 }] },
			/^"cutouts\[0\].piece": .*Bar/,
		],
		[
			"two tones of one name",
			{ tones: [TONE, { ...TONE, name: " shell " }] },
			/^"tones\[1\].name": name must be unique/,
		],
		[
			"shares that are all nothing, of tones without pigment",
			{ tones: [{ name: "A", share: 0, doses: {} }] },
			/^"tones\[0\].share": share must be above 0/,
		],
	])("%s, at its field", (_, change, expected) => {
		expect(sentence(() => check(change))).toMatch(expected);
	});
});

describe("hand, knockouts and everything at once", () => {
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

	test("a job with all of them is fine", () => {
		const job = {
			pieces: [
				{ ...bar, notch: "back right" },
				{ ...PIECE, name: "Shelf" },
			],
			knockouts: [
				{ piece: "Top", what: "Sink", volume: 5.6, mass: 1, held: 15 },
			],
		};
		expect(sentence(() => check(job))).toBe("");
	});

	test.each([
		[{ dueDate: "2027-02-30" }, /^"dueDate" must be a day/],
		[
			{ pieces: [{ ...bar, notch: "behind" }] },
			/^"pieces\[0\].notch": notch at must be one of front left/,
		],
		[
			{ pieces: [{ ...bar, notch: "back" }] },
			/^"pieces\[0\].notch": notch at must be one of front left/,
		],
		[
			{ pieces: [{ ...bar, dropOn: "front" }] },
			/^"pieces\[0\].dropOn": drop edge on must be blank/,
		],
		[{ pieces: [{ ...bar, c: 2000 }] }, /^"pieces\[0\].c": C must be below A/],
		[
			{ pieces: [{ ...bar, dropHeight: 60 }] },
			/^"pieces\[0\].dropRun": drop run is blank/,
		],
		[
			{ pieces: [{ ...PIECE, shape: "area", a: "-2", b: 4000 }] },
			/^"pieces\[0\].a" must be above 0 m²/,
		],
		[
			{ knockouts: [{ piece: "Top", what: "Sink", a: 480, b: 390 }] },
			/^"knockouts\[0\]": type its volume, or A, B and depth/,
		],
		[
			{
				cutouts: [
					{ piece: "Top", count: 1, shape: "rectangle", a: 800, b: 300 },
					{ piece: "Top", count: 1, shape: "rectangle", a: 800, b: 300 },
				],
			},
			/^"pieces\[0\]": the cutouts together leave nothing/,
		],
	])("%j is refused", (job, words) => {
		expect(sentence(() => check(job))).toMatch(words);
	});

	test("every mistake is named, one of a kind or another", () => {
		const mistakes = sentence(() =>
			check({
				title: "",
				mix: "Wite",
				pieces: [
					{ ...PIECE, b: undefined, c: 20 },
					{ ...bar, name: "Bar", quantity: -1, notch: "behind" },
					{ ...PIECE, name: "top" },
				],
				cutouts: [
					{ piece: "Nook", count: 1, shape: "round", a: 40 },
					{ piece: "Bar", count: 0, shape: "round", a: 40 },
				],
				tones: [{ ...TONE, doses: { Umbra: 0.01 } }],
			}),
		);
		expect(
			mistakes.split("\n").map((line) => line.match(/"([^"]+)"/)?.[1]),
		).toEqual([
			"title",
			"pieces[1].quantity",
			"cutouts[1].count",
			"mix",
			"pieces[0].b",
			"pieces[0].c",
			"pieces[2].name",
			"cutouts[0].piece",
			"tones[0].doses.Umbra",
		]);
	});
});
