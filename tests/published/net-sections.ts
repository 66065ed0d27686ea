import type { PublishedCase, PublishedFile } from "./published";

/** Name, quantity, shape, A, B, C, D, thickness. */
const piece = (
	shape: string,
	a: number | string,
	b: number | string,
	c: number | "",
	d: number | "",
	thickness: number | string,
	drop: readonly (number | "")[] = ["", "", ""],
) => [["Top", 1, shape, a, b, c, d, thickness, ...drop]];

const cut = (...row: (string | number)[]) => [["Top", 1, ...row]];

const stress = (
	args: readonly unknown[],
	expected: readonly (number | null)[],
	note: string,
	rel = 1e-6,
): PublishedCase => ({
	function: "CARRY_STRESS",
	args,
	expected: [expected],
	tolerance: { rel },
	note,
});

const COUNTER = piece("rectangle", 2000, 600, "", "", 40);
const SINK = cut("rectangle", 800, 500, 1000, 50);
const BAR = piece("L", 2150, 1480, 1500, 830, 30);
// The notch is at the back right here: 750 from the one end is 1400 from the other.
const LONG = cut("rectangle", 480, 390, 1400, 130);
const DEEP = cut("rectangle", 390, 480, 1400, 85);

export const published: PublishedFile = {
	source: "Statics of a beam on two supports by its true weight, S = bt²/6",
	locator:
		"own arithmetic with g = 9.80665, the working beside each; cross-checked by numerical integration",
	status: "memory",
	cases: [
		stress(
			[COUNTER, "", 2300],
			[1.6916471249999998, 600, 1000],
			"w 541.32708 N/m; M = w 2²/8 = 270.66354 N·m; S 160 000 mm³",
		),
		stress(
			[COUNTER, SINK, 2300],
			[4.7366119499999995, 100, 1000],
			"R = 902.2118 (1.2 − 0.4)/2 = 360.88472 N; M = R − w/2 + 902.2118 × 0.5 × 0.4²/2 = 126.30965 N·m; S = 100 × 40²/6 = 26 666.667 mm³",
		),
		stress(
			[COUNTER, cut("rectangle", 800, 500, "", ""), 2300],
			[4.7366119499999995, 100, 1000],
			"a blank place is in the middle: the same",
		),
		stress(
			[COUNTER, SINK, 2300, "on edge"],
			[0.12492163384615385 + 0.144353888, 100, 1000],
			"S = 40 (600³ − 500³)/3600 = 1 011 111 mm³: 0.12492 MPa; strips of 50: w a²/12 = 45.11059 × 0.8²/12 = 2.4058981 N·m over 40 × 50²/6: 0.14435 MPa",
		),
		stress(
			[COUNTER, cut("rectangle", 500, 400, 500, 100), 2300, "on edge"],
			[0.11685720271381578 + 0.4511058999999999, 200, 750],
			"shear beside the opening 225.55295 N, half on each strip: 225.55295/2 × 0.25 + 90.22118 × 0.5²/12 = 30.073727 N·m over 40 × 100²/6: 0.45111 MPa; at its end M 197.35883 N·m over 1 688 889 mm³: 0.11686 MPa",
		),
		stress(
			[BAR, "", 2300],
			[3.2504807683179004, 650, 2150 - 1200.465116279],
			"R₁ 527.99847 N; no shear 1.2004651 m from the end without the block; M 316.92187 N·m; S 97 500 mm³",
		),
		stress(
			[BAR, LONG, 2300],
			[6.562135241659887, 260, 2150 - 990],
			"R₁ 445.51533 N; at the cutout's end M 255.92327 N·m; S = 260 × 30²/6 = 39 000 mm³",
		),
		stress(
			[BAR, DEEP, 2300],
			[9.777409128685624, 170, 2150 - 945],
			"R₁ 445.51533 N; at the cutout's end M 249.32393 N·m; S = 170 × 30²/6 = 25 500 mm³",
		),
		stress(
			[BAR, LONG, 2300, "on edge"],
			[0.1545243777470931 + 0.2741594089781755, 260, 1160],
			"net section 255.92327 N·m over 30 (650³ − 390³)/3900 = 1 656 200 mm³; shear at its middle R₁ − 676.65885 (0.65 × 0.75 − 0.39 × 0.24) = 178.97941 N, half on each strip of 130: 89.48971 × 0.24 + 676.65885 × 0.13 × 0.48²/12 = 23.16647 N·m over 84 500 mm³",
		),
		stress(
			[BAR, DEEP, 2300, "on edge"],
			[0.19759506478326216 + 0.5032389786401829, 170, 1205],
			"net section 249.32393 N·m over 1 261 792.3 mm³; half the shear on each strip of 85: 89.48971 × 0.195 + 676.65885 × 0.085 × 0.39²/12 = 18.17951 N·m over 36 125 mm³",
		),
		stress(
			[
				piece("rectangle", 84, "25 1/2", "", "", "1 1/2"),
				cut("rectangle", 33, 18, 42, "3 3/4"),
				140,
				"",
				"us",
			],
			[538.7083333333334, 7.5, 42],
			"140/1728 × 1.5 = 0.12152778 lb/in²; R 94.0625 lb; M = 94.0625 × 42 − 3.0989583 × 42²/2 + 0.12152778 × 18 × 16.5²/2 = 1515.1172 lb·in; S 2.8125 in³",
		),
		stress(
			[
				piece("rectangle", 84, "25 1/2", "", "", "1 1/2"),
				"",
				140,
				"flat",
				"us",
			],
			[285.8333333333333, 25.5, 42],
			"w 3.0989583 lb/in; M = w 84²/8 = 2733.2812 lb·in; S 9.5625 in³",
		),
		stress(
			[
				piece("rectangle", 1500, 550, "", "", 30),
				cut("round", 400, "", 600, 100),
				2300,
			],
			[3.2757543771960322, 150.44322133769273, 609.4125],
			"the chord of the circle at each place, scanned by a program of its own",
			0.002,
		),
		stress(
			[piece("rectangle", 2000, 600, "", "", 40, [60, 2000, 40]), "", 2300],
			[1.6916471249999998 * 1.4166020170674942, 600, 1000],
			"a lip of 60 × 40 along the front hangs down: 1.1 times the weight, at the lip 124 240.96 instead of 160 000 mm³: 1.41660 times the plain slab's stress",
		),
	],
};
