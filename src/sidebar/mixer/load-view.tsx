/** One load at the mixer. */
import { useState } from "preact/hooks";
import type { CardTone } from "../../job/answers/card/cardsteps";
import { orNull } from "../../job/answers/known";
import type { JobState } from "../../sheets/messages";
import { Notice } from "../notice";
import { ended } from "../sentence";
import { Correction } from "./correction";
import type { Line } from "./line";
import type { Step } from "./load-steps";
import type { MixerLoad } from "./mixer-loads";
import { PourNotes } from "./pour-notes";
import { remarkOf, StepCard } from "./step-card";
import { Temperatures } from "./temperatures";
import { useWalk } from "./use-walk";
import { WorkingTime } from "./working-time";

interface Props {
	line: Line;
	state: JobState;
	load: MixerLoad;
	/** The load after this one. */
	next: MixerLoad | undefined;
	separator: string;
	choose(load: number): void;
	record(): void;
}

export function LoadView(props: Props) {
	const { line, state, load, separator } = props;
	const walk = useWalk(line, load);
	const { step } = walk;
	const [isReady, setReady] = useState(false);
	if (!isReady && load.steps.every(({ weighed }) => weighed === ""))
		return (
			<>
				<Problems load={load} said="" />
				<Temperatures {...{ line, state, load }} done={() => setReady(true)} />
			</>
		);
	const finished = lastTone(load, walk.at);
	return (
		<>
			<Problems
				load={load}
				said={step ? remarkOf(step, load.steps[walk.at - 1]) : ""}
			/>
			<WorkingTime
				state={state}
				load={load}
				line={line}
				finished={!step && load.steps.length > 0}
				mixing={isMixing(load.steps)}
			/>
			{step ? (
				<StepCard
					key={`${step.id} ${walk.begun}`}
					{...{ walk, step, state, load, separator }}
				/>
			) : (
				<Through {...props} />
			)}
			<div class="moves">
				<button type="button" disabled={!walk.back} onClick={walk.back}>
					Back
				</button>
				<button type="button" disabled={!walk.undo} onClick={walk.undo}>
					Undo
				</button>
				<button type="button" disabled={!walk.on} onClick={walk.on}>
					{step && step.weighed !== "" ? "Next" : "Skip"}
				</button>
			</div>
			{finished && (
				<Correction
					key={`correct ${walk.at}`}
					{...{ line, state, load }}
					tone={finished}
				/>
			)}
			<PourNotes job={state.job} load={load.card.load} line={line} />
		</>
	);
}

/** Once the ingredients are weighed, or anything was pulled off. */
const isMixing = (steps: readonly Step[]): boolean =>
	steps.every(({ cell, weighed }) => !("weighed" in cell) || weighed !== "") ||
	steps.some(
		({ cell, weighed }) => "step" in cell && cell.step > 0 && weighed !== "",
	);

/** The tone that this step finishes, or the last one that was finished before it. */
function lastTone(
	{ card, steps }: MixerLoad,
	at: number,
): CardTone | undefined {
	const ids = steps.slice(0, at + 1).map(({ id }) => id);
	return (orNull(card.tones) ?? [])
		.filter(({ step }) => ids.includes(`step ${step}`))
		.pop();
}

/** What the step says itself is not said twice. */
function Problems({ load, said }: { load: MixerLoad; said: string }) {
	const { waits } = load;
	const problems = load.problems.filter(
		(one) => said === "" || !(one.endsWith(said) || said.endsWith(one)),
	);
	return (
		<>
			{problems.length > 0 && (
				<Notice kind="warning">
					<p class="lines">{problems.map(ended).join("\n")}</p>
				</Notice>
			)}
			{waits && <Notice kind="plain">Some steps are {ended(waits)}</Notice>}
		</>
	);
}

/** Past the last step: what comes now. */
function Through({ line, load, next, choose, record }: Props) {
	const { card, steps } = load;
	if (steps.length === 0) return null;
	const left = steps.filter(
		({ weighed, optional }) => weighed === "" && !optional,
	).length;
	const finish = () => {
		line.write({ load: card.load, cell: { note: "finished" } }, "yes");
		record();
	};
	return (
		<div class="step" role="status">
			<p class="what">Load {card.load} is through</p>
			<p>
				{left === 0
					? "Everything was weighed."
					: `${left} of ${steps.length} steps have no weight.`}
			</p>
			{next && (
				<button
					type="button"
					class="main"
					onClick={() => choose(next.card.load)}
				>
					Go to load {next.card.load}
				</button>
			)}
			<button type="button" class="large" onClick={finish}>
				It is finished: record this pour
			</button>
		</div>
	);
}
