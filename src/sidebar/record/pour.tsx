/** A finished pour into the Pour log: what will be written is said first. */
import type { MixerLoad, MixerState, Recorded } from "../../sheets/messages";
import type { JobViewProps } from "../job-choice";
import { Came, Failed, Notice } from "../notice";
import { ended } from "../sentence";
import { useDoing } from "../use-doing";
import { useReading } from "../use-reading";

export function PourRecord(props: JobViewProps) {
	const { ask, job } = props;
	const { answer, failure, busy, again } = useReading("mixerState", props);
	const writing = useDoing(job);
	const write = () =>
		void writing
			.run(
				() => ask("recordPour", job),
				recordedText,
				"Look at the Pour log before writing again.",
			)
			.then(again);
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
					aria-disabled={writing.busy}
				>
					{writing.busy ? "Writing…" : buttonText(ready)}
				</button>
			)}
			<Came told={writing.told} />
		</section>
	);
}

/** Weights of a load, those of its ingredients too: a single plain tone has no others. */
const weightsOf = ({ mixed, weights }: MixerLoad): number =>
	[...mixed, ...weights].filter((weight) => typeof weight === "number").length;

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

const recordedText = ({ loads, left }: Recorded): string =>
	[
		loads.length === 0
			? "Nothing was added to the Pour log."
			: `The Pour log now has ${loadsText(loads)}.`,
		...left.map(ended),
	].join("\n");
