/** A finished pour into the Pour log: what will be written is said first. */
import { useState } from "preact/hooks";
import type { MixerLoad, MixerState, Recorded } from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";
import type { JobViewProps } from "../job-choice";
import { ended, Failed, Notice } from "../notice";
import { useReading } from "../use-reading";

export function PourRecord(props: JobViewProps) {
	const { ask, job } = props;
	const { answer, failure, busy, again } = useReading("mixerState", props);
	const [made, setMade] = useState<{ job: number; recorded: Recorded }>();
	const [writing, setWriting] = useState(false);
	const [problem, setProblem] = useState<Failure>();
	const write = () => {
		if (writing) return;
		setWriting(true);
		setProblem(undefined);
		setMade(undefined);
		ask("recordPour", job)
			.then(
				(recorded) => setMade({ job, recorded }),
				(error) => setProblem(failureOf(error)),
			)
			.then(() => {
				setWriting(false);
				again();
			});
	};
	const ready = answer?.loads.filter(isReady) ?? [];
	return (
		<section aria-labelledby="pour-heading">
			<h2 id="pour-heading">The pour</h2>
			{failure && <Failed failure={failure} again={again} />}
			{!answer && busy && <Notice kind="plain">Reading the Pour card…</Notice>}
			{answer && <Loads state={answer} />}
			{answer && (
				<button
					type="button"
					class="main"
					onClick={write}
					disabled={ready.length === 0}
					aria-disabled={writing}
				>
					{writing ? "Writing…" : buttonText(ready)}
				</button>
			)}
			{made?.job === job && <Told recorded={made.recorded} />}
			{problem && (
				<Notice kind="warning">
					<p>{ended(problem.text)}</p>
					{problem.outcome === "unknown" && (
						<p>Look at the Pour log before writing again.</p>
					)}
				</Notice>
			)}
		</section>
	);
}

const weightsOf = ({ weights }: MixerLoad): number =>
	weights.filter((weight) => weight !== "").length;

const isReady = (load: MixerLoad): boolean =>
	!load.recorded && weightsOf(load) > 0;

const listed = (numbers: readonly number[]): string =>
	numbers.length < 2
		? numbers.join("")
		: `${numbers.slice(0, -1).join(", ")} and ${numbers[numbers.length - 1]}`;

const loadsText = (numbers: readonly number[]): string =>
	`${numbers.length === 1 ? "load" : "loads"} ${listed(numbers)}`;

const buttonText = (ready: readonly MixerLoad[]): string =>
	ready.length === 0
		? "Nothing new to record"
		: `Write ${loadsText(ready.map(({ number }) => number))} to the Pour log`;

function Loads({ state }: { state: MixerState }) {
	return (
		<>
			<p class="hint">
				One row per load: date, mix, doses reached, weights off target, tests,
				who weighed, lots, remarks, result.
			</p>
			<dl>
				{state.loads.map((load) => (
					<div key={load.number}>
						<dt>
							Load {load.number}
							{load.fresh.result !== "" && ` · ${load.fresh.result}`}
						</dt>
						<dd>{loadText(load)}</dd>
					</div>
				))}
			</dl>
		</>
	);
}

function loadText(load: MixerLoad): string {
	if (load.recorded) return "in the log";
	const weights = weightsOf(load);
	if (weights === 0) return "not weighed";
	return weights === 1 ? "1 weight" : `${weights} weights`;
}

const Told = ({ recorded: { loads, left } }: { recorded: Recorded }) => (
	<Notice kind="plain">
		<p>
			{loads.length === 0
				? "Nothing was added to the Pour log."
				: `The Pour log now has ${loadsText(loads)}.`}
		</p>
		{left.map((sentence) => (
			<p key={sentence}>{ended(sentence)}</p>
		))}
	</Notice>
);
