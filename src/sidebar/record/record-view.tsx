/** Keeps what was learned: the pour in the Pour log, a measured color in Swatches, the job as a file. */
import { JobChoice, type JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { useJobState } from "../use-job-state";
import { KeepJob } from "./keep-job";
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
