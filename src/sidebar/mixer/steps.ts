/** One load as steps to take one after the other, each worked out from what was weighed before it. */
import { InputError } from "../../calc/errors";
import { callFunction } from "../../functions/call";
import { RESCALE_BATCH } from "../../functions/loads";
import { PULL_OFF_PLAN } from "../../functions/pulloff";
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
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

type Plan = Pick<LoadSteps, "mistake"> & { rows: Typed[][] };

/**
 * The steps of a load. `read` is the load as the script last read it, `now` with what was weighed since: what too much
 * of an ingredient makes of the plan is then known before the script has said it.
 */
export function stepsOf(
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): LoadSteps {
	const { rows, mistake } = planOf(state, now, planMass(state, read, now));
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

/** A cell that holds no number is as good as blank; its mistake is told beside. */
const weightsIn = (cells: readonly Typed[]): Typed[] =>
	cells.map((cell) => (typeof cell === "number" ? cell : ""));

/** The first cell of the load that holds something else than a weight. */
function noWeight({ ingredients }: MixerState, load: MixerLoad): string {
	const wrong = (cells: readonly Typed[]) =>
		cells.findIndex((cell) => typeof cell === "string" && cell !== "");
	const [mixed, plan] = [wrong(load.mixed), wrong(load.weights)];
	if (mixed >= 0)
		return `the card says "${load.mixed[mixed]}" for ${ingredients[mixed]}, which is no weight`;
	return plan >= 0
		? `the card says "${load.weights[plan]}" at step ${plan + 1} of the plan, which is no weight`
		: "";
}

/** What to weigh of each ingredient, raised with what was weighed too much. */
function toWeigh({ planned, mixed }: MixerLoad): readonly Typed[] {
	if (!planned.some((mass) => typeof mass === "number")) return [];
	const column = (cells: readonly Typed[]) =>
		planned.map((_, index) => [cells[index] ?? ""]);
	try {
		const answer = callFunction(RESCALE_BATCH, [
			column(planned),
			column(weightsIn(mixed)),
		]) as Typed[][];
		return planned.map((_, index) => answer[index]?.[0] ?? "");
	} catch (error) {
		if (error instanceof InputError) return planned;
		throw error;
	}
}

const sumOf = (cells: readonly Typed[]): number =>
	cells.reduce<number>(
		(sum, cell) => sum + (typeof cell === "number" ? cell : 0),
		0,
	);

/** How much larger the batch became since the script read it. */
function growth(read: MixerLoad, now: MixerLoad): number {
	const before = sumOf(toWeigh(read));
	return before > 0 ? sumOf(toWeigh(now)) / before : 1;
}

const reserveOf = (
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): number => onScale(read.reserve * growth(read, now), mixScale(state));

const numberOr = (cell: Typed, other: number): number =>
	typeof cell === "number" ? cell : other;

/** What is left to tone: all of the mix, less what was, or is to be, pulled off as the reserve. */
function planMass(state: MixerState, read: MixerLoad, now: MixerLoad): Typed {
	if (typeof read.planMass !== "number") return read.planMass;
	const factor = growth(read, now);
	const pulled = numberOr(now.reserveWeighed, reserveOf(state, read, now));
	const before = numberOr(read.reserveWeighed, read.reserve);
	return factor === 1 && pulled === before
		? read.planMass
		: (read.planMass + before) * factor - pulled;
}

function planOf(
	{ tones, pigments, units }: MixerState,
	{ weights, planBinder }: MixerLoad,
	mass: Typed,
): Plan {
	if (mass === "" || planBinder === "" || tones.length === 0)
		return { rows: [], mistake: "" };
	const numbers = weightsIn(weights);
	const weighed = numbers.some((weight) => weight !== "")
		? numbers.map((weight) => [weight])
		: "";
	try {
		const rows = callFunction(PULL_OFF_PLAN, [
			tones,
			[pigments],
			mass,
			planBinder,
			weighed,
			units,
		]) as Typed[][];
		return { rows, mistake: "" };
	} catch (error) {
		if (error instanceof InputError)
			return { rows: [], mistake: error.message };
		throw error;
	}
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
	[, vessel, action, what, mass, unit, , left, remark]: readonly Typed[],
	index: number,
): Step {
	const scale = unit === "g" ? gramScale(state) : mixScale(state);
	const step = {
		...plain(`weights${index + 1}`, scale, onScale(Number(mass), scale)),
		column: "weights" as const,
		row: index + 1,
		what: String(what),
		weighed: load.weights[index] ?? "",
		remark: String(remark),
	};
	const place = String(vessel).replace("mixer", "the mixer");
	if (action === "add")
		return {
			...step,
			does: "Add",
			where: `to ${place}`,
			hint: rateText(state, Number(mass), Number(left)),
		};
	if (action === "keep")
		return {
			...step,
			does: "Keep",
			where: `in ${place}`,
			hint: state.sticks > 0 ? sticksText(state) : "",
			optional: true,
		};
	const fills = String(what).startsWith("bucket ");
	return { ...step, does: fills ? "Fill" : "Pull off", where: `from ${place}` };
}

/** Doses are as weighed: the pigment was wetted, and the scale shows its water too. */
const rateText = (state: MixerState, grams: number, left: number): string =>
	left > 0
		? `Wetted, with its water: ${Number((grams / left).toPrecision(3))} g for each ${mixScale(state).unit} in it`
		: "";

const sticksText = (state: MixerState): string =>
	`About ${state.sticks} ${mixScale(state).unit} of it sticks.`;
