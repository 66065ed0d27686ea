/** The pull-off plan in the units and words of a person. */
import { InputError } from "../../calc/errors";
import { type PlanRow, pullOffRows, type Refused } from "../../calc/pulloff";
import { pullOffSteps, type Step, type Vessel } from "../../calc/steps";
import type { Dosing, Tone } from "../../calc/tones";
import { fromSi, toSi, type UnitSystem, unitName } from "../reading/units";

interface PlanInput extends Dosing {
	tones: readonly Tone[];
	pigments: readonly string[];
	/** As typed beside the steps. */
	weighed: readonly (number | undefined)[];
	units: UnitSystem;
	/** What an error calls a step; as a row of a sheet where nothing is said. */
	calls?: "row" | "step";
}

/** A step, its columns in the order in which PULL_OFF_PLAN answers them. */
export interface PlanStep {
	step: number;
	/** `mixer`, `bucket A` … */
	vessel: string;
	action: "pull off" | "add" | "keep";
	/** A tone, a pigment, or the bucket that is filled. */
	what: string;
	/** As the scale shows it. */
	amount: number;
	unit: string;
	/** Total of the vessel, after the step. */
	dose: number;
	/** Undosed mix in the vessel, kg, after the step. */
	leftKg: number;
	/** How far a finished tone is off, and what brings it back. */
	remark: string;
}

/** The plan's steps. @throws InputError for something weighed that cannot be. */
export const planSteps = (input: PlanInput): PlanStep[] =>
	planRows(input).map(({ plan }) => plan);

/** A step as a person reads it, and as it is worked out. */
export interface PlanLine {
	plan: PlanStep;
	row: PlanRow;
}

/** The plan's steps with what they were worked out from. @throws as `planSteps`. */
export function planRows(input: PlanInput): PlanLine[] {
	const steps = pullOffSteps(input.tones);
	const { weighed, units, calls = "row" } = input;
	blankBelow(steps.length, weighed, calls);
	const rows = pullOffRows({
		...input,
		steps,
		weighedKg: steps.map((step, i) => {
			const typed = weighed[i];
			return typed === undefined ? undefined : toSi(typed, scale(step), units);
		}),
		refused: (problem) =>
			new InputError(`${calls} ${problem.row}: ${refusal(problem, units)}`),
	});
	return rows.map((row, i) => ({ plan: stepOf(input, row, i + 1), row }));
}

function blankBelow(
	last: number,
	weighed: readonly (number | undefined)[],
	calls: string,
): void {
	const row = weighed.findIndex((typed, i) => i >= last && typed !== undefined);
	if (row >= 0)
		throw new InputError(
			`${calls} ${row + 1}: weighed must be blank below the last step, ${calls} ${last}, got ${weighed[row]}: nothing is left to weigh`,
		);
}

function refusal(
	{ typedKg, step, thereKg }: Parameters<Refused>[0],
	units: UnitSystem,
): string {
	// What is typed may be more than is left by the last digit only.
	const close = Math.abs(typedKg - thereKg) < thereKg * 1e-4;
	const digits = close ? 12 : 6;
	const typed = shown(typedKg, scale(step), units, digits);
	const there = `${shown(thereKg, "mass", units, digits)} is left in ${theVessel(step)}`;
	if (typedKg < 0) return `weighed must be 0 or more, got ${typed} (${there})`;
	if (step.kind === "add") return `weighed must be 0, got ${typed} (${there})`;
	return `weighed is more than there is, got ${typed}: ${there}`;
}

/** The scale a step is weighed on. */
const scale = ({ kind }: Step): "mass" | "pigment" =>
	kind === "add" ? "pigment" : "mass";

const shown = (
	massKg: number,
	quantity: "mass" | "pigment",
	units: UnitSystem,
	digits: number,
): string =>
	`${Number(fromSi(massKg, quantity, units).toPrecision(digits))} ${unitName(quantity, units)}`;

/** mixer, bucket A … bucket Z, bucket AA … */
function vesselName(vessel: Vessel): string {
	if (vessel === 0) return "mixer";
	const letters = (n: number): string =>
		n < 26
			? String.fromCharCode(65 + n)
			: letters(Math.floor(n / 26) - 1) + letters(n % 26);
	return `bucket ${letters(vessel - 1)}`;
}

const theVessel = ({ vessel }: Step): string =>
	vessel === 0 ? "the mixer" : vesselName(vessel);

function stepOf(input: PlanInput, row: PlanRow, number: number): PlanStep {
	const { step } = row;
	return {
		step: number,
		vessel: vesselName(step.vessel),
		action: step.kind === "fill" ? "pull off" : step.kind,
		what: what(input, step),
		amount: fromSi(row.amountKg, scale(step), input.units),
		unit: unitName(scale(step), input.units),
		dose: row.dose,
		leftKg: row.undosedKg,
		remark: remark(input, row),
	};
}

function what({ tones, pigments }: PlanInput, step: Step): string {
	if (step.kind === "fill") return vesselName(step.bucket);
	if (step.kind === "add") return pigments[step.pigment] ?? "";
	return tones[step.tone]?.name ?? "";
}

/** How far the tone is off, and what would bring it back; blank when it is as asked for. */
function remark(input: PlanInput, row: PlanRow): string {
	const { step, misses, bringsBackKg, undosedKg } = row;
	if (misses.length === 0) return "";
	if (step.kind === "keep" && undosedKg === 0)
		return `nothing is left in ${theVessel(step)}`;
	const off = misses.map(({ pigment, excess }) => {
		const name = several(input, step) ? `${input.pigments[pigment]} ` : "";
		const percent = Number((Math.abs(excess) * 100).toPrecision(3));
		return `${name}${percent}% too ${excess > 0 ? "strong" : "weak"}`;
	});
	const back =
		bringsBackKg > 0
			? `: fold in ${Number(fromSi(bringsBackKg, "mass", input.units).toPrecision(4))} ${unitName("mass", input.units)} of undosed mix to bring it back`
			: "";
	return off.join(", ") + back;
}

const several = ({ tones }: PlanInput, step: Step): boolean =>
	"tone" in step &&
	(tones[step.tone]?.doses.filter((dose) => dose > 0).length ?? 0) > 1;
