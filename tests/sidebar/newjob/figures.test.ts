import { describe, expect, test } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import type { PanelStart } from "../../../src/sheets/messages";
import { figuresOf } from "../../../src/sidebar/newjob/figures";
import type { JobForm } from "../../../src/sidebar/newjob/form";
import { jobOf } from "../../../src/sidebar/newjob/form-file";
import { studioIn } from "../../../src/sidebar/newjob/use-new-job";
import { STUDIO, withSettings } from "../studio";
import { BARS, piece, tone } from "./forms";

const figures = (form: JobForm, start: PanelStart = STUDIO) =>
	figuresOf(form, basisOf(studioIn(start, form.units), jobOf(form)));

/** Worked by hand from the studio of round numbers: 2200 kg/m³, half of it binder, 10% waste, 100 kg a load. */
describe("two bars of 2 m × 0.5 m × 40 mm in a base and a vein", () => {
	const { volume, mass, loads, pieceMass, tones, pigments, problem } =
		figures(BARS);
	const [base, vein] = [...tones.values()];

	test("volume: 2 × 2 × 0.5 × 0.04 m³ = 80 L", () => {
		expect(volume).toBeCloseTo(80, 9);
	});

	test("mix: 80 L × 2.2 kg/L × 1.1 = 193.6 kg", () => {
		expect(mass).toBeCloseTo(193.6, 9);
	});

	test("a bar as cast: 40 L × 2.2 kg/L = 88 kg", () => {
		expect([...pieceMass.values()]).toEqual([expect.closeTo(88, 9)]);
	});

	test("two castings of 96.8 kg do not share a load of 100 kg", () => {
		expect(loads).toEqual([expect.closeTo(96.8, 9), expect.closeTo(96.8, 9)]);
	});

	test("base: 145.2 kg × 50% × 2% = 1452 g of umber, 146.652 kg on the scale", () => {
		expect(base?.grams.get("Umber")).toBeCloseTo(1452, 6);
		expect(base?.grams.get("Black")).toBe(0);
		expect(base?.mass).toBeCloseTo(146.652, 9);
	});

	test("vein: 48.4 kg × 50% × 2% = 484 g and × 5% = 1210 g, 50.094 kg on the scale", () => {
		expect(vein?.grams.get("Umber")).toBeCloseTo(484, 6);
		expect(vein?.grams.get("Black")).toBeCloseTo(1210, 6);
		expect(vein?.mass).toBeCloseTo(50.094, 9);
	});

	test("vein is over: 7% of binder is 7% / 80% = 8.75% of cement, where 6% is allowed", () => {
		expect(base?.over).toBe(0);
		expect(vein?.over).toBeCloseTo(0.0275, 12);
	});

	test("cost: 1936 g × 0.02 + 1210 g × 0.01 = 38.72 + 12.10", () => {
		expect(pigments).toEqual([
			{
				name: "Umber",
				grams: expect.closeTo(1936, 6),
				price: expect.closeTo(38.72, 6),
			},
			{
				name: "Black",
				grams: expect.closeTo(1210, 6),
				price: expect.closeTo(12.1, 6),
			},
		]);
	});

	test("nothing is wrong with the studio", () => {
		expect(problem).toBeUndefined();
	});
});

describe("figures that cannot be known yet are absent", () => {
	test("all, while a piece is wrong", () => {
		const form = { ...BARS, pieces: [piece({ name: "Bar", a: "2000" })] };
		expect(figures(form)).toEqual({ pieceMass: new Map(), tones: new Map() });
	});

	test("pigments, while a tone is wrong", () => {
		const { mass, pigments } = figures({ ...BARS, tones: [tone("", "100")] });
		expect(mass).toBeCloseTo(193.6, 9);
		expect(pigments).toBeUndefined();
	});

	test("a price that the studio has not typed", () => {
		const form: JobForm = {
			...BARS,
			pigments: ["Ocher"],
			tones: [tone("Base", "100", { Ocher: "1" })],
		};
		// 193.6 kg × 50% × 1%
		expect(figures(form).pigments).toEqual([
			{ name: "Ocher", grams: expect.closeTo(968, 6) },
		]);
	});

	test("loads of more castings than anybody pours", () => {
		const form = {
			...BARS,
			pieces: [
				piece({
					name: "Tile",
					quantity: "1000000",
					a: "10",
					b: "10",
					thickness: "10",
				}),
			],
		};
		const { mass, loads } = figures(form);
		// 10⁶ × 1 cm³ = 1000 L × 2.2 kg/L × 1.1
		expect(mass).toBeCloseTo(2420, 6);
		expect(loads).toBeUndefined();
	});
});

