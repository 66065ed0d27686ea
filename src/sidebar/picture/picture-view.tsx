/** The picture of a job: read from its tabs, and put on its Quote. */
import { JobChoice, type JobViewProps } from "../job-choice";
import { Came, Failed, Notice } from "../notice";
import { useDoing } from "../use-doing";
import { useJobState } from "../use-job-state";
import { Drawing } from "./drawing";
import { Picture } from "./picture";

export function PictureView(props: JobViewProps) {
	const { ask, start, job } = props;
	const { state, failure, busy, again } = useJobState(props);
	const putting = useDoing(job);
	const put = (png: string) =>
		void putting.run(
			() => ask("putPicture", job, png),
			(tab) => `It is on ${tab}.`,
			"Look at the Quote.",
		);
	return (
		<>
			<JobChoice id="picture-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!state && busy && <Notice kind="plain">Reading the job…</Notice>}
			{state && (
				<Picture
					state={state}
					separator={start.separator}
					put={put}
					ready={!putting.busy}
				>
					{putting.busy && <Notice kind="plain">Putting it there…</Notice>}
					<Came told={putting.told} />
				</Picture>
			)}
			{state && <Drawing state={state} ask={ask} />}
		</>
	);
}
