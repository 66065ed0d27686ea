/** How fast the fresh face dries in today's air, and whether that is too fast. */
import {
	evaporationKgPerM2H,
	evaporationLbPerFt2H,
} from "../../../calc/evaporation";
import { CURE } from "../../fields/cure";
import { fromSi, type UnitSystem } from "../../reading/units";
import type { Given } from "../given";
import {
	all,
	from,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readRow,
	type Said,
	saidOf,
} from "../known";
import { readStarted } from "../startvalues";

/** In the workbook's unit: each formula is published in one, and the two differ a little. */
export interface DryingAnswer {
	evaporation: Known<number>;
	/** What it could be, at ±40%. */
	atLeast: Known<number>;
	atMost: Known<number>;
	/** Precautions are due from here on. */
	limit: Known<number>;
	drying: Said;
}

/** How far the formula may be off in the field (Hover, ACI SP-338). */
const OFF = 0.4;

/** ACI 305R for mixes that bleed; half of it for others is common practice. */
const LIMITS: Record<UnitSystem, { yes: number; no: number }> = {
	metric: { yes: 1, no: 0.5 },
	us: { yes: 0.2, no: 0.1 },
};

export function dryingAnswer(given: Given): DryingAnswer {
	const { job, units } = given;
	const evaporation = evaporationOf(given);
	const limit = from(
		readStarted(CURE, "bleeds", job, units),
		(bleeds) => LIMITS[units][bleeds],
	);
	const band = (rate: number) =>
		[rate * (1 - OFF), rate * (1 + OFF)].sort((a, b) => a - b);
	const atMost = from(evaporation, (rate) => band(rate)[1] as number);
	return {
		evaporation,
		atLeast: from(evaporation, (rate) => band(rate)[0] as number),
		atMost,
		limit,
		drying: saidOf(dryingOf(evaporation, atMost, limit)),
	};
}

const NEEDED = [
	"dryingAir",
	"dryingHumidity",
	"dryingMix",
	"dryingWind",
] as const;

const ASKED: Record<(typeof NEEDED)[number], string> = {
	dryingAir: "today's air temperature",
	dryingHumidity: "today's humidity",
	dryingMix: "the temperature of the mix",
	dryingWind: "the wind over the face",
};

function evaporationOf({ job, units }: Given): Known<number> {
	const read = readRow(CURE, job, units);
	if ("is" in read) {
		const blank = NEEDED.filter((key) => read.is[key] === undefined);
		if (blank.length > 0)
			return missing(`type ${blank.map((key) => ASKED[key]).join(", ")}`);
	}
	return from(
		read,
		({
			dryingAir: air = 0,
			dryingHumidity: humidity = 0,
			dryingMix: mix = 0,
			dryingWind: wind = 0,
		}) =>
			units === "us"
				? evaporationLbPerFt2H({
						airF: fromSi(air, "temperature", units),
						humidity,
						mixF: fromSi(mix, "temperature", units),
						windMph: fromSi(wind, "wind", units),
					})
				: evaporationKgPerM2H({
						airC: air,
						humidity,
						mixC: mix,
						windKmH: fromSi(wind, "wind", units),
					}),
	);
}

function dryingOf(
	evaporation: Known<number>,
	atMost: Known<number>,
	limit: Known<number>,
): Known<string> {
	const rates = all<[number, number, number]>([evaporation, atMost, limit]);
	if (!isKnown(rates)) return rates;
	const [rate, most, tooFast] = rates.is;
	if (rate >= tooFast)
		return look(
			"too fast: cover at once, keep wind and sun off, mist, cool the mix",
		);
	return most >= tooFast
		? look("within its ±40% it may be too fast: cover as soon as it is placed")
		: is("fine");
}
