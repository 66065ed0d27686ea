/** A line of the card's pull-off plan, as its scale shows it. */
import type { Step } from "../../../calc/steps";
import { COVERAGE, doseUncertainty, onScale } from "../../../calc/weighing";
import { plain } from "../../reading/cells";
import { unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, inUnit, setting } from "../given";
import {
	all,
	from,
	is,
	isKnown,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import type { PlanLine, PlanStep } from "../plan";

export interface CardStep {
	/** 0 is the reserve. */
	number: number;
	do: "pull off" | "fill" | "add" | "keep" | "fold in";
	/** A tone, a pigment, the bucket that is filled, or `reserve`. */
	what: string;
	/** `mixer`, `bucket A` …; out of which or into which. */
	vessel: string;
	/** The step as a sentence, e.g. `Add Umber to the mixer`. */
	words: string;
	/** All that goes on the scale. */
	amount: number;
	/** What of it sticks and cannot be placed; 0 where nothing is kept. */
	sticks: number;
	/** The amount less what sticks, as its scale shows it. */
	shown: number;
	unit: string;
	/** Grams of dry pigment in it; null where it is no pigment. */
	dry: number | null;
	weighed: number | null;
	/** Of a pigment: grams as weighed for each unit of mix left in the vessel. */
	gramsPerLeft: number | null;
	/** Undosed mix in the vessel after the step. */
	left: number | null;
	/** Total of the vessel after the step, as weighed. */
	dose: number | null;
	/** How far a finished tone is off, and what brings it back. */
	remark: string;
	/** Share by which a dose may be off, k = 2. */
	doseOff: number | null;
	say: Said;
}

/** What the studio's scales show, and what sticks, in their units. */
export interface Scales {
	mix: number;
	grams: number;
	sticks: number;
}

/** A dose of which the scale's divisions leave more than this open is too small for it. */
const TOO_LITTLE = 1 / 20;

export const scalesOf = (given: Given): Known<Scales> =>
	from(
		all([
			setting(given, "mix_division"),
			setting(given, "gram_division"),
			setting(given, "sticks"),
		] as [Known<number>, Known<number>, Known<number>]),
		([mixKg, gramsKg, sticksKg]) => ({
			mix: inUnit(given, "mass", mixKg),
			grams: inUnit(given, "pigment", gramsKg),
			sticks: inUnit(given, "mass", sticksKg),
		}),
	);

export const reserveStep = (
	{ units }: Given,
	mass: number,
	weighed: number | undefined,
	scales: Scales,
): CardStep => ({
	number: 0,
	do: "pull off",
	what: "reserve",
	vessel: "mixer",
	words: "Pull off a reserve, cover it",
	amount: mass,
	sticks: 0,
	shown: onScale(mass, scales.mix),
	unit: unitName("mass", units),
	dry: null,
	weighed: weighed ?? null,
	gramsPerLeft: null,
	left: null,
	dose: null,
	remark: "",
	doseOff: null,
	say: saidOf(is("undosed, to lighten a tone too dark")),
});

/** What a step is, beside its row of the plan. */
interface StepInput {
	weighed: number | undefined;
	/** How far the tone that it finishes is off; undefined for another step. */
	said: Known<string> | undefined;
	/** Weighings that what is left in its vessel is the difference of. */
	weighings: number;
	/** Whether something was weighed after it. */
	isPast: boolean;
}

export function cardStep(
	{ given, pigments }: Basis,
	{ plan, row }: PlanLine,
	{ weighed, said, weighings, isPast }: StepInput,
	scales: Scales,
): CardStep {
	const { amount, unit } = plan;
	const { step } = row;
	const left = inUnit(given, "mass", plan.leftKg);
	const wet =
		step.kind === "add" ? pigments[step.pigment]?.wetPerDry : undefined;
	const dry = wet && isKnown(wet) ? amount / wet.is : null;
	const doseOff = wet ? doseOffOf(amount, left, scales, weighings) : null;
	const sticks = step.kind === "keep" ? Math.min(amount, scales.sticks) : 0;
	const remark = said && "look" in said ? said.look : "";
	const pulled = wet || isPast ? "" : pullWords(amount, weighed, unit, step);
	const looks = [remark, pulled].filter((words) => words !== "");
	return {
		number: plan.step,
		do: step.kind,
		what: plan.what,
		vessel: plan.vessel,
		words: wordsOf(plan, step),
		amount,
		sticks,
		shown: onScale(amount - sticks, wet ? scales.grams : scales.mix),
		unit,
		dry,
		weighed: weighed ?? null,
		gramsPerLeft: wet && left > 0 ? amount / left : null,
		left,
		dose: plan.dose,
		remark,
		doseOff,
		say: saidOf(
			looks.length > 0
				? look(looks.join("; "))
				: step.kind === "keep"
					? is(`to place; ${plain(scales.sticks)} ${unit} more sticks`)
					: wet
						? doseSaid(amount, dry, doseOff)
						: is(""),
		),
	};
}

/** A pull-off that is off by more than this share makes other tones short. */
const PULL_OFF = 1 / 20;

function pullWords(
	amount: number,
	weighed: number | undefined,
	unit: string,
	{ kind }: Step,
): string {
	if (kind === "keep" || weighed === undefined) return "";
	const more = weighed - amount;
	if (Math.abs(more) <= amount * PULL_OFF) return "";
	const off = `${Number(Math.abs(more).toFixed(2))} ${unit}`;
	return more > 0
		? `${off} more than asked for: put it back before anything else, or the tones after it come out short`
		: `${off} less than asked for: pull off that much more, or the tones after it get more than their share`;
}

/** Dry and as weighed, and how well it is known. */
function doseSaid(
	amount: number,
	dry: number | null,
	doseOff: number | null,
): Known<string> {
	const isWetted = dry !== null && Math.abs(dry - amount) > 1e-9 * amount;
	const grams = isWetted
		? `with its water; ${Number(dry.toFixed(1))} g dry`
		: "";
	if (doseOff === null) return is(grams);
	const off = `±${plain(Number((doseOff * 100).toPrecision(2)))}% (k = 2)`;
	return doseOff > TOO_LITTLE
		? look(`too little for the gram scale: ${off}`)
		: is([grams, off].filter((words) => words !== "").join("; "));
}

const doseOffOf = (
	grams: number,
	left: number,
	scales: Scales,
	weighings: number,
): number | null =>
	grams > 0 && left > 0
		? COVERAGE *
			doseUncertainty({
				pigmentKg: grams,
				pigmentDivisionKg: scales.grams,
				massKg: left,
				massDivisionKg: scales.mix,
				weighings,
			})
		: null;

function wordsOf({ what, vessel }: PlanStep, { kind }: Step): string {
	const from = vessel === "mixer" ? "the mixer" : vessel;
	return {
		add: `Add ${what} to ${from}`,
		keep: `Keep ${what} in ${from}`,
		fill: `Fill ${what} from ${from}`,
		"pull off": `Pull off ${what} from ${from}`,
	}[kind];
}
