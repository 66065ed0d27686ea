/** How pieces are carried: statics and strength worked by hand, and what the words say of them. */
import { describe, expect, test } from "vitest";
import { answers } from "../../../src/job/answers/json";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import { slab } from "../../sheets/onejob";
import { studio } from "./slabjob";

const MIX = slab.mix;

/** A mix of 2300 kg/m³: one part of this gravity, no air. */
const withDensity = (settings: StudioFile["settings"] = {}): StudioFile => ({
	...studio,
	mixes: [
		{
			mix: MIX,
			ingredient: "Cement",
			parts: 1,
			specificGravity: 2.3,
			binderShare: 1,
			cementShare: 1,
		},
	],
	settings: {
		...studio.settings,
		air: 0,
		// f_fl of f_ck 40 at 40 mm: (1.6 − 40/1000) × 0.30 × 40^(2/3).
		flexural: 5.473761231,
		handling_factor: 1.5,
		cement: "normal",
		seal_days: 10,
		sealer_coats: 2,
		recoat_hours: 4,
		deliver_days: 4,
		...settings,
	},
});

const TOP = {
	name: "Top",
	quantity: 1,
	shape: "rectangle",
	a: 2000,
	b: 600,
	thickness: 40,
	face: "face up",
};
const SINK = {
	piece: "Top",
	count: 1,
	shape: "rectangle",
	a: 800,
	b: 500,
	left: 1000,
	front: 50,
};

const handled = (job: Partial<JobFile>, its = withDensity()) => {
	const { pieces, checks } = answers(its, {
		...(slab as JobFile),
		pourDate: undefined,
		pieces: [TOP],
		cutouts: [SINK],
		...job,
	});
	const [piece] = pieces;
	if (!piece) throw new Error("There is no piece");
	return { piece, checks };
};

describe("a top of 2000 × 600 × 40 with a cutout of 800 × 500 in its middle", () => {
	const { piece, checks } = handled({});

	test("its weakest section is the two strips of 50 in its middle", () => {
		expect(piece.section.net).toBeCloseTo(100, 6);
		expect(piece.section.at).toBe("1000 mm from the left, beside cutout 1");
	});

	// 126.30965 N·m over 100 × 40²/6; on edge 0.12492 MPa of both strips and 0.14435 of each as a frame.
	test.each([
		["demold", 1, 1.8721553, 3.795047316727286, 0.21574774489233514],
		["delivery", 14, 4.9352957, 1.4396134125046391, 0.0818417588354286],
	])("at %s, %d days old", (when, days, strength, flatUse, onEdgeUse) => {
		const moment = piece.handling.find((one) => one.when === when);
		expect(moment?.ageDays).toBe(days);
		expect(moment?.strength).toBeCloseTo(strength, 6);
		expect(moment?.flat).toBeCloseTo(4.7366119499999995, 6);
		expect(moment?.onEdge).toBeCloseTo(0.12492163384615385 + 0.144353888, 6);
		expect(moment?.flatUse).toBeCloseTo(flatUse, 6);
		expect(moment?.onEdgeUse).toBeCloseTo(onEdgeUse, 6);
		expect(moment?.state).toBe("look");
		expect(moment?.say).toMatch(/^Look: on edge, not flat: .*, factor 1\.5/);
	});

	test("the check says so too", () => {
		expect(checks.find(({ key }) => key === "carriedFlat")?.state).toBe("look");
	});

	test("a strength by formula is not for the first days", () => {
		expect(piece.handling[0]?.say).toMatch(
			/younger than 3 days: test it first$/,
		);
		expect(piece.handling[1]?.say).not.toMatch(/test it first/);
	});
});

test("without its place the cutout is taken where it weakens the top most, never less than in the middle", () => {
	const { piece } = handled({
		cutouts: [{ ...SINK, a: 500, b: 400, left: undefined, front: undefined }],
	});
	const placed = handled({
		cutouts: [{ ...SINK, a: 500, b: 400, front: 100 }],
	});
	expect(piece.handling[0]?.flat).toBeGreaterThanOrEqual(
		(placed.piece.handling[0]?.flat ?? 0) * (1 - 1e-6),
	);
	expect(piece.cutouts[0]).toMatchObject({
		a: 500,
		b: 400,
		left: null,
		front: null,
	});
});

test("a slab longer from front to back is carried by those ends", () => {
	const turned = { ...TOP, a: 600, b: 2000 };
	const { piece } = handled({
		pieces: [turned],
		cutouts: [{ ...SINK, a: 500, b: 800, left: 300, front: 600 }],
	});
	expect(piece.handling[0]?.flat).toBeCloseTo(4.7366119499999995, 6);
	expect(piece.section.at).toBe("1000 mm from the front, beside cutout 1");
});

describe("a lip along the front", () => {
	const dropped = {
		...TOP,
		dropHeight: 60,
		dropRun: 2000,
		dropThickness: 40,
		dropOn: "front",
	};

	// 541.32708 N/m: 1.69165 MPa plain; with the lip 1.1 times the weight over 124 240.96 instead of 160 000 mm³.
	test("sees more than the slab, and the words say so", () => {
		const { piece } = handled({ pieces: [dropped], cutouts: [] });
		expect(piece.handling[0]?.flat).toBeCloseTo(
			1.6916471249999998 * 1.4166020170674942,
			6,
		);
		expect(piece.handling[0]?.say).toMatch(
			/the lip of its drop edge sees most of it/,
		);
	});

	test("at an end it is weight alone", () => {
		const { piece } = handled({
			pieces: [{ ...dropped, dropRun: 600, dropOn: "left" }],
			cutouts: [],
		});
		// Its 1.44 L spread over the length: 0.03 of the slab's 48 L.
		expect(piece.handling[0]?.flat).toBeCloseTo(1.6916471249999998 * 1.03, 6);
		expect(piece.handling[0]?.say).not.toMatch(/lip/);
	});
});

