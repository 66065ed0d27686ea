/** One step, large enough to read from the mixer. */
import { useState } from "preact/hooks";
import type { Typed } from "../../job/fields/field";
import type { JobState } from "../../sheets/messages";
import type { Step } from "./load-steps";
import { loadsAtMixer, type MixerLoad } from "./mixer-loads";
import { ScaleEntry } from "./scale-entry";
import { weightShown } from "./scale-reading";
import { onCard, type Walk } from "./use-walk";
import { withWeighing } from "./weighings";

interface Props {
	walk: Walk;
	step: Step;
	state: JobState;
	load: MixerLoad;
	separator: string;
}

export function StepCard({ walk, step, state, load, separator }: Props) {
	const [typed, setTyped] = useState<number>();
	const trial = (weight: Typed) => loadWith(weight, { step, state, load });
	const then =
		typed === undefined ? walk.next : trial(typed).steps[walk.at + 1];
	const remark = remarkOf(step, load.steps[walk.at - 1]);
	return (
		<>
			<p class="count">
				Step {walk.at + 1} of {load.steps.length}
			</p>
			<div class="bar" aria-hidden="true">
				<span style={{ width: `${(100 * walk.at) / load.steps.length}%` }} />
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
				refusal={(weight) => trial(weight).refusal.replace(/^step \d+: /, "")}
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
function loadWith(
	value: Typed,
	{ step, state, load }: Pick<Props, "step" | "state" | "load">,
): MixerLoad {
	const number = load.card.load;
	const job = withWeighing(state.job, {
		load: number,
		cell: step.cell,
		value: onCard(step, value),
		planNumber: "",
	});
	return (
		loadsAtMixer({ ...state, job }).find(({ card }) => card.load === number) ??
		load
	);
}

/** How far the tone of this step is off, or the one that was finished just before. */
export function remarkOf(step: Step, before: Step | undefined): string {
	if (step.remark) return step.remark;
	return before?.remark ? `${before.what}: ${before.remark}` : "";
}
