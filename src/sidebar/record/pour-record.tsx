/** Finished pours into the Pour log: what will be written is said first. */
import { useMemo } from "preact/hooks";
import { basisOf } from "../../job/answers/basis";
import { isFinished, pourOf } from "../../job/answers/card/loadpour";
import { isKnown, saying } from "../../job/answers/known";
import { loadsOf } from "../../job/answers/loads";
import type { PourInput } from "../../job/jobfile";
import { isBlank } from "../../job/reading/cells";
import type { JobState, Recorded } from "../../sheets/messages";
import type { JobViewProps } from "../job-choice";
import { Came } from "../notice";
import { ended } from "../sentence";
import { useDoing } from "../use-doing";

interface Props extends JobViewProps {
	state: JobState;
	again(): void;
}

export function PourRecord({ ask, job, state, again }: Props) {
	const loads = useMemo(
		() => loadsOf(basisOf(state.studio, state.job).loads),
		[state],
	);
	const pours = isKnown(loads)
		? loads.is.map(({ number }) => pourOf(state, number))
		: [];
	const writing = useDoing(job);
	const write = () =>
		void writing
			.run(
				() => ask("recordPour", job),
				recordedText,
				"Look at the Pour log before writing again.",
			)
			.then(again);
	const finish = ({ load, finished = "" }: PourInput) =>
		void writing
			.run(
				() =>
					ask("weigh", {
						job,
						load,
						cell: { note: "finished" },
						value: "yes",
						believed: finished,
						planNumber: "",
					}),
				({ written, why }) =>
					written ? `Load ${load} is finished.` : ended(why),
				"Look at the Pour card.",
			)
			.then(again);
	const ready = pours.filter((pour) => isReady(state, pour));
	return (
		<section aria-labelledby="pour-heading">
			<h2 id="pour-heading">The pour</h2>
			<p class="hint">
				One row per finished load: date, mix, doses reached, weights off target,
				tests, who weighed, lots, remarks, result.
			</p>
			{!isKnown(loads) && <p class="hint">Loads: {ended(saying(loads))}</p>}
			<dl>
				{pours.map((pour) => (
					<div key={pour.load}>
						<dt>
							Load {pour.load}
							{!isBlank(pour.result) && ` · ${pour.result}`}
						</dt>
						<dd>{loadText(state, pour)}</dd>
					</div>
				))}
			</dl>
			{pours
				.filter((pour) => mayFinish(state, pour))
				.map((pour) => (
					<button
						key={pour.load}
						type="button"
						aria-disabled={writing.busy}
						onClick={() => finish(pour)}
					>
						Load {pour.load} is finished
					</button>
				))}
			<button
				type="button"
				class="main"
				onClick={write}
				disabled={ready.length === 0}
				aria-disabled={writing.busy}
			>
				{writing.busy ? "Writing…" : buttonText(ready)}
			</button>
			<Came told={writing.told} />
		</section>
	);
}

/** Weights of a load, those of its ingredients too: a single plain tone has no others. */
const weightCount = ({ weighed = {}, steps = {} }: PourInput): number =>
	[...Object.values(weighed), ...Object.values(steps)].filter(
		(typed) => typeof typed === "number",
	).length;

type Log = Pick<JobState, "recorded">;

const isReady = ({ recorded }: Log, pour: PourInput): boolean =>
	!recorded.includes(pour.load) && isFinished(pour) && weightCount(pour) > 0;

const mayFinish = ({ recorded }: Log, pour: PourInput): boolean =>
	!recorded.includes(pour.load) && !isFinished(pour) && weightCount(pour) > 0;

function loadText({ recorded }: Log, pour: PourInput): string {
	if (recorded.includes(pour.load)) return "in the log";
	const count = weightCount(pour);
	if (count === 0) return "not weighed";
	const weights = count === 1 ? "1 weight" : `${count} weights`;
	return isFinished(pour) ? weights : `${weights}, not finished`;
}

const listed = (numbers: readonly number[]): string =>
	numbers.length < 2
		? numbers.join("")
		: `${numbers.slice(0, -1).join(", ")} and ${numbers[numbers.length - 1]}`;

const loadsText = (numbers: readonly number[]): string =>
	`${numbers.length === 1 ? "load" : "loads"} ${listed(numbers)}`;

const buttonText = (ready: readonly PourInput[]): string =>
	ready.length === 0
		? "Nothing new to record"
		: `Write ${loadsText(ready.map(({ load }) => load))} to the Pour log`;

const recordedText = ({ loads, left }: Recorded): string =>
	[
		loads.length === 0
			? "Nothing was added to the Pour log."
			: `The Pour log now has ${loadsText(loads)}.`,
		...left.map(ended),
	].join("\n");
