/** A poured load as a row of the Pour log. */
import { sameName } from "../../../calc/names";
import type { Typed } from "../../fields/field";
import type { LoggedRow } from "../../fields/log";
import { isBlank, plain } from "../../reading/cells";
import type { Basis } from "../basis";
import { inUnit } from "../given";
import { from, fromBoth, isKnown, type Known } from "../known";
import type { CardAnswer } from "./cardanswers";
import { isWeighed, pourOf } from "./loadpour";
import type { CardStep } from "./stepline";
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
	return fromBoth(card.steps, card.weighOut, (steps, lines) =>
		filled({
			date: pour.pouredOn || given.job.pourDate,
			job,
			heading: [client, title].filter((text) => !isBlank(text)).join(" · "),
			load: card.load,
			mix: given.job.mix,
			tones: tonesReached(basis, steps),
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

/** Every tone with its doses of binder, and how far it came out off them. */
function tonesReached(basis: Basis, steps: readonly CardStep[]): string {
	const doses = from(basis.tones.dry, (tones) =>
		tones.map((tone) => ({ name: tone.name, words: doseWords(basis, tone) })),
	);
	const words = isKnown(doses) ? doses.is : [];
	return steps
		.filter((step) => step.number > 0 && ["keep", "pull off"].includes(step.do))
		.map(({ what, remark }) => {
			const dose = words.find(({ name }) => sameName(name, what))?.words ?? "";
			return `${what}: ${dose}${remark ? ` (${remark})` : ""}`;
		})
		.join("; ");
}

/** `Umber 4% Black 0.5%`. */
function doseWords(
	{ pigments }: Basis,
	{ doses }: { doses: readonly number[] },
): string {
	const each = doses.flatMap((dose, i) =>
		dose > 0
			? [`${pigments[i]?.name} ${plain(Number((dose * 100).toFixed(2)))}%`]
			: [],
	);
	return each.length > 0 ? each.join(" ") : "undosed";
}

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
