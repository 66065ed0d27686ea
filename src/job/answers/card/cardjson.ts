/** A pour card as plain JSON: what is not known is null, and `say` tells why. */
import { orNull, saidOf } from "../known";
import type { CardAnswer } from "./cardanswers";
import type { CardTone } from "./cardsteps";
import type { CorrectionStep } from "./tonesreached";

export const cardJson = (card: CardAnswer) => ({
	load: card.load,
	plan: orNull(card.plan),
	total: orNull(card.total),
	castings: card.castings,
	mass: card.mass,
	waterHeld: orNull(card.waterHeld),
	reserve: orNull(card.reserve),
	toTone: orNull(card.toToneMass),
	fit: card.fit ?? null,
	weighOut:
		orNull(card.weighOut)?.map(({ say, ...line }) => ({
			...line,
			state: say.state,
			say: say.say,
		})) ?? null,
	steps: stepsJson(card),
	reserveLeft: orNull(card.reserveLeft),
	tones:
		orNull(card.tones)?.map(({ said, proposal, step: _, ...tone }) => ({
			...tone,
			proposal: proposal ?? null,
			...saidOf(said),
		})) ?? null,
	workingMinutes: orNull(card.times.workingMinutes),
	placeBy: orNull(card.times.placeBy),
	state: card.check.state,
	say: card.check.say,
});

/** The steps, each correction after the one that finished its tone, and what would bring a tone back. */
const stepsJson = ({ steps, tones, corrections }: CardAnswer) =>
	orNull(steps)?.flatMap(({ say, ...step }) => {
		const tone = orNull(tones)?.find((one) => one.step === step.number);
		const done = orNull(corrections) ?? [];
		return [
			{ ...step, state: say.state, say: say.say },
			...(tone
				? [
						...done
							.filter((one) => one.tone === tone.name)
							.map((one) => ({
								...correctionJson(tone, { ...one, shown: one.amount }),
								weighed: one.amount,
							})),
						...(tone.proposal
							? [{ ...correctionJson(tone, tone.proposal), weighed: null }]
							: []),
					]
				: []),
		];
	}) ?? null;

/** A correction has no number of the plan. */
const correctionJson = (
	tone: CardTone,
	step: Omit<CorrectionStep, "number" | "tone"> & { shown: number },
) => ({
	number: null,
	// What is scooped out of a tone is pulled off once more.
	do: step.do === "scoop out" ? ("pull off" as const) : step.do,
	what: step.pigment ?? tone.name,
	vessel: tone.name,
	amount: step.amount,
	shown: step.shown,
	unit: step.unit,
	dry: step.dry,
	...saidOf(tone.said),
});
