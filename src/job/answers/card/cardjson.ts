/** A pour card as plain JSON: what is not known is null, and `say` tells why. */
import { orNull } from "../known";
import type { CardAnswer } from "./cardanswers";

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
	steps:
		orNull(card.steps)?.map(({ say, ...step }) => ({
			...step,
			state: say.state,
			say: say.say,
		})) ?? null,
	workingMinutes: orNull(card.times.workingMinutes),
	placeBy: orNull(card.times.placeBy),
	state: card.check.state,
	say: card.check.say,
});
