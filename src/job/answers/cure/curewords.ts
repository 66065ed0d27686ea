/** What is done on each day of the calendar, in the words of the tab. */
import type { CureStep } from "../../../calc/curedays";
import { type Given, setting } from "../given";
import { from, fromBoth, is, type Known } from "../known";
import { otherHours } from "./moldtime";

export const STEP_NAMES: Readonly<Record<CureStep, string>> = {
	pour: "Pour",
	demold: "Demold",
	fill: "Fill voids",
	polish: "Polish",
	seal: "Seal",
	lastCoat: "Last coat",
	deliver: "Deliver",
};

/** Common practice, no source, as the caution of the tab says. */
export const stepWords = (given: Given): Record<CureStep, Known<string>> => ({
	pour: is(
		"Cover when firm to the touch: sheet, then insulation. Leave the face alone.",
	),
	demold: from(
		setting(given, "demold_hours"),
		(hours) =>
			`Not before ${hours} h at about 20 °C (68 °F) (${otherHours(given, hours)}), and after a test on the piece. Carry as the Job tab says. Raise on strips that do not absorb; cover again.`,
	),
	fill: is(
		"Pigmented paste into the voids, a skim over all: amounts below. Cover again.",
	),
	polish: is(
		"Flush, wet, about 200 grit; then to the grit of the sample. Then air on both faces.",
	),
	seal: is(
		"When the moisture reading is under the limit of the sealer's data sheet: see below.",
	),
	lastCoat: fromBoth(
		setting(given, "sealer_coats"),
		setting(given, "recoat_hours"),
		(coats, hours) =>
			coats > 1
				? `${coats} coats, ${hours} h between them, longer when cool or damp.`
				: "One coat.",
	),
	deliver: is(
		"When the sealer has cured, by its data sheet. Carry as the Job tab says.",
	),
});

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** The weekday by its number, 1 Monday to 7 Sunday. */
export const weekdayWord = (weekday: number): string =>
	WEEKDAYS[weekday - 1] ?? "";
