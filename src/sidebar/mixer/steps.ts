/** One load as steps to take one after the other, each worked out from what was weighed before it. */
import type { PlanStep } from "../../job/answers/plan";
import { fromSi } from "../../job/reading/units";
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
import { noWeight, planOf, reserveOf, toWeigh } from "./amounts";
import { gramScale, mixScale, onScale, type Scale } from "./scale";

export interface Step {
	id: string;
	/** Where its weight is written. */
	column: "mixed" | "reserve" | "weights";
	/** From 1. */
	row: number;
	/** `Weigh`, `Add`, `Pull off`, `Keep`, `Fill`. */
	does: string;
	what: string;
	/** `to the mixer`; `""` where there is nothing to say. */
	where: string;
	/** To the division of its scale. */
	amount: number;
	scale: Scale;
	/** What the scale said. */
	weighed: Typed;
	/** One more line, e.g. grams for each kilogram that is left. */
	hint: string;
	/** How far a finished tone is off; `""` when it is as wanted. */
	remark: string;
	/** It may be passed without a weight. */
	optional: boolean;
}

export interface LoadSteps {
	steps: Step[];
	/** Why there is no plan, or none that can be trusted. */
	mistake: string;
}

/**
 * The steps of a load. `read` is the load as the script last read it, `now` with what was weighed since: what too much
 * of an ingredient makes of the plan is then known before the script has said it.
 */
export function stepsOf(
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): LoadSteps {
	const { rows, mistake } = planOf(state, read, now);
	const reserve = reserveOf(state, read, now);
	return {
		steps: [
			...ingredientSteps(state, now),
			...(reserve > 0 || now.reserveWeighed !== ""
				? [reserveStep(state, now, reserve)]
				: []),
			...rows.map((row, index) => planStep(state, now, row, index)),
		],
		mistake: mistake || noWeight(state, now),
	};
}

function ingredientSteps(state: MixerState, load: MixerLoad): Step[] {
	const scale = mixScale(state);
	return toWeigh(load).flatMap((mass, index) => {
		const amount = typeof mass === "number" ? onScale(mass, scale) : 0;
		const weighed = load.mixed[index] ?? "";
		if (amount === 0 && weighed === "") return [];
		const step: Step = {
			...plain(`mixed${index + 1}`, scale, amount),
			column: "mixed",
			row: index + 1,
			does: "Weigh",
			what: state.ingredients[index] ?? "",
			weighed,
		};
		return [step];
	});
}

const plain = (
	id: string,
	scale: Scale,
	amount: number,
): Omit<Step, "column" | "row"> => ({
	id,
	does: "",
	what: "",
	where: "",
	amount,
	scale,
	weighed: "",
	hint: "",
	remark: "",
	optional: false,
});

const reserveStep = (
	state: MixerState,
	load: MixerLoad,
	reserve: number,
): Step => ({
	...plain("reserve", mixScale(state), reserve),
	column: "reserve",
	row: 1,
	does: "Pull off",
	what: "reserve, undosed",
	hint: "Cover it: it lightens a tone that came out too dark.",
	weighed: load.reserveWeighed,
});

function planStep(
	state: MixerState,
	load: MixerLoad,
	{ vessel, action, what, amount, unit, leftKg, remark }: PlanStep,
	index: number,
): Step {
	const scale = unit === "g" ? gramScale(state) : mixScale(state);
	const step = {
		...plain(`weights${index + 1}`, scale, onScale(amount, scale)),
		column: "weights" as const,
		row: index + 1,
		what,
		weighed: load.weights[index] ?? "",
		remark,
	};
	const place = vessel.replace("mixer", "the mixer");
	if (action === "add")
		return {
			...step,
			does: "Add",
			where: `to ${place}`,
			hint: rateText(state, amount, fromSi(leftKg, "mass", state.units)),
		};
	if (action === "keep")
		return {
			...step,
			does: "Keep",
			where: `in ${place}`,
			hint: state.sticks > 0 ? sticksText(state) : "",
			optional: true,
		};
	const fills = what.startsWith("bucket ");
	return { ...step, does: fills ? "Fill" : "Pull off", where: `from ${place}` };
}

/** Doses are as weighed: the pigment was wetted, and the scale shows its water too. */
const rateText = (state: MixerState, grams: number, left: number): string =>
	left > 0
		? `Wetted, with its water: ${Number((grams / left).toPrecision(3))} g for each ${mixScale(state).unit} in it`
		: "";

const sticksText = (state: MixerState): string =>
	`About ${state.sticks} ${mixScale(state).unit} of it sticks.`;
