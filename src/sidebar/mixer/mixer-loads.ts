/** The loads of a job as they are weighed: the card, its steps, and what keeps them from being trusted. */
import { type Basis, basisOf } from "../../job/answers/basis";
import {
	type CardAnswer,
	cardAnswers,
} from "../../job/answers/card/cardanswers";
import { weightIn } from "../../job/answers/card/loadpour";
import { planCheck } from "../../job/answers/card/planfit";
import type { WeighOutLine } from "../../job/answers/card/weighline";
import { isKnown, orNull } from "../../job/answers/known";
import type { Typed } from "../../job/fields/field";
import type { JobFile, PourInput } from "../../job/jobfile";
import type { JobState } from "../../sheets/messages";
import { loadSteps, type Step } from "./load-steps";
import { typedAt } from "./weighings";

export interface MixerLoad {
	card: CardAnswer;
	steps: readonly Step[];
	/** Why the plan cannot be followed with these weights; `""` where it can. */
	refusal: string;
	/** What must be put right before the amounts can be trusted. */
	problems: readonly string[];
	/** What must be typed before there are all steps; `""` where they are there. */
	waits: string;
}

/** The loads of the job. What is no number beside a step is a problem, and does not keep the steps from being shown. */
export function loadsAtMixer({
	studio,
	job,
}: Pick<JobState, "studio" | "job">): MixerLoad[] {
	const numbers = withoutWords(job);
	const basis = basisOf(studio, job);
	const own = cardAnswers(basis);
	const followed =
		numbers === job ? own : cardAnswers(basisOf(studio, numbers));
	return followed.map((card, i) => ({
		card,
		steps: loadSteps(basis, card),
		refusal: "look" in card.steps ? card.steps.look : "",
		problems: problemsOf(basis, own[i] ?? card),
		waits: card.check.state === "unknown" ? card.check.say : "",
	}));
}

/** The job without the weights that are no numbers; the same one where there are none. */
function withoutWords(job: JobFile): JobFile {
	const isNumber = (typed: Typed) => typeof typed === "number";
	const isWeight = (typed: Typed) => isKnown(weightIn("", typed, job.units));
	const pours = (job.pours ?? []).map(
		(pour): PourInput => ({
			...pour,
			weighed: only(isWeight, pour.weighed),
			steps: only(isNumber, pour.steps),
		}),
	);
	const count = (each: readonly PourInput[]) =>
		each.flatMap(({ weighed = {}, steps = {} }) => [
			...Object.keys(weighed),
			...Object.keys(steps),
		]).length;
	return count(pours) < count(job.pours ?? []) ? { ...job, pours } : job;
}

const only = (
	keeps: (typed: Typed) => boolean,
	weights: Readonly<Record<string, Typed>> = {},
): Record<string, Typed> =>
	Object.fromEntries(
		Object.entries(weights).filter(([, typed]) => keeps(typed)),
	);

function problemsOf(basis: Basis, card: CardAnswer): string[] {
	const over = basis.tones.rows
		.filter(({ headroom }) => isKnown(headroom) && headroom.is < 0)
		.map(({ name }) => `${name} is over its pigment limit`);
	const looks = [
		card.fit === "other" ? otherPlan(basis, card) : planCheck(basis).say,
		...(orNull(card.weighOut) ?? []).map(lineProblem),
		"look" in card.steps ? `Look: ${card.steps.look}` : "",
		card.fit === "other" ? "" : card.check.say,
	].filter((say) => say.startsWith("Look: "));
	return [...new Set([...over, ...looks.map((say) => say.slice(6))])];
}

const otherPlan = ({ given }: Basis, { load, plan }: CardAnswer): string =>
	`Look: This load was begun with plan ${typedAt(given.job, { load, cell: { note: "planNumber" } })}; the tones now make plan ${orNull(plan)}`;

/** A sentence on a weight that cannot be names its ingredient; one on what is still to come does not. */
const lineProblem = ({ name, weighed, say }: WeighOutLine): string =>
	weighed === null ? say.say : say.say.replace("Look: ", `Look: ${name}: `);
