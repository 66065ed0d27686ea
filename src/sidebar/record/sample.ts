/** A measured sample as it is typed, and what keeps it from being one. */

import { hexOfLab } from "../../calc/color";
import { InputError } from "../../calc/errors";
import { isWeighed, pourOf } from "../../job/answers/card/loadpour";
import { orNull } from "../../job/answers/known";
import type { Whole } from "../../job/answers/whole";
import { colorIn } from "../../job/reading/colortext";
import type { SwatchInput } from "../../sheets/messages";
import { numberOrText, percentOrText } from "../typed-number";

export const FINISHES = ["cast", "honed", "polished"] as const;
export const SEALS = ["bare", "sealed"] as const;
export const STATES = ["dry", "damp"] as const;

export interface Sample {
	mix: string;
	finish: string;
	sealed: string;
	state: string;
	/** Percent of binder as typed, by pigment. */
	doses: Readonly<Record<string, string>>;
	color: string;
	ageDays: string;
	lot: string;
	date: string;
	remark: string;
}

export const blankSample = (mix: string): Sample => ({
	mix,
	finish: "cast",
	sealed: "bare",
	state: "dry",
	doses: {},
	color: "",
	ageDays: "",
	lot: "",
	date: "",
	remark: "",
});

/** A tone with dry pigment as a share of binder, by the pigments' names. */
export interface DosedTone {
	name: string;
	doses: Readonly<Record<string, number>>;
}

/** The tones of a job: as each weighed load reached them, then as planned; none while their doses are not known. */
export function dosedTones(whole: Whole): DosedTone[] {
	const { tones, pigments, given } = whole.basis;
	const reached = whole
		.cards()
		.filter(({ load }) => isWeighed(pourOf(given, load)))
		.flatMap((card) =>
			(orNull(card.tones) ?? []).map((tone) => ({
				name: `${tone.name}, load ${card.load} as reached`,
				doses: tone.reached,
			})),
		);
	const planned = (orNull(tones.typed) ?? []).map(({ name, doses }) => ({
		name: reached.length > 0 ? `${name}, as planned` : name,
		doses: Object.fromEntries(
			pigments.map((pigment, i) => [pigment.name, doses[i] ?? 0]),
		),
	}));
	return [...reached, ...planned];
}

/** The doses of a tone as they are typed. */
export const typedDoses = ({ doses }: DosedTone): Record<string, string> =>
	Object.fromEntries(
		Object.entries(doses)
			.filter(([, dose]) => dose > 0)
			.map(([name, dose]) => [
				name,
				String(Number((dose * 100).toPrecision(6))),
			]),
	);

/** A typed color as the page paints it; nothing while it is none. */
export function paintOf(typed: string): string {
	try {
		// D65, as it was measured: a style's own lab() is of D50.
		return hexOfLab(colorIn("color", typed));
	} catch (error) {
		if (error instanceof InputError) return "transparent";
		throw error;
	}
}

/** Sentence by field. */
export function sampleMistakes(sample: Sample): Map<string, string> {
	const found = new Map<string, string>();
	if (sample.mix === "") found.set("sample-mix", "mix is blank");
	for (const [name, typed] of Object.entries(sample.doses)) {
		const dose = percentOrText(typed);
		if (
			typed.trim() !== "" &&
			!(typeof dose === "number" && dose >= 0 && dose < 1)
		)
			found.set(
				`sample-dose-${name}`,
				`${name} must be a percentage of binder, got "${typed}"`,
			);
	}
	try {
		colorIn("color", sample.color);
	} catch (error) {
		if (!(error instanceof InputError)) throw error;
		found.set("sample-color", error.message);
	}
	const age = numberOrText(sample.ageDays);
	if (sample.ageDays.trim() !== "" && !(typeof age === "number" && age >= 0))
		found.set(
			"sample-age",
			`age must be a number of days, 0 or more, got "${sample.ageDays}"`,
		);
	return found;
}

/** The row of Swatches of a sample without mistakes. */
export function swatchInput(sample: Sample): SwatchInput {
	const doses = Object.entries(sample.doses).flatMap(([name, typed]) => {
		const dose = percentOrText(typed);
		return typeof dose === "number" && dose > 0 ? [[name, dose] as const] : [];
	});
	const given = Object.entries({
		lot: sample.lot.trim(),
		date: sample.date,
		remark: sample.remark.trim(),
	}).filter(([, text]) => text !== "");
	return {
		mix: sample.mix,
		finish: FINISHES.find((name) => name === sample.finish) ?? "cast",
		sealed: SEALS.find((name) => name === sample.sealed) ?? "bare",
		state: STATES.find((name) => name === sample.state) ?? "dry",
		doses: Object.fromEntries(doses),
		color: sample.color.trim(),
		...(sample.ageDays.trim() !== "" && {
			ageDays: Number(numberOrText(sample.ageDays)),
		}),
		...Object.fromEntries(given),
	};
}

/** What the row will say, in words. */
export function swatchText(swatch: SwatchInput): string {
	const doses = Object.entries(swatch.doses).map(
		([name, dose]) => `${Number((dose * 100).toPrecision(6))}% ${name}`,
	);
	return [
		swatch.mix,
		doses.length > 0 ? doses.join(" + ") : "no pigment",
		`${swatch.finish}, ${swatch.sealed}, ${swatch.state}`,
		swatch.color,
		...(swatch.ageDays === undefined ? [] : [`${swatch.ageDays} days old`]),
		...(swatch.lot ? [`lot ${swatch.lot}`] : []),
	].join(" · ");
}
