/** A load as a row of the Pour log, as the Pour card itself writes it for the load it shows. */
import { PULL_OFF_PLAN } from "../functions/pulloff";
import type { MixerLoad, MixerState, Typed } from "./messages";
import { answerOf } from "./mixerload";
import { numberIn } from "./plain";
import type { JobRead } from "./readjob";
import type { Cell } from "./studio";

/** Columns of PULL_OFF_PLAN. */
const [ACTION, WHAT, AMOUNT, REMARK] = [2, 3, 4, 8];
const MINUTES_A_DAY = 1440;

export const isWeighed = ({ mixed, weights }: MixerLoad): boolean =>
	[...mixed, ...weights].some((weight) => numberIn(weight) !== undefined);

/** The load's row; undefined while its plan cannot be worked out. */
export function pourRow(
	read: JobRead,
	state: MixerState,
	load: MixerLoad,
): Cell[] | undefined {
	if (load.number === state.chosen) return read.cells("Pour card.record")[0];
	const plan = planOf(state, load);
	if (!plan) return undefined;
	const before = state.loads.find(({ number }) => number === load.number - 1);
	const { fresh } = load;
	const cost = numberIn(read.cell("Cost.cost"));
	const total = numberIn(read.cell("Job.mix_total")) ?? 0;
	return [
		read.cell("Job.pour_date"),
		state.number,
		read.cell("Job.heading"),
		load.number,
		read.cell("Tones.mix"),
		reached(read, plan),
		fresh.spread,
		fresh.mixTemperature,
		fresh.airTemperature,
		mostOff(plan, load),
		before ? minutesBetween(before.fresh.waterIn, fresh.waterIn) : "",
		fresh.weighedBy,
		fresh.lots,
		fresh.remarks,
		fresh.result,
		"",
		cost !== undefined && total > 0 ? (cost * load.mix) / total : "",
	];
}

function planOf(state: MixerState, load: MixerLoad): Typed[][] | undefined {
	if (load.planMass === "") return undefined;
	return answerOf(PULL_OFF_PLAN, [
		state.tones,
		[state.pigments],
		load.planMass,
		load.planBinder,
		load.weights.map((weight) => [weight]),
		state.units,
	]) as Typed[][] | undefined;
}

/** Every tone with its dose, and how far it came out off it. */
function reached(read: JobRead, plan: readonly Typed[][]): string {
	const words = new Map(
		read
			.cells("Tones.dose_words")
			.map(([tone, text]) => [String(tone).toLowerCase(), String(text).trim()]),
	);
	return plan
		.filter((row) => row[ACTION] === "keep" || row[ACTION] === "pull off")
		.flatMap((row) => {
			const dose = words.get(String(row[WHAT]).toLowerCase());
			const remark = row[REMARK] ? ` (${row[REMARK]})` : "";
			return dose === undefined || row[WHAT] === ""
				? []
				: [`${row[WHAT]}: ${dose}${remark}`];
		})
		.join("; ");
}

const off = (weight: Typed | undefined, target: Typed | undefined): number => {
	const [said, wanted] = [numberIn(weight), numberIn(target) ?? 0];
	return said !== undefined && wanted > 0 ? Math.abs(said / wanted - 1) : 0;
};

/** The weight that was furthest from its target, as a share of it. */
const mostOff = (plan: readonly Typed[][], load: MixerLoad): number =>
	Math.max(
		0,
		...load.mixed.map((weight, row) => off(weight, load.weighOut[row])),
		...plan.map((row, index) =>
			row[ACTION] === "keep" ? 0 : off(load.weights[index], row[AMOUNT]),
		),
	);

/** A time of day as a share of it. */
function timeOf(typed: Typed): number | undefined {
	if (typeof typed === "number") return typed % 1;
	const [, hours, minutes] = /^\s*(\d{1,2}):(\d{2})/.exec(typed) ?? [];
	return hours === undefined
		? undefined
		: (Number(hours) * 60 + Number(minutes)) / MINUTES_A_DAY;
}

/** Whole minutes, past midnight too; blank where a time is missing. */
function minutesBetween(from: Typed, to: Typed): Typed {
	const [begin, end] = [timeOf(from), timeOf(to)];
	if (begin === undefined || end === undefined) return "";
	return Math.round(((((end - begin) % 1) + 1) % 1) * MINUTES_A_DAY);
}
