/** Printed rows are in tests/published; here the two forms are held against each other and against Menzel's. */
import fc from "fast-check";
import psychrolib from "psychrolib";
import { beforeAll, describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	evaporationKgPerM2H,
	evaporationLbPerFt2H,
} from "../../src/calc/evaporation";

const KG_PER_M2_IN_LB_PER_FT2 = 0.45359237 / 0.09290304;

const MPH_IN_KMH = 1.609344;

const fahrenheit = (celsius: number) => celsius * 1.8 + 32;

interface Weather {
	airC: number;
	humidity: number;
	mixC: number;
	windKmH: number;
}

const usForm = ({ airC, humidity, mixC, windKmH }: Weather): number =>
	KG_PER_M2_IN_LB_PER_FT2 *
	evaporationLbPerFt2H({
		airF: fahrenheit(airC),
		humidity,
		mixF: fahrenheit(mixC),
		windMph: windKmH / MPH_IN_KMH,
	});

/** Menzel (1954): 0.315 (e₀ − r eₐ) (0.253 + 0.060 V), kPa and km/h; coefficients from memory. */
const menzel = ({ airC, humidity, mixC, windKmH }: Weather): number => {
	const kPa = (celsius: number) => psychrolib.GetSatVapPres(celsius) / 1000;
	return 0.315 * (kPa(mixC) - humidity * kPa(airC)) * (0.253 + 0.06 * windKmH);
};

const steps = (from: number, to: number, by: number): number[] =>
	Array.from(
		{ length: Math.floor((to - from) / by) + 1 },
		(_, i) => from + i * by,
	);

/** Weather in which mix is placed and dries: mix no colder than the air by more than 5 °C. */
const placing: Weather[] = steps(10, 35, 5).flatMap((airC) =>
	steps(airC - 5, airC + 10, 5).flatMap((mixC) =>
		[0.2, 0.5, 0.7].flatMap((humidity) =>
			[0, 10, 20, 40].map((windKmH) => ({ airC, humidity, mixC, windKmH })),
		),
	),
);

const drying = placing.filter((weather) => evaporationKgPerM2H(weather) > 0.1);

describe("the two published forms", () => {
	test("are 1 to 6% apart where a surface dries: the SI form's constants are rounded", () => {
		const apart = drying.map(
			(weather) => evaporationKgPerM2H(weather) / usForm(weather) - 1,
		);
		expect(drying.length).toBeGreaterThan(200);
		expect(Math.min(...apart)).toBeGreaterThan(-0.06);
		expect(Math.max(...apart)).toBeLessThan(-0.01);
	});

	test("the US form is 5.2751 ([Tc + 17.7778]^2.5 − r [Ta + 17.7778]^2.5) (V + 4.02336) × 10⁻⁶ in SI", () => {
		// 1.8^2.5 × 0.4 / 1.609344 × 4.88243 = 5.2751; 32 / 1.8; 1.609344 / 0.4.
		for (const weather of placing) {
			const { airC, humidity, mixC, windKmH } = weather;
			const exact =
				5.2751e-6 *
				((mixC + 17.7778) ** 2.5 - humidity * (airC + 17.7778) ** 2.5) *
				(windKmH + 4.02336);
			expect(Math.abs(usForm(weather) - exact)).toBeLessThan(
				1e-4 * Math.abs(exact) + 1e-5,
			);
		}
	});
});

describe("against Menzel's formula with vapor pressures of psychrolib", () => {
	beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

	test("psychrolib gives the steam tables' 2.339 kPa at 20 °C", () => {
		expect(psychrolib.GetSatVapPres(20)).toBeCloseTo(2339, -1);
	});

	// Where the mix is colder than the air little dries and the power law is up to half off: see the limits of the
	// sheet function.
	test("where the mix is as warm as the air or warmer: SI form −24% to +7%, US form −21% to +12%, both 9% rms or less", () => {
		const warm = drying.filter(({ airC, mixC }) => mixC >= airC);
		expect(warm.length).toBeGreaterThan(150);
		for (const [rate, low, high] of [
			[evaporationKgPerM2H, -0.24, 0.07],
			[usForm, -0.21, 0.12],
		] as const) {
			const off = warm.map((weather) => rate(weather) / menzel(weather) - 1);
			const square = off.reduce((sum, each) => sum + each ** 2, 0);
			expect(Math.min(...off)).toBeGreaterThan(low);
			expect(Math.max(...off)).toBeLessThan(high);
			expect(Math.sqrt(square / off.length)).toBeLessThan(0.09);
		}
	});

	test("Menzel as used here: 0.363 and 0.2541 psi at 10 mph are 0.058 lb/ft²·h in his US form", () => {
		const us = 0.44 * (0.363 - 0.2541) * (0.253 + 0.096 * 10);
		const kPa = 6.894757;
		const si = 0.315 * (0.363 - 0.2541) * kPa * (0.253 + 0.06 * 16.09344);
		expect(us).toBeCloseTo(0.058, 3);
		expect(si / KG_PER_M2_IN_LB_PER_FT2 / us).toBeCloseTo(1, 1);
	});
});

test("more wind dries a drying surface faster, more humidity slower", () => {
	const weather = fc.record({
		airC: fc.double({ min: 0, max: 40, noNaN: true }),
		mixC: fc.double({ min: 0, max: 40, noNaN: true }),
		humidity: fc.double({ min: 0, max: 0.9, noNaN: true }),
		windKmH: fc.double({ min: 0, max: 60, noNaN: true }),
	});
	fc.assert(
		fc.property(weather, (now) => {
			const rate = evaporationKgPerM2H(now);
			const windier = evaporationKgPerM2H({ ...now, windKmH: now.windKmH + 1 });
			const damper = evaporationKgPerM2H({
				...now,
				humidity: now.humidity + 0.05,
			});
			expect(Math.abs(windier)).toBeGreaterThanOrEqual(Math.abs(rate));
			expect(damper).toBeLessThan(rate);
		}),
	);
});

test("a mix colder than the dew point takes up water: a negative answer", () => {
	const foggy = { airC: 30, humidity: 0.9, mixC: 15, windKmH: 10 };
	expect(evaporationKgPerM2H(foggy)).toBeLessThan(0);
	expect(usForm(foggy)).toBeLessThan(0);
});

test.each([
	[
		() =>
			evaporationKgPerM2H({ airC: -19, humidity: 0.5, mixC: 5, windKmH: 0 }),
		"air_temp must be -18 °C or more for this formula, got -19 °C",
	],
	[
		() =>
			evaporationKgPerM2H({ airC: 5, humidity: 0.5, mixC: -20, windKmH: 0 }),
		"mix_temp must be -18 °C or more for this formula, got -20 °C",
	],
	[
		() =>
			evaporationLbPerFt2H({ airF: -1, humidity: 0.5, mixF: 40, windMph: 0 }),
		"air_temp must be 0 °F or more for this formula, got -1 °F",
	],
	[
		() =>
			evaporationLbPerFt2H({ airF: 40, humidity: 0.5, mixF: -5, windMph: 0 }),
		"mix_temp must be 0 °F or more for this formula, got -5 °F",
	],
])("too cold for the power law", (work, sentence) => {
	expect(work).toThrow(new InputError(sentence));
});
