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
	finished: word("Finished", ["yes", "no"], ofOnePour),
};

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

export type PourRow = Row<typeof POUR>;
export type CureLogRow = Row<typeof CURE_LOG>;
