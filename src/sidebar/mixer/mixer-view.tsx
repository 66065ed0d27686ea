/** At the mixer: one load, one step at a time, each weight written to the Pour card. */
import { useEffect, useMemo, useReducer, useRef, useState } from "preact/hooks";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Notice } from "../notice";
import type { Ask } from "../script";
import { type Line, openLine } from "./line";
import { LineNotices } from "./line-notices";
import { LoadView } from "./load-view";
import { loadsAtMixer } from "./mixer-loads";
import "./mixer.css";

const LOOK_MS = 10_000;

export function MixerView(props: JobViewProps & { record(): void }) {
	const { ask, start, job, inSight, record } = props;
	const line = useLine(ask, job, inSight);
	const [chosen, setChosen] = useState<{ job: number; load: number }>();
	const { now, failure } = line?.shown() ?? {};
	const loads = useMemo(() => (now ? loadsAtMixer(now) : []), [now]);
	const number = chosen?.job === job ? chosen.load : now?.job.load;
	const at = Math.max(
		0,
		loads.findIndex(({ card }) => card.load === number),
	);
	const load = loads[at];
	const choose = (to: number) => {
		setChosen({ job, load: to });
		line?.choose(to);
	};
	return (
		<div class="mixer">
			<div class="columns wide-first">
				<JobChoice id="mixer-job" {...props} />
				{load && (
					<div class="field">
						<label for="mixer-load">Load</label>
						<select
							id="mixer-load"
							value={String(load.card.load)}
							onChange={(event) => choose(Number(event.currentTarget.value))}
						>
							{loads.map(({ card }) => (
								<option key={card.load} value={String(card.load)}>
									{card.load} of {loads.length}
								</option>
							))}
						</select>
					</div>
				)}
			</div>
			{load && <p class="hint castings">{load.card.castings.join(", ")}</p>}
			{line && <LineNotices line={line} />}
			{!now && !failure && <Notice kind="plain">Reading the Pour card…</Notice>}
			{now && !load && (
				<p class="hint">This job has no load yet: see Checks.</p>
			)}
			{line && now && load && (
				<LoadView
					key={`${job} ${load.card.load}`}
					{...{ line, load, choose, record }}
					state={now}
					next={loads[at + 1]}
					separator={start.separator}
				/>
			)}
		</div>
	);
}

/** The line to the job's Pour card, kept up to date while it is in sight. Lines stay open: each goes on writing what it has not. */
function useLine(ask: Ask, job: number, inSight: boolean): Line | undefined {
	const [, redraw] = useReducer<number, void>((count) => count + 1, 0);
	const lines = useRef(new Map<number, Line>());
	if (inSight && !lines.current.has(job))
		lines.current.set(
			job,
			openLine(ask, job, () => redraw()),
		);
	const line = lines.current.get(job);
	useEffect(() => {
		if (!line || !inSight) return;
		const look = () => {
			if (document.visibilityState === "visible") line.look();
		};
		const again = () => line.tryNow();
		if (line.shown().now) look();
		const timer = setInterval(look, LOOK_MS);
		window.addEventListener("focus", look);
		window.addEventListener("online", again);
		return () => {
			clearInterval(timer);
			window.removeEventListener("focus", look);
			window.removeEventListener("online", again);
		};
	}, [line, inSight]);
	return line;
}
