/**
 * What is to be weighed of a load after what was weighed. `read` is the load as the script last read it, `now` with what
 * was weighed since.
 */

import { InputError } from "../../calc/errors";
import { sum } from "../../calc/sum";
import { callFunction } from "../../functions/call";
import { RESCALE_BATCH } from "../../functions/loads";
import { PULL_OFF_PLAN } from "../../functions/pulloff";
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
import { mixScale, onScale } from "./scale";

/** A cell that holds no number is as good as blank; its mistake is told beside. */
const weightsIn = (cells: readonly Typed[]): Typed[] =>
	cells.map((cell) => (typeof cell === "number" ? cell : ""));

/** What to weigh of each ingredient, raised with what was weighed too much. */
export function toWeigh({ planned, mixed }: MixerLoad): readonly Typed[] {
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
	sum(cells.map((cell) => numberOr(cell, 0)));

/** How much larger the batch became since the script read it. */
function growth(read: MixerLoad, now: MixerLoad): number {
	const before = sumOf(toWeigh(read));
	return before > 0 ? sumOf(toWeigh(now)) / before : 1;
}

/** The reserve to pull off first, in the mix scale's divisions. */
export const reserveOf = (
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

/** The rows of PULL_OFF_PLAN for what is left to tone, and why there are none. */
export function planOf(
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): { rows: Typed[][]; mistake: string } {
	const { tones, pigments, units } = state;
	const { weights, planBinder } = now;
	const mass = planMass(state, read, now);
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

/** The first cell of the load that holds something else than a weight. */
export function noWeight({ ingredients }: MixerState, load: MixerLoad): string {
	const wrong = (cells: readonly Typed[]) =>
		cells.findIndex((cell) => typeof cell === "string" && cell !== "");
	const [mixed, plan] = [wrong(load.mixed), wrong(load.weights)];
	if (mixed >= 0)
		return `the card says "${load.mixed[mixed]}" for ${ingredients[mixed]}, which is no weight`;
	return plan >= 0
		? `the card says "${load.weights[plan]}" at step ${plan + 1} of the plan, which is no weight`
		: "";
}
