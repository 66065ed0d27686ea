import ColorJs from "colorjs.io";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { colorDifference } from "../../src/calc/ciede2000";
import {
	channelsOf,
	farColor,
	hexOfLab,
	type Lab,
	labOfChannels,
	labOfD50,
	labOfHex,
} from "../../src/calc/color";

const hex = fc
	.integer({ min: 0, max: 0xffffff })
	.map((rgb) => `#${rgb.toString(16).padStart(6, "0")}`);

const lab = fc.record({
	l: fc.double({ min: 0, max: 100, noNaN: true }),
	a: fc.double({ min: -80, max: 80, noNaN: true }),
	b: fc.double({ min: -80, max: 80, noNaN: true }),
});

describe("L*, a*, b*", { timeout: 60_000 }, () => {
	// Colour for Python, models/tests/test_cie_lab.py (confirmed): XYZ and the white's x, y.
	const D65: readonly [number, number] = [0.3127, 0.329];
	const D50: readonly [number, number] = [0.3457, 0.3585];
	test.each([
		[
			[0.20654008, 0.12197225, 0.05136952],
			D65,
			[41.52787529, 52.63858304, 26.92317922],
		],
		[
			[0.1422201, 0.23042768, 0.10495772],
			D65,
			[55.11636304, -41.08791787, 30.91825778],
		],
		[
			[0.0781878, 0.06157201, 0.28099326],
			D65,
			[29.8056552, 20.01830466, -48.34913874],
		],
		[
			[0.20654008, 0.12197225, 0.05136952],
			D50,
			[41.52787529, 51.19354174, 19.91843098],
		],
	] as const)(
		"of XYZ %j against white %j",
		([x, y, z], [wx, wy], [l, a, b]) => {
			const found = labOfChannels([x / (wx / wy), y, z / ((1 - wx - wy) / wy)]);
			expect(found.l).toBeCloseTo(l, 6);
			expect(found.a).toBeCloseTo(a, 6);
			expect(found.b).toBeCloseTo(b, 6);
		},
	);

	test("of sRGB as colorjs.io finds it under D65", () => {
		fc.assert(
			fc.property(hex, (color) => {
				const { l, a, b } = labOfHex(color);
				const [l2 = 0, a2 = 0, b2 = 0] = new ColorJs(color).to(
					"lab-d65",
				).coords;
				// The two libraries' matrices differ in the last digits printed.
				expect(
					Math.hypot(l - (l2 ?? 0), a - (a2 ?? 0), b - (b2 ?? 0)),
				).toBeLessThan(1e-3);
			}),
			{ seed: 1 },
		);
	});

	test("of L*, a*, b* under D50 as colorjs.io adapts it", () => {
		const part = (most: number) =>
			fc.double({ min: -most, max: most, noNaN: true });
		fc.assert(
			fc.property(
				fc.double({ min: 5, max: 95, noNaN: true }),
				part(40),
				part(40),
				(l, a, b) => {
					const found = labOfD50({ l, a, b });
					const [l2 = 0, a2 = 0, b2 = 0] = new ColorJs("lab", [l, a, b]).to(
						"lab-d65",
					).coords;
					expect(
						Math.hypot(
							found.l - (l2 ?? 0),
							found.a - (a2 ?? 0),
							found.b - (b2 ?? 0),
						),
					).toBeLessThan(2e-3);
				},
			),
			{ seed: 1 },
		);
	});

	test("and back, for every sRGB color", () => {
		fc.assert(
			fc.property(hex, (color) => {
				expect(hexOfLab(labOfHex(color))).toBe(color);
				expect(hexOfLab(labOfChannels(channelsOf(labOfHex(color))))).toBe(
					color,
				);
			}),
			{ seed: 2 },
		);
	});

	test("out of gamut is limited", () => {
		expect(hexOfLab({ l: 100, a: 100, b: -100 })).toMatch(/^#ff[0-9a-f]{2}ff$/);
	});

	test("refuses what is not #rrggbb", () => {
		expect(() => labOfHex("#abc")).toThrow('color must be #rrggbb, got "#abc"');
	});
});

describe("color difference", { timeout: 60_000 }, () => {
	test("is what colorjs.io finds for the same L*, a*, b*", () => {
		const other = ({ l, a, b }: Lab) => new ColorJs("lab", [l, a, b]);
		fc.assert(
			fc.property(lab, lab, (one, two) => {
				// It takes a color of almost no chroma for gray.
				const chromas = [one, two].map(({ a, b }) => Math.hypot(a, b));
				fc.pre(Math.min(...chromas) > 0.1);
				// Where hues are opposite the formula jumps, by the last bit of either library.
				const hues = Math.atan2(one.b, one.a) - Math.atan2(two.b, two.a);
				fc.pre(Math.abs(Math.abs(hues) - Math.PI) > 1e-3);
				expect(colorDifference(one, two)).toBeCloseTo(
					other(one).deltaE(other(two), "2000"),
					8,
				);
			}),
			{ numRuns: 500, seed: 3 },
		);
	});

	test("is 0 for a color and itself", () => {
		fc.assert(
			fc.property(lab, (one) => {
				expect(colorDifference(one, one)).toBe(0);
			}),
			{ seed: 4 },
		);
	});
});

describe("color from afar", { timeout: 60_000 }, () => {
	test("is the mean of linear light, by the sRGB formula", () => {
		// IEC 61966-2-1, decoded, averaged and encoded channel by channel: linear light is the same mean in XYZ.
		const decoded = (v: number) =>
			v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
		const encoded = (v: number) =>
			v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055;
		const channels = (color: string) =>
			[1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
		fc.assert(
			fc.property(
				hex,
				hex,
				fc.integer({ min: 0, max: 9 }),
				fc.integer({ min: 1, max: 9 }),
				(one, two, a, b) => {
					const far = hexOfLab(
						farColor([
							{ lab: labOfHex(one), share: a },
							{ lab: labOfHex(two), share: b },
						]),
					);
					for (const [i, value] of channels(far).entries()) {
						const light = (color: string) =>
							decoded((channels(color)[i] ?? 0) / 255);
						const mean = (a * light(one) + b * light(two)) / (a + b);
						expect(Math.abs(value - 255 * encoded(mean))).toBeLessThan(0.51);
					}
				},
			),
			{ seed: 5 },
		);
	});

	test("refuses shares that are all 0", () => {
		expect(() => farColor([{ lab: { l: 50, a: 0, b: 0 }, share: 0 }])).toThrow(
			"shares must be above 0 for at least one color",
		);
	});
});
