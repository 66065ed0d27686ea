/** Keeps what was learned: the pour in the Pour log, a measured color in Swatches. */
import { JobChoice, type JobViewProps } from "../job-choice";
import { PourRecord } from "./pour";
import { SwatchRecord } from "./swatch";

export const Record = (props: JobViewProps) => (
	<>
		<JobChoice id="record-job" {...props} />
		<PourRecord {...props} />
		<SwatchRecord {...props} />
	</>
);
