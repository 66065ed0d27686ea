/** The steps that pull the tones of a load off and dose them, each worked out from what was weighed before it. */
import { InputError } from "../../../calc/errors";
import { pullOffSteps, type Step } from "../../../calc/steps";
import { doseUncertainty, onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { toSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, inUnit, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import { type PlanStep, planSteps } from "../plan";
import { stepWeights } from "./loadpour";
import type { WeighOutAnswer } from "./weighout";

/** A line of the pull-off plan, in the units of its scale. */
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
	/** One standard uncertainty of a dose, as a share of it. */
	doseOff: number | null;
	say: Said;
}

export interface CardStepsAnswer {
	/** Mix pulled off first, undosed: as planned. */
	reserve: Known<number>;
	/** Undosed mix that is left to tone. */
	toToneMass: Known<number>;
	/** The reserve, then the plan. */
	steps: Known<readonly CardStep[]>;
}

interface Scales {
	mix: number;
	grams: number;
	sticks: number;
}

/** A dose of which the scale's divisions leave more than this open is too small for it. */
const TOO_LITTLE = 1 / 20;

export function cardSteps(
	basis: Basis,
	pour: PourInput,
	{ total, planned, weights }: WeighOutAnswer,
	massKg: number,
): CardStepsAnswer {
	const { given, mix } = basis;
	const mass = inUnit(given, "mass", massKg);
	const scales = scalesOf(given);
	const reserve = from(
		all([total, setting(given, "reserve"), scales] as [
			Known<number>,
			Known<number>,
			typeof scales,
		]),
		([whole, share, { mix: division }]) => onScale(whole * share, division),
	);
	const typed = fromBoth(weights, stepWeights(pour), (_, own) => own);
	const toToneMass = from(
		all([total, reserve, typed] as [
			Known<number>,
			Known<number>,
			typeof typed,
		]),
		([whole, wanted, own]) => whole - reserveIn(given, whole, wanted, own),
	);
	// All binder of the load is in what is mixed, which is less by the water that comes with pigment.
	const binderShare = fromBoth(
		mix.binderShare,
		planned,
		(share, together) => (share * mass) / together,
	);
	const plan = planOf(basis, { toToneMass, binderShare, typed });
	return {
		reserve,
		toToneMass,
		steps: from(
			all([plan, reserve, typed, scales] as [
				typeof plan,
				Known<number>,
				typeof typed,
				typeof scales,
			]),
			([rows, kept, own, divisions]) => [
				...(kept > 0 || own.reserve !== undefined
					? [reserveStep(given, kept, own.reserve, divisions)]
					: []),
				...rows.map((row) =>
					cardStep(basis, row, own.plan[row.plan.step - 1], divisions),
				),
			],
		),
	};
}

/** Vessels that the tones of every load are dosed in, the mixer among them. */
export const vesselCount = ({ tones }: Basis): Known<number> =>
	from(
		tones.asWeighed,
		(wet) => pullOffSteps(wet).filter(({ kind }) => kind === "keep").length,
	);

const scalesOf = (given: Given): Known<Scales> =>
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

type StepWeights = Extract<
	ReturnType<typeof stepWeights>,
	{ is: unknown }
>["is"];

function reserveIn(
	{ units }: Given,
	whole: number,
	wanted: number,
	{ reserve }: StepWeights,
): number {
	const unit = unitName("mass", units);
	if (reserve !== undefined && reserve < 0)
		throw new InputError(
			`the reserve must be 0 or more, got ${plain(reserve)} ${unit}`,
		);
	if (reserve !== undefined && reserve >= whole)
		throw new InputError(
			`the reserve must be less than there is, got ${plain(reserve)} ${unit}: ${Number(whole.toPrecision(6))} ${unit} is in the mixer`,
		);
	return reserve ?? wanted;
}

/** A row of the plan, and the step that it is of. */
interface PlanLine {
	plan: PlanStep;
	step: Step;
}

function planOf(
	{ given, tones, pigments }: Basis,
	{
		toToneMass,
		binderShare,
		typed,
	}: {
		toToneMass: Known<number>;
		binderShare: Known<number>;
		typed: Known<StepWeights>;
	},
): Known<readonly PlanLine[]> {
	return from(
		all([tones.asWeighed, toToneMass, binderShare, typed] as [
			typeof tones.asWeighed,
			Known<number>,
			Known<number>,
			Known<StepWeights>,
		]),
		([wet, mass, share, own]) => {
			const steps = pullOffSteps(wet);
			return planSteps({
				tones: wet,
				pigments: pigments.map(({ name }) => name),
				massKg: toSi(mass, "mass", given.units),
				binderShare: share,
				weighed: own.plan,
				units: given.units,
				calls: "step",
			}).map((plan, i) => ({ plan, step: steps[i] as Step }));
		},
	);
}

const reserveStep = (
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

function cardStep(
	{ given, pigments }: Basis,
	{ plan, step }: PlanLine,
	weighed: number | undefined,
	scales: Scales,
): CardStep {
	const { amount, unit, remark } = plan;
	const left = inUnit(given, "mass", plan.leftKg);
	const wet =
		step.kind === "add" ? pigments[step.pigment]?.wetPerDry : undefined;
	const doseOff = wet ? doseOffOf(amount, left, scales) : null;
	const sticks = step.kind === "keep" ? Math.min(amount, scales.sticks) : 0;
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
		dry: wet && isKnown(wet) ? amount / wet.is : null,
		weighed: weighed ?? null,
		gramsPerLeft: wet && left > 0 ? amount / left : null,
		left,
		dose: plan.dose,
		remark,
		doseOff,
		say: saidOf(
			remark
				? look(remark)
				: step.kind === "keep"
					? is(`to place; ${plain(scales.sticks)} ${unit} more sticks`)
					: doseOff !== null && doseOff > TOO_LITTLE
						? look("too little for the gram scale")
						: is(""),
		),
	};
}

const doseOffOf = (
	grams: number,
	left: number,
	scales: Scales,
): number | null =>
	grams > 0 && left > 0
		? doseUncertainty({
				pigmentKg: grams,
				pigmentDivisionKg: scales.grams,
				massKg: left,
				massDivisionKg: scales.mix,
				weighings: 1,
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
