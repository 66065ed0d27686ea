import { number, type Row, share, temperature, word } from "./field";

const ofOnePour = { once: true } as const;

/** From the pour to delivery: what the calendar counts from, today's air, the sealer's reading. */
export const CURE = {
	startsFrom: word("Count from the", ["pour date", "due date"], {
		start: "pour date",
	}),
	strengthWanted: share(
		"Wanted, share of 28 days",
		{ start: 0.7 },
		{ above: 0, max: 1.5 },
	),
	dryingAir: temperature("Air temperature, {temperature}", ofOnePour),
	dryingHumidity: share("Humidity", { ...ofOnePour, help: "For example 55%." }),
	dryingMix: temperature("Mix temperature, {temperature}", ofOnePour),
	dryingWind: number("Wind over the face, {wind}", {
		...ofOnePour,
		unit: "wind",
	}),
	bleeds: word("Mix bleeds water", ["yes", "no"], { start: "no" }),
	moistureLimit: number("Limit, from the sealer's data sheet"),
	moistureReading: number("Moisture reading, same scale", ofOnePour),
	sealerWaste: share("Left in pots and rollers", { start: 0.1 }),
	pasteWaste: share("Wiped off and left over", { start: 0.3 }),
};

export type CureRow = Row<typeof CURE>;
