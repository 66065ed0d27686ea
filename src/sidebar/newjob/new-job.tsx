/** A new job: typed or pasted, weighed as one types, then written into the workbook. */
import { MarksContext } from "../mistake";
import { Notice } from "../notice";
import { FromFile } from "./from-file";
import { JobFields, MixField } from "./job-fields";
import { Busy, Failed, Made } from "./outcome";
import { Pieces } from "./pieces";
import { Tones } from "./tones";
import { Spoken, summaryOf, Totals } from "./totals";
import { type NewJobProps, useNewJob } from "./use-new-job";

type Job = ReturnType<typeof useNewJob>;

export function NewJob(props: NewJobProps) {
	const job = useNewJob(props);
	const { section, marks, writing, demo } = job;
	if (writing.state === "made")
		return (
			<Made
				made={writing.made}
				next={demo ? "Back to my job" : "Start another job"}
				goOn={job.goOn}
			/>
		);
	const busy = writing.state === "busy";
	return (
		<MarksContext.Provider value={marks}>
			{job.again && (
				<Notice kind="plain">
					<p>Your unfinished job is here again.</p>
					<button type="button" onClick={job.startOver}>
						Start over
					</button>
				</Notice>
			)}
			<button type="button" onClick={job.writeDemo} aria-disabled={busy}>
				Show me the demo job
			</button>
			<FromFile start={section.start} form={section.form} begin={job.begin} />
			<fieldset disabled={busy}>
				<legend class="unseen">New job</legend>
				<JobFields {...section} />
				<Pieces {...section} {...job.pieces} marks={marks} />
				<MixField {...section} readAgain={props.readAgain} />
				<Tones {...section} />
				<Totals
					{...section}
					missing={missingText(job.sentences)}
					showMissing={job.showMistake}
				/>
			</fieldset>
			<WriteBar job={job} busy={busy} />
		</MarksContext.Provider>
	);
}

/** Always in sight: what it comes to, how writing goes, and the button. */
function WriteBar({ job, busy }: { job: Job; busy: boolean }) {
	const summary = summaryOf(job.section);
	return (
		<div class="write">
			<p aria-hidden="true">{summary}</p>
			<Spoken text={summary} />
			{job.unkept && (
				<p class="mistake" role="alert">
					If this panel closes, what you typed is lost: {job.unkept}
				</p>
			)}
			{busy && <Busy />}
			{job.writing.state === "failed" && (
				<Failed failure={job.writing.failure} />
			)}
			<button
				type="button"
				class="main"
				onClick={job.writeJob}
				aria-disabled={busy}
			>
				Write the job
			</button>
		</div>
	);
}

function missingText(sentences: ReadonlyMap<string, string>): string {
	const [first] = sentences.values();
	if (first === undefined) return "";
	const fields =
		sentences.size === 1 ? "" : `${sentences.size} fields, first: `;
	return `Still to fill in or correct: ${fields}${first}.`;
}
