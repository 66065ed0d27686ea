/** A color measured on a sample, into Swatches, from where the next Tones take it. */
import type { JobView } from "../../sheets/messages";
import type { JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { useReading } from "../use-reading";
import { SampleForm } from "./sample-form";

/** A job that is gone or unread leaves the doses to be typed. */
const NO_JOB: Pick<JobView, "number" | "mix" | "tones"> = {
	number: 0,
	mix: "",
	tones: [],
};

export function SwatchRecord(props: JobViewProps) {
	const { answer, failure, again } = useReading("jobView", props);
	const view = answer ?? (failure && NO_JOB);
	return (
		<section aria-labelledby="swatch-heading">
			<h2 id="swatch-heading">A measured color</h2>
			{failure && <Failed failure={failure} again={again} />}
			{view ? (
				<SampleForm key={view.number} {...props} view={view} />
			) : (
				<Notice kind="plain">Reading the tones…</Notice>
			)}
		</section>
	);
}
