/** One load at the mixer. */
import type { JobState } from "../../sheets/messages";
import { Notice } from "../notice";
import { ended } from "../sentence";
import type { Line } from "./line";
import type { Step } from "./load-steps";
import type { MixerLoad } from "./mixer-loads";
import { PourNotes } from "./pour-notes";
import { StepCard } from "./step-card";
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
	return (
		<>
			<Problems load={load} />
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

function Problems({ load: { problems, waits } }: { load: MixerLoad }) {
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
