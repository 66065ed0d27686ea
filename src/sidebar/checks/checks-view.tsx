/** Everything wrong, risky or not known yet in a job, worst first, each with the cell to go to. */
import { useMemo, useState } from "preact/hooks";
import { byWorst, type Check, checksOf } from "../../job/answers/checks";
import { wholeOf } from "../../job/answers/whole";
import { type Failure, failureOf } from "../failure";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { useJobState } from "../use-job-state";

export function ChecksView(props: JobViewProps) {
	const { ask, job } = props;
	const { state, failure, busy, again } = useJobState(props);
	const checks = useMemo(
		() => state && byWorst(checksOf(wholeOf(state.studio, state.job))),
		[state],
	);
	return (
		<>
			<JobChoice id="checks-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!state && busy && <Notice kind="plain">Checking the job…</Notice>}
			{checks && (
				<>
					<Results
						checks={checks}
						show={(cell) => ask("showCell", job, cell)}
					/>
					<button type="button" onClick={again} aria-disabled={busy}>
						{busy ? "Checking…" : "Check again"}
					</button>
				</>
			)}
		</>
	);
}

interface ResultsProps {
	checks: readonly Check[];
	show(cell: string): Promise<string>;
}

function Results({ checks, show }: ResultsProps) {
	const [wrong = [], unknown = [], fine = []] = (
		["look", "unknown", "fine"] as const
	).map((state) => checks.filter((check) => check.state === state));
	return (
		<>
			<p class="verdict" role="status">
				{verdict(wrong.length, unknown.length)}
			</p>
			{wrong.length > 0 && (
				<ol class="cards" aria-label="What to look at, worst first">
					{wrong.map((check) => (
						<Wrong key={check.key} check={check} show={show} />
					))}
				</ol>
			)}
			{unknown.length > 0 && (
				<details open>
					<summary>{unknown.length} not known yet</summary>
					<ul class="plain-list">
						{unknown.map((check) => (
							<li key={check.key}>
								{check.what}
								<p class="hint sentence">{sentenceOf(check)}</p>
								<GoTo check={check} show={show} />
							</li>
						))}
					</ul>
				</details>
			)}
			{fine.length > 0 && (
				<details>
					<summary>{fine.length} fine</summary>
					<ul class="plain-list">
						{fine.map(({ key, what }) => (
							<li key={key}>{what}</li>
						))}
					</ul>
				</details>
			)}
		</>
	);
}

function verdict(wrong: number, unknown: number): string {
	if (wrong > 0)
		return wrong === 1 ? "One thing to look at" : `${wrong} things to look at`;
	return unknown > 0
		? "No check finds anything wrong so far"
		: "No check finds anything wrong";
}

const sentenceOf = ({ say }: Check): string =>
	say.replace(/^(Look|not known yet): /, "");

/** What the weight of a check means; never told by color alone. */
const WORDS: Readonly<Record<Check["weight"], string>> = {
	1: "To know",
	2: "Risky",
	3: "Stop",
};

interface CheckProps {
	check: Check;
	show: ResultsProps["show"];
}

const Wrong = ({ check, show }: CheckProps) => (
	<li class={`card check-${check.weight}`}>
		<p class="weight">{WORDS[check.weight]}</p>
		<h2>{check.what}</h2>
		<p class="sentence">{sentenceOf(check)}</p>
		<GoTo check={check} show={show} />
	</li>
);

/** Goes to the block where it is put right. */
function GoTo({ check: { cell, what }, show }: CheckProps) {
	const [failure, setFailure] = useState<Failure>();
	const go = () => {
		setFailure(undefined);
		show(cell).catch((error) => setFailure(failureOf(error)));
	};
	const [tab] = cell.split(".");
	return (
		<>
			<button
				type="button"
				class="quiet"
				aria-label={`Go to ${tab}: ${what}`}
				onClick={go}
			>
				Go to {tab}
			</button>
			{failure && (
				<p class="mistake" role="alert">
					{failure.text}
				</p>
			)}
		</>
	);
}
