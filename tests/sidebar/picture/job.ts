import type { JobState } from "../../../src/sheets/messages";

const swatch = (color: string, dose: number) => ({
	mix: "Plain mix",
	finish: "cast",
	sealed: "bare",
	state: "dry",
	doses: { Umber: dose },
	color,
});

/** An invented job of round numbers: an L cast face down, a tray cast face up; a swatch of each tone. */
export const STATE: JobState = {
	number: 14,
	job: {
		units: "metric",
		client: "Nobody (invented)",
		title: "Two pieces, invented",
		mix: "Plain mix",
		pieces: [
			{
				name: "Bar",
				quantity: 1,
				shape: "L",
				a: 2000,
				b: "1 m",
				c: 1200,
				d: 400,
				thickness: 40,
				face: "face down",
			},
			{
				name: "Tray",
				quantity: 2,
				shape: "basin",
				a: 500,
				b: 400,
				c: 120,
				thickness: 20,
				face: "face up",
			},
		],
		cutouts: [{ piece: "bar", count: 1, shape: "rectangle", a: 500, b: 400 }],
		tones: [
			{ name: "Shell", share: 0.75 },
			{ name: "Bark", share: 0.25, doses: { Umber: 0.04 } },
		],
	},
	studio: {
		settings: {},
		mixes: [
			{ mix: "Plain mix", ingredient: "Dry mix", parts: 1, binderShare: 0.5 },
		],
		pigments: [{ name: "Umber" }],
		swatches: [swatch("#d9d3c8", 0), swatch("#7a5d47", 0.04)],
	},
	recorded: [],
	logged: [],
};
