import { describe, expect, test } from "vitest";
import { InputError } from "../../../src/calc/errors";
import { pieceNames, seenPiece } from "../../../src/sidebar/picture/seen";
import {
	chosenText,
	colorsOf,
	isMirrored,
	placeholderText,
	sharesText,
	viewText,
} from "../../../src/sidebar/picture/words";
import { JOB } from "./job";

describe("a piece from its cells", () => {
	test("lengths in m, its own cutouts, whatever the letters' case", () => {
		expect(pieceNames(JOB)).toEqual(["Bar", "Tray"]);
		expect(seenPiece(JOB, "Bar")).toMatchObject({
			outline: { shape: "L", aM: 2, bM: 1, cM: 1.2, dM: 0.4, thicknessM: 0.04 },
			cutouts: [{ count: 1, shape: "rectangle", aM: 0.5, bM: 0.4 }],
		});
		expect(seenPiece(JOB, "tray").cutouts).toEqual([]);
	});

	test("in inches, and an area", () => {
		const us = {
			...JOB,
			units: "us" as const,
			pieces: [
				["Top", 1, "round", "3'", "", "", "", "1 1/2"],
				["Odd", 1, "area", 10, 13, "", "", 2],
			],
			cutouts: [],
		};
		// 36 in × 25.4 mm; 10 ft² × 0.3048²
		expect(seenPiece(us, "Top").outline.aM).toBeCloseTo(0.9144, 10);
		expect(seenPiece(us, "Odd").outline.areaM2).toBeCloseTo(0.9290304, 10);
		expect(seenPiece(us, "Odd").outline.aM).toBeUndefined();
	});

	test.each([
		[
			"a notch too long",
			{ pieces: [["Bar", 1, "L", 2000, 1000, 2400, 400, 40]] },
		],
		["no thickness", { pieces: [["Bar", 1, "rectangle", 2000, 1000]] }],
		[
			"an unknown shape",
			{ pieces: [["Bar", 1, "star", 2000, 1000, "", "", 40]] },
		],
		["a cutout without B", { cutouts: [["Bar", 1, "rectangle", 500]] }],
		["a cutout too long", { cutouts: [["Bar", 1, "round", 2100]] }],
	])("%s is a mistake in words", (_, change) => {
		expect(() => seenPiece({ ...JOB, ...change }, "Bar")).toThrow(InputError);
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
		expect(chosenText("rectangle", 0, "")).toEqual([]);
		expect(chosenText("L", 2, "")).toHaveLength(2);
		expect(chosenText("L", 0, "back left")).toEqual([]);
		expect(chosenText("area", 0, "").join()).toContain("same area");
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
