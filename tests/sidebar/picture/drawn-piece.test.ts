import { describe, expect, test } from "vitest";
import type { Side } from "../../../src/calc/mold";
import type { Shape } from "../../../src/calc/shapes";
import { basisOf } from "../../../src/job/answers/basis";
import { isKnown, orNull, saying } from "../../../src/job/answers/known";
import { wholeOf } from "../../../src/job/answers/whole";
import type { JobFile } from "../../../src/job/jobfile";
import {
	drawnPiece,
	pieceNames,
	type SeenPiece,
	seenPiece,
	seenTones,
} from "../../../src/sidebar/picture/drawn-piece";
import {
	chosenText,
	colorsOf,
	isMirrored,
	placeholderText,
	sharesText,
	viewText,
} from "../../../src/sidebar/picture/picture-words";
import { STATE } from "./job";

const { job, studio } = STATE;
const [bar = {}] = job.pieces;

const basisWith = (changes: Partial<JobFile> = {}) =>
	basisOf(studio, { ...job, ...changes });

describe("a piece of the job", () => {
	test("lengths in m, its own cutouts, whatever the letters' case", () => {
		expect(pieceNames(basisWith())).toEqual(["Bar", "Tray"]);
		expect(orNull(seenPiece(basisWith(), "Bar"))).toMatchObject({
			outline: { shape: "L", aM: 2, bM: 1, cM: 1.2, dM: 0.4, thicknessM: 0.04 },
			cutouts: [{ count: 1, shape: "rectangle", aM: 0.5, bM: 0.4 }],
			notchAt: "",
			face: "face down",
		});
		expect(orNull(seenPiece(basisWith(), "tray"))?.cutouts).toEqual([]);
	});

	test("in inches, and an area", () => {
		const us = basisWith({
			units: "us",
			pieces: [
				{
					name: "Top",
					quantity: 1,
					shape: "round",
					a: "3'",
					thickness: "1 1/2",
				},
				{
					name: "Odd",
					quantity: 1,
					shape: "area",
					a: 10,
					b: 13,
					thickness: 2,
				},
			],
			cutouts: [],
		});
		const outlineOf = (name: string) => orNull(seenPiece(us, name))?.outline;
		// 36 in × 25.4 mm; 10 ft² × 0.3048²
		expect(outlineOf("Top")?.aM).toBeCloseTo(0.9144, 10);
		expect(outlineOf("Odd")?.areaM2).toBeCloseTo(0.9290304, 10);
		expect(outlineOf("Odd")?.aM).toBeUndefined();
	});

	test.each<[string, Partial<JobFile>, RegExp]>([
		["a notch too long", { pieces: [{ ...bar, c: 2400 }] }, /^Look: .*C/],
		[
			"no thickness",
			{ pieces: [{ ...bar, thickness: "" }] },
			/^not known yet: .*thickness/,
		],
		[
			"an unknown shape",
			{ pieces: [{ ...bar, shape: "star" }] },
			/^Look: .*"star"/,
		],
		[
			"a cutout without B",
			{ cutouts: [{ piece: "Bar", count: 1, shape: "rectangle", a: 500 }] },
			/^Look: .*B/,
		],
		[
			"a cutout too long",
			{ cutouts: [{ piece: "Bar", count: 1, shape: "round", a: 2100 }] },
			/^Look: .*cutout/,
		],
	])("%s is told in words", (_, changes, told) => {
		const seen = seenPiece(basisWith(changes), "Bar");
		expect(isKnown(seen)).toBe(false);
		expect(saying(seen)).toMatch(told);
	});

	test("tones have their shares, and the colors of their swatches", () => {
		expect(orNull(seenTones(wholeOf(studio, job)))).toEqual([
			{ name: "Shell", share: 0.75, color: "#d9d3c8" },
			{ name: "Bark", share: 0.25, color: "#7a5d47" },
		]);
		const blank = { ...studio, swatches: [] };
		expect(
			orNull(seenTones(wholeOf(blank, job)))?.map(({ color }) => color),
		).toEqual(["", ""]);
	});

	test("tones without any share are not drawn, and that is told", () => {
		const whole = wholeOf(studio, {
			...job,
			tones: [{ name: "Shell", share: 0 }],
		});
		const how = { folds: 3, arrangement: 1 };
		expect(saying(drawnPiece(whole, "Bar", how))).toMatch(/^Look: .*share/);
	});
});

describe("what the picture says", () => {
	test("cast face down the mold is mirrored, cast face up it is not", () => {
		expect(isMirrored("mold", "face down")).toBe(true);
		expect(isMirrored("mold", "")).toBe(true);
		expect(isMirrored("mold", "face up")).toBe(false);
		expect(isMirrored("above", "face down")).toBe(false);
		expect(viewText("mold", "face down", "L")).toContain("mirrored");
		expect(viewText("mold", "face up", "L")).not.toContain("mirrored");
	});

	test("what had to be chosen is told", () => {
		const slab = { cutouts: [], notchAt: "" };
		const told = (shape: Shape, change: Partial<SeenPiece> = {}) =>
			chosenText({ ...slab, outline: { shape, thicknessM: 0.03 }, ...change });
		const hole = { count: 1, shape: "round" as const, aM: 0.3 };
		expect(told("rectangle")).toEqual([]);
		expect(told("L", { cutouts: [hole, hole] })).toHaveLength(2);
		expect(told("L", { notchAt: "back left" })).toEqual([]);
		expect(told("area").join()).toContain("same area");
		const placed = { ...hole, leftM: 0.5, frontM: 0.1 };
		expect(told("rectangle", { cutouts: [placed] })).toEqual([]);
		const drop = (sides: Side[]) => ({ drop: { heightM: 0.1, sides } });
		expect(told("rectangle", drop([])).join()).toContain("not drawn");
		expect(told("rectangle", drop(["front"])).join()).toContain("folded out");
	});

	test("a lay-up is drawn as one, a drop edge on its sides, each piece its own way", () => {
		const layUp = wholeOf(studio, {
			...job,
			placing: "mold lay-up",
			pieces: [
				{ ...bar, dropHeight: 100, dropRun: 1000, dropOn: "front and left" },
				...job.pieces.slice(1),
			],
		});
		const how = { folds: 3, arrangement: 1 };
		const drawn = orNull(drawnPiece(layUp, "Bar", how));
		expect(drawn?.how.placing).toBe("mold lay-up");
		// 100 mm below a slab of 40 mm
		expect(drawn?.how.drop?.heightM).toBeCloseTo(0.14, 9);
		expect(drawn?.how.drop?.sides).toEqual(["front", "left"]);
		const whole = wholeOf(studio, job);
		const both = ["Bar", "Tray"].map((name) =>
			orNull(drawnPiece(whole, name, how)),
		);
		expect(both[0]?.how.placing).toBe("bucket fold");
		expect(both[0]?.how.seed).not.toBe(both[1]?.how.seed);
	});

	test("grays stand for colors that are not known, and that is told", () => {
		const tones = [
			{ name: "A", share: 1, color: "" },
			{ name: "B", share: 2, color: "#aa5522" },
			{ name: "C", share: 1, color: "#N/A" },
		];
		// 220 = dc; 220 − 150 = 70 = 46
		expect(colorsOf(tones)).toEqual(["#dcdcdc", "#aa5522", "#464646"]);
		expect(placeholderText(tones)).toContain("A, C");
		expect(placeholderText(tones.slice(1, 2))).toBe("");
		expect(sharesText(tones, ";")).toEqual(["A 25%", "B 50%", "C 25%"]);
	});
});
