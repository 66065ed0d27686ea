/** One step, large enough to read from the mixer. */
import { useState } from "preact/hooks";
import { InputError } from "../../calc/errors";
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
import { withWeighings } from "./overlay";
import { onScale, weightShown } from "./scale";
import { ScaleEntry } from "./scale-entry";
import { type Step, stepsOf } from "./steps";
import type { Walk } from "./use-steps";

interface Props {
	walk: Walk;
	step: Step;
	/** As the script last read it, and with what is on the way. */
	read: MixerState;
	now: MixerState;
	load: number;
	separator: string;
}

export function StepCard({ walk, step, read, now, load, separator }: Props) {
	const [typed, setTyped] = useState<number>();
	const trial = (weight: Typed) => trialOf({ read, now, load, step, weight });
	const then =
		typed === undefined ? walk.next : trial(typed).steps[walk.at + 1];
	const remark = remarkOf(walk, step, separator);
	return (
		<>
			<p class="count">
				Step {walk.at + 1} of {walk.steps.length}
			</p>
			<div class="bar" aria-hidden="true">
				<span style={{ width: `${(100 * walk.at) / walk.steps.length}%` }} />
			</div>
			{remark && <p class="caution big">{remark}</p>}
			<div class="step" role="status">
				<p class="does">{step.does}</p>
				<p class="what">
					<bdi>{step.what}</bdi> <span>{step.where}</span>
				</p>
				<p class="amount">{weightShown(step.amount, step.scale, separator)}</p>
			</div>
			{step.hint && <p class="hint">{step.hint}</p>}
			{step.weighed !== "" && (
				<p class="said">
					{typeof step.weighed === "number"
						? `The scale said ${weightShown(step.weighed, step.scale, separator)}.`
						: `The card says “${step.weighed}”.`}
				</p>
			)}
			<ScaleEntry
				step={step}
				separator={separator}
				begun={walk.begun}
				done={walk.done}
				typed={setTyped}
				refusal={(weight) => trial(weight).mistake}
			/>
			{then && (
				<p class="then">
					Then: {lowered(then.does)} <bdi>{then.what}</bdi>{" "}
					{weightShown(then.amount, then.scale, separator)}
				</p>
			)}
		</>
	);
}

const lowered = (text: string): string =>
	`${text.slice(0, 1).toLowerCase()}${text.slice(1)}`;

/** What becomes of the load with this weight at this step. */
function trialOf({
	read,
	now,
	load,
	step,
	weight,
}: Pick<Props, "read" | "now" | "load" | "step"> & { weight: Typed }) {
	const loadIn = (state: MixerState): MixerLoad | undefined =>
		state.loads.find(({ number }) => number === load);
	const { column, row } = step;
	const next = withWeighings(now, [
		{
			job: now.number,
			load,
			column,
			row,
			value: weight,
			believed: "",
			planNumber: now.planNumber,
		},
	]);
	const [before, after] = [loadIn(read), loadIn(next)];
	if (!before || !after) return { steps: [], mistake: "" };
	try {
		const { steps, mistake } = stepsOf(next, before, after);
		return { steps, mistake: mistake.replace(/^row \d+: /, "") };
	} catch (error) {
		if (error instanceof InputError)
			return { steps: [], mistake: error.message };
		throw error;
	}
}

/** How far the tone of this step is off, or the one that was finished just before; as the mix scale can weigh it. */
function remarkOf({ steps, at }: Walk, step: Step, separator: string): string {
	const told = step.remark ? step : steps[at - 1];
	if (!told?.remark) return "";
	const sentence = told.remark.replace(
		/fold in ([\d.e-]+) \w+ of undosed mix/,
		(_, mass) =>
			`fold in ${weightShown(onScale(Number(mass), told.scale), told.scale, separator)} of the reserve`,
	);
	return told === step ? sentence : `${told.what}: ${sentence}`;
}
