/** The picture of a job: read from its tabs, and put on its Quote. */
import { useState } from "preact/hooks";
import { failureOf } from "./failure";
import { JobChoice, type JobViewProps } from "./job-choice";
import { ended, Failed, Notice } from "./notice";
import { Picture } from "./picture/picture";
import { useReading } from "./use-reading";

type Told = { job: number; kind: "plain" | "warning"; text: string };

export function PictureView(props: JobViewProps) {
	const { ask, start, job } = props;
	const { answer, failure, busy, again } = useReading("jobView", props);
	const [told, setTold] = useState<Told>();
	const [putting, setPutting] = useState(false);
	const put = (png: string) => {
		setPutting(true);
		setTold(undefined);
		ask("putPicture", job, png)
			.then(
				(tab): Told => ({ job, kind: "plain", text: `It is on ${tab}.` }),
				(error): Told => {
					const { text, outcome } = failureOf(error);
					const look = outcome === "unknown" ? " Look at the Quote." : "";
					return { job, kind: "warning", text: ended(text) + look };
				},
			)
			.then(setTold)
			.then(() => setPutting(false));
	};
	return (
		<>
			<JobChoice id="picture-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!answer && busy && <Notice kind="plain">Reading the job…</Notice>}
			{answer && (
				<Picture
					job={answer}
					separator={start.separator}
					put={put}
					ready={!putting}
				>
					{putting && <Notice kind="plain">Putting it there…</Notice>}
					{told?.job === job && <Notice kind={told.kind}>{told.text}</Notice>}
				</Picture>
			)}
		</>
	);
}
