/** The steps that pull the tones of a load off and dose them, each worked out from what was weighed before it. */
import { InputError } from "../../../calc/errors";
import { pullOffSteps } from "../../../calc/steps";
import { sum } from "../../../calc/sum";
import { onScale } from "../../../calc/weighing";
import type { PourInput } from "../../jobfile";
import { plain } from "../../reading/cells";
import { toSi, unitName } from "../../reading/units";
import type { Basis } from "../basis";
import { type Given, inUnit, setting } from "../given";
import {
	all,
	flat,
	from,
	fromBoth,
	isKnown,
	type Known,
	orNull,
	type Said,
	saidOf,
} from "../known";
import { type PlanLine, planRows } from "../plan";
import { stepWeights } from "./loadpour";
import {
	type CardStep,
	cardStep,
	reserveStep,
	type Scales,
	scalesOf,
} from "./stepline";
import {
	type CorrectionStep,
	type Reached,
	type ToneReached,
	tonesReached,
} from "./tonesreached";
import { type Proposal, sharesSaid, toneSaid } from "./tonewords";
import type { WeighOutAnswer } from "./weighout";

export interface CardStepsAnswer {
	/** Mix pulled off first, undosed: as planned. */
	reserve: Known<number>;
	/** Undosed mix that is left to tone. */
	toToneMass: Known<number>;
	/** The reserve, then the plan. */
	steps: Known<readonly CardStep[]>;
	/** What the tones came to, corrections included. */
	tones: Known<readonly CardTone[]>;
	/** What corrections have left of it. */
	reserveLeft: Known<number>;
	/** Whether each tone has its share of the mix. */
	sharesSay: Said;
	corrections: Known<readonly CorrectionStep[]>;
}

/** A tone of a load as it came out; masses in the person's unit, doses dry and of binder. */
export interface CardTone {
	name: string;
	/** Number of the step that finishes it. */
	step: number;
	undosed: number;
	onScale: number;
	/** Of all that was toned. */
	share: number;
	shareWanted: number;
	reached: Readonly<Record<string, number>>;
	wanted: Readonly<Record<string, number>>;
	/** How far it is off, and what brings it back. */
	said: Known<string>;
	proposal?: Proposal;
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
	const reached = from(
		all([plan, total, toToneMass, binderShare] as [
			typeof plan,
			Known<number>,
			Known<number>,
			Known<number>,
		]),
		([lines, whole, toTone, share]) =>
			tonesReached(basis, {
				lines,
				reserveKg: toSi(whole - toTone, "mass", given.units),
				binderShare: share,
				corrections: pour.corrections ?? [],
			}),
	);
	const tones = from(
		all([reached, binderShare, scales] as [
			typeof reached,
			Known<number>,
			typeof scales,
		]),
		([came, share, divisions]) =>
			came.tones.map(toneOf(basis, came, share, divisions)),
	);
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
				...rows.map((line, i) =>
					cardStep(
						basis,
						line,
						{
							weighed: own.plan[i],
							said: saidOfStep(tones, line),
							weighings: weighingsOf(rows, i, kept > 0),
							isPast: own.plan.slice(i + 1).some((one) => one !== undefined),
						},
						divisions,
					),
				),
			],
		),
		tones,
		reserveLeft: from(reached, ({ reserveKg }) =>
			inUnit(given, "mass", reserveKg),
		),
		sharesSay: saidOf(flat(from(reached, sharesSaid))),
		corrections: from(reached, ({ done }) => done),
	};
}

/** What is left in a vessel is what was filled in, less each pull-off. */
const weighingsOf = (
	rows: readonly PlanLine[],
	at: number,
	hasReserve: boolean,
): number => {
	const { vessel } = (rows[at] as PlanLine).row.step;
	const pulls = rows
		.slice(0, at)
		.filter(({ row }) => row.step.vessel === vessel && row.step.kind !== "add");
	return 1 + pulls.length + (vessel === 0 && hasReserve ? 1 : 0);
};

function saidOfStep(
	tones: Known<readonly CardTone[]>,
	{ plan, row }: PlanLine,
): Known<string> | undefined {
	if (!("tone" in row.step)) return undefined;
	return isKnown(tones)
		? tones.is.find(({ step }) => step === plan.step)?.said
		: (tones as Known<string>);
}

const toneOf =
	(basis: Basis, reached: Reached, binderShare: number, scales: Scales) =>
	(tone: ToneReached): CardTone => {
		const { given, pigments } = basis;
		const { say, proposal } = toneSaid(
			basis,
			tone,
			{ reserveKg: reached.reserveKg, binderShare },
			scales,
		);
		const undosed = inUnit(given, "mass", tone.undosedKg);
		return {
			name: tone.name,
			step: tone.step,
			undosed,
			onScale: undosed * (1 + binderShare * sum(tone.doses)),
			share: tone.share,
			shareWanted: tone.shareWanted,
			reached: dryDoses(pigments, tone.doses),
			wanted: dryDoses(pigments, tone.wanted),
			said: say,
			...(proposal && { proposal }),
		};
	};

/** Doses of binder, dry, by the pigments' names. */
const dryDoses = (
	pigments: Basis["pigments"],
	wet: readonly number[],
): Record<string, number> =>
	Object.fromEntries(
		pigments.map(({ name, wetPerDry }, i) => [
			name,
			(wet[i] ?? 0) / (orNull(wetPerDry) ?? 1),
		]),
	);

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
			return planRows({
				tones: wet,
				pigments: pigments.map(({ name }) => name),
				massKg: toSi(mass, "mass", given.units),
				binderShare: share,
				weighed: own.plan,
				units: given.units,
				calls: "step",
			});
		},
	);
}
