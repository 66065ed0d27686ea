/** A job from a file that was kept: chosen, or its text pasted; one with a mistake changes nothing. */
import { useState } from "preact/hooks";
import { type JobFile, unitsOf } from "../../job/jobfile";
import { jobMistakes } from "../../job/jobmistakes";
import type { PanelStart } from "../../sheets/messages";
import type { JobForm } from "./form";
import { formOf } from "./form-file";
import { studioIn } from "./use-new-job";

interface Props {
	start: PanelStart;
	form: JobForm;
	begin(form: JobForm): void;
}

export function FromFile({ start, form, begin }: Props) {
	const [text, setText] = useState("");
	const [mistakes, setMistakes] = useState<readonly string[]>([]);
	/** What the form held before a file took its place. */
	const [before, setBefore] = useState<JobForm>();
	const use = (given: string) => {
		const read = fileIn(given, start);
		setMistakes("mistakes" in read ? read.mistakes : []);
		if ("mistakes" in read) return setBefore(undefined);
		setBefore(form);
		setText("");
		begin(read.form);
	};
	const takeBack = () => {
		if (before) begin(before);
		setBefore(undefined);
	};
	return (
		<details>
			<summary>Start from a file</summary>
			<div class="field">
				<label for="job-file">A job that was kept as a file</label>
				<input
					id="job-file"
					type="file"
					accept=".json,application/json"
					onChange={(event) => {
						const input = event.currentTarget;
						void input.files?.[0]?.text().then(use);
						// the same file, corrected, can be chosen again
						input.value = "";
					}}
				/>
			</div>
			<div class="field">
				<label for="job-text">Or its text</label>
				<textarea
					id="job-text"
					rows={4}
					value={text}
					spellcheck={false}
					onInput={(event) => setText(event.currentTarget.value)}
				/>
			</div>
			<button
				type="button"
				onClick={() => use(text)}
				disabled={text.trim() === ""}
			>
				Use this text
			</button>
			{mistakes.length > 0 && (
				<div class="notice warning" role="alert">
					<p>Nothing was taken from it:</p>
					<ul>
						{mistakes.map((sentence) => (
							<li key={sentence}>{sentence}</li>
						))}
					</ul>
				</div>
			)}
			{before && (
				<div class="notice plain" role="status">
					<p>The form below has this job now.</p>
					<button type="button" onClick={takeBack}>
						Back to what was there
					</button>
				</div>
			)}
		</details>
	);
}

/** The form of a file's text, or every mistake of the file. */
function fileIn(
	text: string,
	start: PanelStart,
): { form: JobForm } | { mistakes: string[] } {
	let file: unknown;
	try {
		file = JSON.parse(text);
	} catch {
		return { mistakes: ["This is no job file: its text is not JSON."] };
	}
	const studio = studioIn(start, unitsOf(file));
	const mistakes = jobMistakes(studio, file);
	return mistakes.length > 0
		? { mistakes }
		: { form: formOf(file as JobFile, studio) };
}
