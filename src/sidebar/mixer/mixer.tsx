/** At the mixer: one load, one step at a time, each weight written to the Pour card. */
import { useState } from "preact/hooks";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Notice } from "../notice";
import { LoadView } from "./load-view";
import { StateNotices } from "./state-notices";
import { useLine } from "./use-line";
import "./mixer.css";

export function Mixer(props: JobViewProps & { record(): void }) {
	const { ask, start, job, inSight } = props;
	const line = useLine(ask, job, inSight);
	const [chosen, setChosen] = useState<{ job: number; load: number }>();
	const { now, read, failure } = line?.shown() ?? {};
	const number = chosen?.job === job ? chosen.load : now?.chosen;
	const load =
		now?.loads.find((each) => each.number === number) ?? now?.loads[0];
	const choose = (to: number) => {
		setChosen({ job, load: to });
		line?.choose(to);
	};
	return (
		<div class="mixer">
			<div class="columns wide-first">
				<JobChoice id="mixer-job" {...props} />
				{now && load && (
					<div class="field">
						<label for="mixer-load">Load</label>
						<select
							id="mixer-load"
							value={String(load.number)}
							onChange={(event) => choose(Number(event.currentTarget.value))}
						>
							{now.loads.map((each) => (
								<option key={each.number} value={String(each.number)}>
									{each.number} of {now.loads.length}
								</option>
							))}
						</select>
					</div>
				)}
			</div>
			{load && load.castings.length > 0 && (
				<p class="hint castings">{load.castings.join(", ")}</p>
			)}
			{line && <StateNotices line={line} />}
			{!now && !failure && <Notice kind="plain">Reading the Pour card…</Notice>}
			{now && read && !load && (
				<p class="hint">This job has no load yet: see Checks.</p>
			)}
			{line && now && read && load && (
				<LoadView
					key={`${job} ${load.number}`}
					{...{ line, read, now, load, choose }}
					separator={start.separator}
					record={props.record}
				/>
			)}
		</div>
	);
}
