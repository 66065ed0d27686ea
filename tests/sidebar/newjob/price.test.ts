import { expect, test } from "vitest";
import { firstPrice } from "../../../src/sidebar/newjob/price";
import { STUDIO } from "../studio";
import { BARS } from "./forms";

test("dry mix and pigments that have a price; water is free", () => {
	// By hand: 2 of 2.2 parts are dry, so 110 kg has 100 kg at 0.50 = 50.
	const pigments = [
		{ name: "Umber", grams: 100, price: 2 },
		{ name: "Black", grams: 50, price: 0.5 },
	];
	expect(firstPrice(BARS, STUDIO, 110, pigments)).toEqual({
		mix: expect.closeTo(50, 9),
		pigment: 2.5,
		missing: [],
	});
});

test("what has no pack price is named, unless nothing of it is used", () => {
	const [mix] = STUDIO.mixes;
	const ingredients = (mix?.ingredients ?? []).map((each) => ({
		...each,
		pricePerMass: 0,
	}));
	const unpriced = { ...STUDIO, mixes: [{ name: "Plain mix", ingredients }] };
	const pigments = [
		{ name: "Ocher", grams: 10 },
		{ name: "Black", grams: 0 },
	];
	expect(firstPrice(BARS, unpriced, 110, pigments)).toEqual({
		mix: 0,
		pigment: 0,
		missing: ["Dry", "Ocher"],
	});
});
