/** What is typed on pour day about one load of the mixer. */
import {
	day,
	length,
	number,
	type Row,
	share,
	temperature,
	text,
	time,
	weight,
	whole,
	word,
} from "./field";

const ofOnePour = { once: true } as const;

/** Beside these a load has what the scale said for each ingredient and each step. */
export const POUR = {
	planNumber: whole("Plan number", {
		...ofOnePour,
		help: "Type the plan's number here when you begin a load: a later change of tones, shares, pigments or mix then shows.",
	}),
	dryTemperature: temperature("Dry material is at, {temperature}", {
		...ofOnePour,
		wanted: "the temperature of the dry material",
	}),
	waterTemperature: temperature("Water is at, {temperature}", {
		...ofOnePour,
		wanted: "the temperature of the water",
	}),
	ice: word("Cool with ice", ["yes", "no"], ofOnePour),
	spread: length("Spread, {length}", ofOnePour),
	mixTemperature: temperature("Mix temperature, {temperature}", ofOnePour),
	airTemperature: temperature("Air temperature, {temperature}", ofOnePour),
	waterInAt: time("Water in, at (like 9:40)", {
		...ofOnePour,
		wanted: "when the water went in",
	}),
	lastPlacedAt: time("Last tone placed, at", {
		...ofOnePour,
		wanted: "when the last tone was placed",
	}),
	weighedBy: text("Weighed by", ofOnePour),
	lots: text("Lots", ofOnePour),
	remarks: text("Remarks", ofOnePour),
	result: text("Result", ofOnePour),
	humidity: share("Humidity", ofOnePour),
	pouredOn: day("Poured on", ofOnePour),
	finished: word("Finished", ["yes", "as it is", "no"], {
		...ofOnePour,
		help: "yes: all was done, and what is not typed was done as planned. As it is: nothing more is done to it. Either goes into the Pour log.",
	}),
	bucketMass: number(
		"Bucket of fresh mix, net, {mass}",
		{
			...ofOnePour,
			unit: "mass",
			wanted: "what the bucket of fresh mix weighs",
			help: "Of a bucket that is filled level and tapped; its volume stands on the Studio tab.",
		},
		{ above: 0 },
	),
};

/** A correction of a tone that was pulled off or kept. Beside these it has what was added of each pigment, as weighed. */
export const CORRECTION = {
	tone: text("tone", { ...ofOnePour, from: "tones" }),
	foldedIn: weight("folded in, {mass}", {
		...ofOnePour,
		help: "Of the undosed reserve.",
	}),
	takenOut: weight("scooped out, {mass}", {
		...ofOnePour,
		help: "Of the tone, with its pigment.",
	}),
};

/** What is added of a pigment in a correction, grams as they go on the scale. */
export const ADDED = number("added, g (like Umber 20)", {
	...ofOnePour,
	help: "The pigment and its grams as weighed, with its water. Several: Umber 20; Black 5.",
});

/** One row of the log of temperatures while it cures. */
export const CURE_LOG = {
	hours: number("Log: hours", {
		...ofOnePour,
		help: "Length of the interval.",
	}),
	temperature: temperature("Mean, {temperature}", {
		...ofOnePour,
		help: "Of the piece, or of the air under the cover.",
	}),
};

export type CorrectionRow = Row<typeof CORRECTION>;
export type PourRow = Row<typeof POUR>;
export type CureLogRow = Row<typeof CURE_LOG>;
