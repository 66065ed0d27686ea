/** Which job a view is about. */
import type { PanelStart } from "../sheets/messages";
import type { Ask } from "./script";

/** What every view of one job gets. */
export interface JobViewProps {
	ask: Ask;
	start: PanelStart;
	/** One that is there. */
	job: number;
	setJob(job: number): void;
	/** Whether a person sees the view now: it then reads what may have changed. */
	inSight: boolean;
}

type Props = Pick<JobViewProps, "start" | "job" | "setJob"> & { id: string };

export const JobChoice = ({ id, start, job, setJob }: Props) => (
	<div class="field">
		<label for={id}>Job</label>
		<select
			id={id}
			value={String(job)}
			onChange={(event) => setJob(Number(event.currentTarget.value))}
		>
			{start.jobs.map(({ number, title }) => (
				<option key={number} value={String(number)}>
					{`${number} · ${title.slice(0, 80)}`}
				</option>
			))}
		</select>
	</div>
);
