/** Printed numbers are in tests/published/pca-temperature.ts and neville-temperature.ts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	dampSolidKg,
	iceKg,
	mixTemperatureC,
	waterTemperatureC,
} from "../../src/calc/water";

// 100 kg of solids at 30 °C: 0.22 × 100 = 22 kg of water's heat; 28 kg of water make it 50.
const solids = [{ massKg: 100, temperatureC: 30 }];
const waterKg = 28;

describe("temperature of the mix", () => {
	test.each([
		[10, 0, 28, (660 + 280) / 50],
		[10, 5, 23, (660 + 230 - 400) / 50],
	])("water %f °C, ice %f kg", (waterC, ice, water, expected) => {
		const mix = { solids, waterKg: water, waterC, iceKg: ice };
		expect(mixTemperatureC(mix)).toBeCloseTo(expected, 12);
	});

	test("water in damp sand counts as any other water at its temperature", () => {
		// 90 kg of dry sand with 10 kg of water at 30 °C is 0.22 × 90 + 10 of heat, as if the water were poured in at 30 °C.
		const damp = [{ massKg: dampSolidKg(90, 10), temperatureC: 30 }];
		const dry = [{ massKg: 90, temperatureC: 30 }];
		expect(
			mixTemperatureC({ solids: damp, waterKg: 18, waterC: 10, iceKg: 0 }),
		).toBeCloseTo(
			mixTemperatureC({
				solids: dry,
				waterKg: 28,
				waterC: (18 * 10 + 10 * 30) / 28,
				iceKg: 0,
			}),
			12,
		);
	});

	test("of equal temperatures is that temperature", () => {
		const same = { solids, waterKg, waterC: 30, iceKg: 0 };
		expect(mixTemperatureC(same)).toBeCloseTo(30, 12);
	});

	test("in °F the ice term is −112 lb⁻¹, as ACI prints it", () => {
		// [0.22 × 100 × 86 + 23 × 50 − 112 × 5] / 50 in °F.
		const fahrenheit = (0.22 * 100 * 86 + 23 * 50 - 112 * 5) / 50;
		const mix = { solids, waterKg: 23, waterC: 10, iceKg: 5 };
		expect(mixTemperatureC(mix) * 1.8 + 32).toBeCloseTo(fahrenheit, 9);
	});

	test("ice that could not melt is refused", () => {
		const frozen = { solids, waterKg: 1, waterC: 5, iceKg: 27 };
		expect(() => mixTemperatureC(frozen)).toThrow(
			new InputError(
				"ice_mass must be less: the mix has not enough heat to melt this much ice",
			),
		);
	});
});

const mixes = fc.record({
	solids: fc.array(
		fc.record({
			massKg: fc.double({ min: 1, max: 500, noNaN: true }),
			temperatureC: fc.double({ min: 5, max: 45, noNaN: true }),
		}),
		{ minLength: 1, maxLength: 6 },
	),
	waterKg: fc.double({ min: 5, max: 100, noNaN: true }),
});

describe("water and ice for a target", () => {
	test("340 / 28 for 20 °C, 190 / 90 kg of ice for 15 °C with water of 10 °C", () => {
		expect(waterTemperatureC({ targetC: 20, solids, waterKg })).toBeCloseTo(
			340 / 28,
			12,
		);
		expect(iceKg({ targetC: 15, solids, waterKg, waterC: 10 })).toBeCloseTo(
			190 / 90,
			12,
		);
	});

	test("the water for a temperature gives that temperature", () => {
		const water = fc.double({ min: 0, max: 60, noNaN: true });
		fc.assert(
			fc.property(mixes, water, (mix, waterC) => {
				const targetC = mixTemperatureC({ ...mix, waterC, iceKg: 0 });
				const found = waterTemperatureC({ ...mix, targetC });
				expect(found).toBeCloseTo(waterC, 8);
			}),
		);
	});

	test("the ice for a temperature gives that temperature", () => {
		const share = fc.double({ min: 0, max: 1, noNaN: true });
		const water = fc.double({ min: 5, max: 30, noNaN: true });
		fc.assert(
			fc.property(mixes, water, share, (mix, waterC, iced) => {
				const ice = iced * mix.waterKg;
				const warmer = { ...mix, waterC };
				const left = { waterKg: mix.waterKg - ice, iceKg: ice };
				let targetC: number;
				try {
					targetC = mixTemperatureC({ ...warmer, ...left });
				} catch {
					return;
				}
				expect(iceKg({ ...warmer, targetC })).toBeCloseTo(ice, 8);
			}),
		);
	});

	test("no ice where the mix is cold enough", () => {
		expect(iceKg({ targetC: 25, solids, waterKg, waterC: 10 })).toBe(0);
	});

	test.each([
		[
			() => waterTemperatureC({ targetC: 10, solids, waterKg }),
			// (500 − 660) / 28 = −5.71 °C.
			"target cannot be reached with water alone, which would have to be at -5.7 °C (21.7 °F): replace part of it with ice (ICE_FOR)",
		],
		[
			() => waterTemperatureC({ targetC: 50, solids, waterKg }),
			// (2500 − 660) / 28 = 65.71 °C.
			"target would need water at 65.7 °C (150.3 °F), above 60.0 °C (140.0 °F): warm the solids",
		],
		[
			// (660 + 40 − 10 × 26) / 90 = 4.89 kg where there are 4.
			() => iceKg({ targetC: 10, solids, waterKg: 4, waterC: 10 }),
			"target cannot be reached: it would take 122% of the mix water as ice, and 100% is all there is: cool the solids",
		],
		[
			() => mixTemperatureC({ solids: [], waterKg, waterC: 10, iceKg: 0 }),
			"solid_masses is blank",
		],
		[
			() => waterTemperatureC({ targetC: 20, solids: [], waterKg }),
			"solid_masses is blank",
		],
		[
			() => iceKg({ targetC: 20, solids: [], waterKg, waterC: 10 }),
			"solid_masses is blank",
		],
		[
			() =>
				mixTemperatureC({
					solids: [{ massKg: 0, temperatureC: 30 }],
					waterKg: 0,
					waterC: 10,
					iceKg: 0,
				}),
			"solid_masses and water_mass must not all be 0",
		],
	])("what is refused (%#)", (work, sentence) => {
		expect(work).toThrow(new InputError(sentence));
	});
});
