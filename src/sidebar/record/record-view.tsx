/** Keeps what was learned: the pour in the Pour log, a measured color in Swatches, the job as a file. */
import { useRef, useState } from "preact/hooks";
import type { JobState } from "../../sheets/messages";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { useJobState } from "../use-job-state";
import { PourRecord } from "./pour-record";
import { SwatchForm } from "./swatch-form";

export function RecordView(props: JobViewProps) {
	const { state, failure, busy, again } = useJobState(props);
	return (
		<>
			<JobChoice id="record-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!state && busy && <Notice kind="plain">Reading the job…</Notice>}
			{state && <PourRecord {...props} state={state} again={again} />}
			{(state || failure) && (
				<SwatchForm key={state?.number ?? 0} {...props} state={state} />
			)}
			{state && <KeepJob state={state} />}
		</>
	);
}

/** The job as a file of its own: to save, or to copy where nothing can be saved. */
function KeepJob({ state: { number, job } }: { state: JobState }) {
	const text = JSON.stringify(job, null, "\t");
	const box = useRef<HTMLTextAreaElement>(null);
	const [told, setTold] = useState("");
	const copy = () => {
		box.current?.select();
		// The page's frame is not allowed to write to the clipboard by itself; copying what is selected is.
		setTold(
			document.execCommand("copy")
				? "It is copied."
				: "It is selected: copy it with Ctrl+C, or ⌘C.",
		);
	};
	return (
		<section aria-labelledby="keep-heading">
			<h2 id="keep-heading">Keep this job as a file</h2>
			<p class="hint">
				Everything that was typed about the job. New job reads it, in this
				workbook or another.
			</p>
			<a
				class="button"
				download={`job-${number}.json`}
				href={`data:application/json;charset=utf-8,${encodeURIComponent(text)}`}
			>
				Save job-{number}.json
			</a>
			<details>
				<summary>As text</summary>
				<div class="field">
					<label for="kept-text">The file's text</label>
					<textarea
						id="kept-text"
						ref={box}
						rows={8}
						readOnly
						dir="ltr"
						spellcheck={false}
						value={text}
					/>
				</div>
				<button type="button" onClick={copy}>
					Copy the text
				</button>
				{told && <Notice kind="plain">{told}</Notice>}
			</details>
		</section>
	);
}
