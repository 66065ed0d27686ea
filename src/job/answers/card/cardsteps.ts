/** The steps that pull the tones of a load off and dose them, each worked out from what was weighed before it. */
import { InputError } from "../../../calc/errors";
import { pullOffSteps, type Step } from "../../../calc/steps";
import { onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { toSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, setting } from "../given";
import { all, from, fromBoth, type Known } from "../known";
import { planSteps } from "../plan";
import { stepWeights } from "./loadpour";
import {
	type CardStep,
	cardStep,
	type PlanLine,
	reserveStep,
	scalesOf,
} from "./stepline";
import type { WeighOutAnswer } from "./weighout";

export interface CardStepsAnswer {
	/** Mix pulled off first, undosed: as planned. */
	reserve: Known<number>;
	/** Undosed mix that is left to tone. */
	toToneMass: Known<number>;
	/** The reserve, then the plan. */
	steps: Known<readonly CardStep[]>;
}

export function cardSteps(
	basis: Basis,
	pour: PourInput,
	{ total, binderShare, weights }: WeighOutAnswer,
): CardStepsAnswer {
	const { given } = basis;
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