test("a batch without pigment still has its tones on the scale", () => {
	const form = { ...BARS, pigments: [], tones: [tone("Plain", "100")] };
	const { tones, pigments } = figures(form);
	expect([...tones.values()][0]?.mass).toBeCloseTo(193.6, 9);
	expect(pigments).toEqual([]);
});

test("a studio number that cannot be is said, and the volume stays", () => {
	const { volume, problem } = figures(
		BARS,
		withSettings({ mixer_capacity: 0 }),
	);
	expect(volume).toBeCloseTo(80, 9);
	expect(problem).toContain("capacity");
});

test("pounds and inches: 96 in × 24 in × 1.5 in = 2 ft³ of 137.3 lb/ft³", () => {
	const form: JobForm = {
		...BARS,
		units: "us",
		pieces: [piece({ name: "Bar", a: "8'", b: "24", thickness: '1 1/2"' })],
	};
	const start: PanelStart = {
		...withSettings({ units: "us", waste: 0, mixer_capacity: 300 }),
		units: "us",
	};
	const { volume, mass } = figures(form, start);
	expect(volume).toBeCloseTo(2, 9);
	// 2200 kg/m³ × 0.028316846592 m³/ft³ / 0.45359237 kg/lb = 137.341505 lb/ft³
	expect(mass).toBeCloseTo(274.68301, 4);
});

test("the studio is the one of the units that are being chosen", () => {
	const form: JobForm = {
		...BARS,
		units: "us",
		pieces: [piece({ name: "Bar", a: "8'", b: "24", thickness: '1 1/2"' })],
	};
	const start: PanelStart = {
		...STUDIO,
		unitsFixed: false,
		inOtherUnits: withSettings({ units: "us", mixer_capacity: 220.46 }).studio,
	};
	// 274.68 lb × 1.1 = 302.15 lb; a mixer of 220.46 lb: two equal loads
	expect(figures(form, start).loads).toHaveLength(2);
});

test("an ingredient whose numbers are none is named", () => {
	const mixes = STUDIO.studio.mixes.map((row) => ({ ...row, parts: "some" }));
	const start = { ...STUDIO, studio: { ...STUDIO.studio, mixes } };
	expect(figures(BARS, start).problem).toContain("Dry on the Mixes tab: parts");
});

describe("the first price", () => {
	/** 50 L of 2200 kg/m³ without waste: 110 kg, of which 100 kg are dry. */
	const SLAB: JobForm = {
		...BARS,
		pieces: [piece({ name: "Slab", a: "1000", b: "1000", thickness: "50" })],
	};
	const bare = withSettings({ waste: 0 });

	test("is of dry mix and pigments that have a price; water is free", () => {
		// 100 kg at 0.50; base 82.5 kg × 50% × 2% and vein 27.5 kg × 50% × 2% are 1100 g of umber at 0.02; 27.5 kg × 50% × 5% are 687.5 g of black at 0.01
		expect(figures(SLAB, bare).price).toEqual({
			mix: expect.closeTo(50, 9),
			pigment: expect.closeTo(22 + 6.875, 9),
			missing: [],
		});
	});

	test("names what has no pack price, unless nothing of it is used", () => {
		const mixes = bare.studio.mixes.map(({ pack, packPrice, ...row }) => row);
		const pigments = [{ name: "Ocher" }, { name: "Black" }];
		const start = { ...bare, studio: { ...bare.studio, mixes, pigments } };
		const form: JobForm = {
			...SLAB,
			pigments: ["Ocher", "Black"],
			tones: [tone("Base", "100", { Ocher: "1", Black: "0" })],
		};
		expect(figures(form, start).price).toEqual({
			mix: 0,
			pigment: 0,
			missing: ["Dry", "Ocher"],
		});
	});
});
