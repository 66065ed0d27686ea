/** Everything wrong or risky in a job, worst first, each with the cell to go to. */
import { useState } from "preact/hooks";
import type { CheckRow } from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { useReading } from "../use-reading";

const LOOK = /^Look: ?/;

export function Checks(props: JobViewProps) {
	const { ask, job } = props;
	const { answer, failure, busy, again } = useReading("checkJob", props);
	return (
		<>
			<JobChoice id="checks-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!answer && busy && <Notice kind="plain">Checking the job…</Notice>}
			{answer && (
				<>
					<Results
						rows={answer.rows}
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
	rows: readonly CheckRow[];
	show(cell: string): Promise<string>;
}

function Results({ rows, show }: ResultsProps) {
	const wrong = rows.filter(({ result }) => LOOK.test(result));
	const fine = rows.filter(({ result }) => result === "fine");
	const waiting = rows.filter(
		({ result }) => !LOOK.test(result) && result !== "fine",
	);
	return (
		<>
			<p class="verdict" role="status">
				{verdict(wrong.length, waiting.length)}
			</p>
			{wrong.length > 0 && (
				<ol class="cards" aria-label="What to look at, worst first">
					{wrong.map((row) => (
						<Wrong key={row.what + row.result} row={row} show={show} />
					))}
				</ol>
			)}
			<Quiet title="not known yet" rows={waiting} />
			<Quiet title="fine" rows={fine} />
		</>
	);
}

function verdict(wrong: number, waiting: number): string {
	if (wrong > 0)
		return wrong === 1 ? "One thing to look at" : `${wrong} things to look at`;
	return waiting > 0
		? "No check finds anything wrong so far"
		: "No check finds anything wrong";
}

/** What the weight of a check means; never told by color alone. */
const WORDS = ["", "To know", "Risky", "Stop"] as const;

function Wrong({
	row: { what, result, weight, cell },
	show,
}: {
	row: CheckRow;
	show: ResultsProps["show"];
}) {
	const [failure, setFailure] = useState<Failure>();
	const go = () => {
		setFailure(undefined);
		show(cell).catch((error) => setFailure(failureOf(error)));
	};
	return (
		<li class={`card check-${weight}`}>
			<p class="weight">{WORDS[weight] ?? ""}</p>
			<h2>{what}</h2>
			<p class="sentence">{result.replace(LOOK, "")}</p>
			{cell && (
				<button type="button" class="quiet" onClick={go}>
					Go to <bdi>{cell.replace("!", ", ")}</bdi>
				</button>
			)}
			{failure && (
				<p class="mistake" role="alert">
					{failure.text}
				</p>
			)}
		</li>
	);
}

function Quiet({ title, rows }: { title: string; rows: readonly CheckRow[] }) {
	return rows.length === 0 ? null : (
		<details>
			<summary>
				{rows.length} {title}
			</summary>
			<ul class="plain-list">
				{rows.map(({ what, result }) => (
					<li key={what}>
						{what}
						{result !== "fine" && <span class="hint"> {result}</span>}
					</li>
				))}
			</ul>
		</details>
	);
}
