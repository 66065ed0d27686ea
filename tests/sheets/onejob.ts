/** A job of one slab and two tones, and its numbers by hand: plain arithmetic, nothing of `src/`. */
import type { Desk } from "../../src/desk/contract";
import { cellOf, type Place, under } from "../job/found";

// Parts by mass of the invented white mix, its specific gravities, 2% air; ACI 211.1.
export const PARTS = 46 + 8 + 46 + 15.5 + 0.9 + 0.7 + 0.35;
const LITERS =
	46 / 3.1 + 8 / 2.4 + 46 / 2.65 + 15.5 + 0.9 / 1.07 + 0.7 / 1.3 + 0.35 / 1.3;
export const DENSITY = (PARTS / (LITERS / 1000)) * 0.98;
export const BINDER = 54 / PARTS;

/** 1 m × 1 m × 50 mm and 8% waste, kg. */
export const BATCH = 0.05 * DENSITY * 1.08;

export const slab = {
	units: "metric",
	client: "Nobody (invented)",
	title: "Slab",
	pourDate: "2027-03-09",
	mix: "White casting mix, invented",
	waste: 0.08,
	pieces: [
		{
			name: "Slab",
			quantity: 1,
			shape: "rectangle",
			a: 1000,
			b: 1000,
			thickness: 50,
		},
	],
	tones: [
		{ name: "Plain", share: 0.75, doses: {} },
		{ name: "Deep", share: 0.25, doses: { Umber: 0.04 } },
	],
};

/** To the division of a scale. */
export const onScale = (amount: number, division: number) =>
	Math.round(amount / division) * division;

/** What the Tones tab answers of a tone, in the row where the tone is typed: another row may name it as most like its own. */
export function ofTone(
	desk: Desk,
	tone: "Plain" | "Deep",
	heading: string,
): Place {
	const [tab, first] = under(desk, "1 Tones", heading, 0);
	const down = slab.tones.findIndex(({ name }) => name === tone);
	const [, typed] = cellOf("Tones.tones", down);
	return [tab, first.replace(/\d+/, typed.replace(/\D+/, ""))];
}
