/** Finished pours into the Pour log: what will be written is said first. */
import { useMemo } from "preact/hooks";
import { isFinished, pourOf } from "../../job/answers/card/loadpour";
import { toRecord } from "../../job/answers/card/torecord";
import { isKnown, saying } from "../../job/answers/known";
import { loadsOf } from "../../job/answers/loads";
import { wholeOf } from "../../job/answers/whole";
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
	const { loads, ready } = useMemo(() => {
		const whole = wholeOf(state.studio, state.job);
		const toWrite = toRecord(whole, state.number, state.logged);
		return {
			loads: loadsOf(whole.basis.loads),
			ready: toWrite.filter(({ row }) => row),
		};
	}, [state]);
	const pours = isKnown(loads)
		? loads.is.map(({ number }) => pourOf(state, number))
		: [];
	const changed = ready.flatMap(({ load, isAgain }) => (isAgain ? [load] : []));
	const writing = useDoing(job);
	const write = () =>
		void writing
			.run(
				() => ask("recordPour", job),
				recordedText,
				"Look at the Pour log before writing again.",
			)
			.then(again);
	const finish = ({ load, finished = "" }: PourInput, as: "yes" | "as it is") =>
		void writing
			.run(
				() =>
					ask("weigh", {
						job,
						load,
						cell: { note: "finished" },
						value: as,
						believed: finished,
						planNumber: "",
					}),
				({ written, why }) =>
					written
						? as === "yes"
							? `Load ${load} is finished.`
							: `Load ${load} is left as it is.`
						: ended(why),
				"Look at the Pour card.",
			)
			.then(again);
	return (
		<section aria-labelledby="pour-heading">
			<h2 id="pour-heading">The pour</h2>
			<p class="hint">
				One row per finished load: day poured, mix, doses reached, corrections,
				weights off target, tests, who weighed, lots, remarks, result. A load
				that changed is written anew, in its row.
			</p>
			{!isKnown(loads) && <p class="hint">Loads: {ended(saying(loads))}</p>}
			<dl>
				{pours.map((pour) => (
					<div key={pour.load}>
						<dt>
							Load {pour.load}
							{!isBlank(pour.result) && ` · ${pour.result}`}
						</dt>
						<dd>{loadText(state, pour, changed)}</dd>
					</div>
				))}
			</dl>
			{pours
				.filter((pour) => mayFinish(state, pour))
				.map((pour) => (
					<div key={pour.load} class="columns">
						<button
							type="button"
							aria-disabled={writing.busy}
							onClick={() => finish(pour, "yes")}
						>
							Load {pour.load} is finished
						</button>
						<button
							type="button"
							aria-disabled={writing.busy}
							onClick={() => finish(pour, "as it is")}
						>
							Leave load {pour.load} as it is
						</button>
					</div>
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

const mayFinish = ({ recorded }: Log, pour: PourInput): boolean =>
	!recorded.includes(pour.load) && !isFinished(pour) && weightCount(pour) > 0;

function loadText(
	{ recorded }: Log,
	pour: PourInput,
	changed: readonly number[],
): string {
	if (changed.includes(pour.load)) return "changed since it was recorded";
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

const buttonText = (ready: readonly { load: number }[]): string =>
	ready.length === 0
		? "Nothing new to record"
		: `Write ${loadsText(ready.map(({ load }) => load))} to the Pour log`;

const recordedText = ({ loads, again = [], left }: Recorded): string =>
	[
		...(loads.length > 0 ? [`The Pour log now has ${loadsText(loads)}.`] : []),
		...(again.length > 0
			? [`What the log says of ${loadsText(again)} is written anew.`]
			: []),
		...(loads.length + again.length === 0
			? ["Nothing was added to the Pour log."]
			: []),
		...left.map(ended),
	].join("\n");
