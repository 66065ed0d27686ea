/** One load at the mixer. */
import type { MixerLoad, MixerState } from "../../sheets/messages";
import { Notice } from "../notice";
import { ended } from "../sentence";
import type { Line } from "./line";
import { Notes } from "./notes";
import { StepCard } from "./step-card";
import type { Step } from "./steps";
import { TimeBar } from "./time-bar";
import { useSteps, type Walk } from "./use-steps";

interface Props {
	line: Line;
	read: MixerState;
	now: MixerState;
	load: MixerLoad;
	separator: string;
	choose(load: number): void;
	record(): void;
}

export function LoadView(props: Props) {
	const { line, read, now, load, separator } = props;
	const walk = useSteps(line, load.number);
	const { step } = walk;
	return (
		<>
			<Problems {...props} walk={walk} />
			<TimeBar
				state={now}
				load={load}
				line={line}
				finished={!step && walk.steps.length > 0}
				mixing={isMixing(walk.steps)}
			/>
			{step ? (
				<StepCard
					key={`${step.id} ${walk.begun}`}
					{...{ walk, step, read, now, separator }}
					load={load.number}
				/>
			) : (
				<Finished {...props} walk={walk} />
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
			<Notes state={now} load={load} line={line} />
		</>
	);
}

/** Once the ingredients are weighed, or anything was pulled off. */
const isMixing = (steps: readonly Step[]): boolean =>
	steps.every(({ column, weighed }) => column !== "mixed" || weighed !== "") ||
	steps.some(({ column, weighed }) => column === "weights" && weighed !== "");

/** What must be put right before these weights can be trusted. */
function Problems({ now, load, walk }: Props & { walk: Walk }) {
	const other =
		load.planNumber !== "" &&
		now.planNumber !== "" &&
		load.planNumber !== now.planNumber;
	const problems = [
		...now.problems,
		...(walk.mistake ? [walk.mistake] : []),
		...(other
			? [
					`This load was begun with plan ${load.planNumber}; the tones now make plan ${now.planNumber}.`,
				]
			: []),
	];
	if (problems.length === 0) return null;
	return (
		<Notice kind="warning">
			<p class="lines">
				{problems
					.map((problem) => ended(problem.replace(/^Look: /, "")))
					.join("\n")}
			</p>
		</Notice>
	);
}

/** Past the last step: what comes now. */
function Finished({ now, load, walk, choose, record }: Props & { walk: Walk }) {
	if (walk.steps.length === 0)
		return (
			<p class="hint">
				Nothing to weigh in this load yet: it takes pieces, a mix and tones.
			</p>
		);
	const next = now.loads.find(({ number }) => number > load.number);
	const left = walk.steps.filter(
		({ weighed, optional }) => weighed === "" && !optional,
	).length;
	return (
		<div class="step" role="status">
			<p class="what">Load {load.number} is through</p>
			<p>
				{left === 0
					? "Everything was weighed."
					: `${left} of ${walk.steps.length} steps have no weight.`}
			</p>
			{next && (
				<button type="button" class="main" onClick={() => choose(next.number)}>
					Go to load {next.number}
				</button>
			)}
			<button type="button" class="large" onClick={record}>
				Record this pour
			</button>
		</div>
	);
}
