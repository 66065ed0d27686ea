/** A poured load as a row of the Pour log. */
import type { Typed } from "../../fields/field";
import type { LoggedRow } from "../../fields/log";
import { isBlank, plain } from "../../reading/cells";
import type { Basis } from "../basis";
import { inUnit } from "../given";
import { all, from, fromBoth, isKnown, type Known, orNull } from "../known";
import type { CardAnswer } from "./cardanswers";
import type { CardTone } from "./cardsteps";
import { isWeighed, pourOf } from "./loadpour";
import type { CardStep } from "./stepline";
import type { CorrectionStep } from "./tonesreached";
import { doseWords } from "./tonewords";
import type { WeighOutLine } from "./weighline";

/** The load's row as the studio logs it; its cost is typed once it is known. */
export function logRow(
	basis: Basis,
	card: CardAnswer,
	{ job, cost }: { job: number; cost: Known<number> },
): Known<LoggedRow> {
	const { given, loads } = basis;
	const pour = pourOf(given, card.load);
	const estimate = fromBoth(
		cost,
		loads.batchKg,
		(whole, batchKg) => (whole * card.mass) / inUnit(given, "mass", batchKg),
	);
	const minutes = card.times.sinceLoadBefore;
	const { client, title } = given.job;
	return from(
		all([card.steps, card.weighOut, card.tones] as [
			typeof card.steps,
			typeof card.weighOut,
			typeof card.tones,
		]),
		([steps, lines, tones]) =>
			filled({
				date: pour.pouredOn || given.job.pourDate,
				job,
				heading: [client, title].filter((text) => !isBlank(text)).join(" · "),
				load: card.load,
				mix: given.job.mix,
				tones: [tonesReached(tones, card), ...untyped(steps)].join("; "),
				spread: pour.spread,
				mixTemperature: pour.mixTemperature,
				airTemperature: pour.airTemperature,
				offTarget: isWeighed(pour) ? mostOff(steps, lines) : undefined,
				minutes: minutes && isKnown(minutes) ? minutes.is : undefined,
				weighedBy: pour.weighedBy,
				lots: pour.lots,
				remarks: pour.remarks,
				result: pour.result,
				estimate: isKnown(estimate) ? estimate.is : undefined,
			}),
	);
}

/** Without what is blank. */
const filled = (
	row: Readonly<Record<keyof LoggedRow, Typed | undefined>> | LoggedRow,
): LoggedRow =>
	Object.fromEntries(
		Object.entries(row).filter(([, value]) => !isBlank(value)),
	) as LoggedRow;

/** Every tone with its doses of binder as it came out, what was done to it, and how far it is still off. */
const tonesReached = (tones: readonly CardTone[], card: CardAnswer): string =>
	tones
		.map(({ name, reached, wanted, said }) => {
			const remarks = [
				...(orNull(card.corrections) ?? [])
					.filter(({ tone }) => tone === name)
					.map(correctionWords),
				"look" in said
					? `wanted ${doseWords(wanted)}: ${offWords(said.look)}`
					: "",
			].filter((words) => words !== "");
			return `${name}: ${doseWords(reached)}${remarks.length > 0 ? ` (${remarks.join("; ")})` : ""}`;
		})
		.join("; ");

/** Doses reached are as planned where no weight was typed: it is said how many were not. */
function untyped(steps: readonly CardStep[]): string[] {
	const own = steps.filter(
		({ number, do: does, amount, weighed }) =>
			number > 0 && does !== "keep" && (amount > 0 || weighed !== null),
	);
	const left = own.filter(({ weighed }) => weighed === null).length;
	return left === 0
		? []
		: [`${left} of ${own.length} weights not typed, taken as planned`];
}

/** How far it is off; what would have brought it back is past. */
const offWords = (look: string): string => look.split(": ")[0] ?? look;

const correctionWords = (step: CorrectionStep): string => {
	const amount = `${plain(step.amount)} ${step.unit}`;
	return {
		"fold in": `folded in ${amount}`,
		add: `added ${amount} of ${step.pigment}`,
		"scoop out": `scooped out ${amount}`,
	}[step.do];
};

/** The weight that was furthest from its target, as a share of it. */
const mostOff = (
	steps: readonly CardStep[],
	lines: readonly WeighOutLine[],
): number =>
	Math.max(
		0,
		...lines.map(({ weighed, mass }) => off(weighed, mass)),
		...steps
			.filter((step) => step.number > 0 && step.do !== "keep")
			.map(({ weighed, amount }) => off(weighed, amount)),
	);

const off = (weighed: number | null, target: number): number =>
	weighed !== null && target > 0 ? Math.abs(weighed / target - 1) : 0;
