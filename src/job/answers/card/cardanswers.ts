/** The pour card of each load: what to weigh, pull off and dose, after what was weighed. */

import type { Basis } from "../basis";
import { inUnit } from "../given";
import {
	from,
	is,
	isKnown,
	type Known,
	look,
	orNull,
	type Said,
	saidOf,
} from "../known";
import { type Load, loadsOf } from "../loads";
import { isLayUp } from "../tones";
import { type CardStepsAnswer, cardSteps } from "./cardsteps";
import { type CardTimesAnswer, cardTimes } from "./cardtimes";
import { type FreshAnswer, freshAnswer } from "./freshdensity";
import { pourOf } from "./loadpour";
import { type MixWaterAnswer, mixWater } from "./mixwater";
import { fitSaid, type PlanFit, planFit, planNumberOf } from "./planfit";
import { type WeighOutAnswer, weighOut } from "./weighout";

/** Masses in the person's unit, unrounded; what a scale shows is `shown`. */
export interface CardAnswer {
	load: number;
	castings: readonly string[];
	/** Toned face over all mix; 1 where all of it is toned. */
	tonedShare: Known<number>;
	/** Of the mix that the load is cast of, pigment's water included. */
	mass: number;
	/** Water left out of the mixer, for it comes with the pigment. */
	waterHeld: Known<number>;
	plan: Known<number>;
	/** Whether the weights belong to the plan as it is now. */
	fit: PlanFit;
	/** All that goes into the mixer. */
	total: Known<number>;
	weighOut: WeighOutAnswer["lines"];
	reserve: Known<number>;
	/** Undosed mix that is left to tone. */
	toToneMass: Known<number>;
	steps: CardStepsAnswer["steps"];
	tones: CardStepsAnswer["tones"];
	reserveLeft: Known<number>;
	sharesSay: Said;
	corrections: CardStepsAnswer["corrections"];
	water: MixWaterAnswer;
	times: CardTimesAnswer;
	fresh: FreshAnswer;
	/** The first thing that is wrong with the load, or is still missing. */
	check: Said;
}

/** A card for each load; none while the loads are not known. */
export function cardAnswers(basis: Basis): CardAnswer[] {
	const loads = loadsOf(basis.loads);
	const plan = planNumberOf(basis);
	return isKnown(loads)
		? loads.is.map((load) => cardOf(basis, load, plan))
		: [];
}

export function cardOf(
	whole: Basis,
	load: Load,
	plan = planNumberOf(whole),
): CardAnswer {
	const { number, castings, massKg } = load;
	const { given } = whole;
	const tones = whole.tones.ofLoad(load);
	const basis = { ...whole, tones: { ...whole.tones, ...tones } };
	const pour = pourOf(given, number);
	const water = mixWater(basis, pour, massKg);
	const ingredients = weighOut(basis, pour, water);
	const steps = cardSteps(basis, pour, ingredients);
	const fit = isKnown(plan) ? planFit(basis, pour, plan.is) : undefined;
	const times = cardTimes(basis, pour, water, steps);
	return {
		load: number,
		castings,
		tonedShare: isLayUp(given) ? tones.faceShare : is(1),
		mass: inUnit(given, "mass", massKg),
		waterHeld: from(water.heldKg, (kg) => inUnit(given, "mass", kg)),
		plan,
		fit,
		total: ingredients.total,
		weighOut: ingredients.lines,
		...steps,
		water,
		times,
		fresh: freshAnswer(basis, pour, ingredients.total),
		check: firstWrong([
			...(fit === "other" ? [fitSaid(fit)] : []),
			saidOf(from(ingredients.weights, () => "")),
			saidOf(from(steps.steps, () => "")),
			weighCheck(ingredients),
			saidOf(from(steps.reserveLeft, () => "")),
			toneCheck(steps),
			steps.sharesSay,
			water.waterCheck,
			...("look" in water.mixC ? [saidOf(water.mixC)] : []),
			times.timeCheck.state === "look" ? times.timeCheck : saidOf(is("")),
			fitSaid(fit),
		]),
	};
}

/** The first weight that is not as asked for, by its ingredient. */
function weighCheck({ lines }: WeighOutAnswer): Said {
	const wrong = orNull(lines)?.find(({ say }) => say.state === "look");
	return wrong
		? { ...wrong.say, say: named(wrong.name, wrong.say.say) }
		: saidOf(from(lines, () => ""));
}

/** The first tone that is off. */
function toneCheck({ tones }: CardStepsAnswer): Said {
	const off = orNull(tones)?.find(({ said }) => "look" in said);
	return off && "look" in off.said
		? saidOf(look(`${off.name}: ${off.said.look}`))
		: saidOf(is(""));
}

/** A sentence on a weight that cannot be names its ingredient by itself. */
const named = (name: string, say: string): string =>
	say.includes(name) ? say : say.replace("Look: ", `Look: ${name}: `);

/** What is wrong goes before what is not known yet. */
export const firstWrong = (said: readonly Said[]): Said =>
	said.find(({ state }) => state === "look") ??
	said.find(({ state }) => state === "unknown") ?? {
		state: "fine",
		say: "fine",
	};