describe("the words", () => {
	test("of an L with a cutout name both, the notch and the opening", () => {
		const bar = {
			name: "Bar",
			quantity: 1,
			shape: "L",
			a: 2150,
			b: 1480,
			c: 1500,
			d: 830,
			thickness: 30,
			notch: "back left",
			face: "face up",
		};
		const { piece } = handled(
			{
				pieces: [bar],
				cutouts: [
					{ ...SINK, piece: "Bar", a: 480, b: 390, left: 750, front: 130 },
				],
			},
			withDensity({ one_person: 100, crew: 2 }),
		);
		expect(piece.handling[0]?.flat).toBeCloseTo(6.562135241659887, 6);
		expect(piece.section.net).toBeCloseTo(260, 6);
		expect(piece.carry.state).toBe("fine");
		expect(piece.carry.say).toMatch(
			/; on edge at demolding and at delivery, flat on a board only, notch and opening stiffened by a bar across$/,
		);
	});

	test("of a piece that no way bears are a look", () => {
		const { piece } = handled(
			{},
			withDensity({ flexural: 0.5, one_person: 100, crew: 2 }),
		);
		expect(piece.carry.state).toBe("look");
		expect(piece.carry.say).toMatch(/in a cradle or on a board/);
	});

	test("name the limit of one person with the lift that it holds for", () => {
		const limit = { one_person: 100, crew: 2 };
		expect(handled({}, withDensity(limit)).piece.carry.say).toMatch(
			/^1 person, up to 100 kg, reach and height of that lift not typed/,
		);
		expect(
			handled({}, withDensity({ ...limit, lift_reach: 300, lift_height: 750 }))
				.piece.carry.say,
		).toMatch(
			/^1 person, up to 100 kg at a reach of 300 mm and hands at 750 mm;/,
		);
	});
});

describe("age", () => {
	const ages = (job: Partial<JobFile>, its?: StudioFile) =>
		handled(job, its).piece.handling.map(({ ageDays }) => ageDays);

	test("is by the calendar: a pour on a Friday is demolded on Monday", () => {
		expect(ages({ pourDate: "2027-03-12" })[0]).toBe(3);
	});

	// exp(5000 (1/293.15 − 1/283.15)) = 0.54740 hours an hour at 10 °C.
	test("is by the log where there is one: a day at 10 °C is worth 13 hours", () => {
		const log = [{ hours: 24, temperature: 10 }];
		const [demold, delivery] = ages({ cureLog: log });
		const hours = 24 * Math.exp(5000 * (1 / 293.15 - 1 / 283.15));
		expect(demold).toBeCloseTo(hours / 24, 9);
		expect(delivery).toBeCloseTo(13 + hours / 24, 9);
	});

	test("a class of cement typed on the mix goes before the studio's", () => {
		const its = withDensity();
		const rapid = {
			...its,
			mixes: its.mixes.map((row) => ({ ...row, cement: "rapid" })),
		};
		// exp(0.20 (1 − √28)) = 0.42388, and 0.34202 with normal cement.
		const of = (studioFile: StudioFile) =>
			handled({}, studioFile).piece.handling[0]?.strength ?? 0;
		expect(of(rapid) / of(its)).toBeCloseTo(
			0.42388184737889384 / 0.3420235599559057,
			9,
		);
	});
});

test.each<[string, Partial<JobFile>, StudioFile["settings"]]>([
	["strength", {}, { flexural: "" }],
	["factor", {}, { handling_factor: "" }],
	["cement", {}, { cement: "" }],
	["hours to demolding", {}, { demold_hours: "" }],
	["mix", { mix: "" }, {}],
	["thickness", { pieces: [{ ...TOP, thickness: "" }], cutouts: [] }, {}],
	[
		"outline",
		{ pieces: [{ ...TOP, shape: "area", a: 1.2, b: 5200 }], cutouts: [] },
		{},
	],
])("without its %s nothing is said to bear it", (_, job, settings) => {
	const { piece, checks } = handled(job, withDensity(settings));
	for (const { state } of piece.handling) expect(state).toBe("unknown");
	expect(checks.find(({ key }) => key === "carriedFlat")?.state).toBe(
		"unknown",
	);
});

test("a cutout that leaves the piece is a look, no number", () => {
	const { piece } = handled({ cutouts: [{ ...SINK, left: 1900 }] });
	expect(piece.handling[0]).toMatchObject({
		flat: null,
		state: "look",
		say: "Look: cutout 1 leaves the piece",
	});
});

test("what is turned over weighs with its mold", () => {
	const down = { ...TOP, face: "face down" };
	const { piece } = handled({
		pieces: [{ ...down, moldMass: 40 }],
		cutouts: [],
	});
	// 2 × 0.6 × 0.04 m³ × 2300 kg/m³ = 110.4 kg.
	expect(piece.turnedMass).toBeCloseTo(150.4, 6);
	expect(handled({ pieces: [down] }).piece.turnedMass).toBeNull();
	expect(handled({}).piece.turnedMass).toBeNull();
});
