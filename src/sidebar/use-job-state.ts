/** The state of one job, read whenever a person comes to look at it. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { JobState } from "../sheets/messages";
import { type Failure, failureOf } from "./failure";
import type { JobViewProps } from "./job-choice";

interface Told {
	state?: JobState;
	failure?: Failure;
}

export interface Reading extends Told {
	/** Whether the script is being asked. */
	busy: boolean;
	again(): void;
}

/** The last state of this job; a later failure does not take it away. */
export function useJobState({
	ask,
	job,
	inSight,
}: Pick<JobViewProps, "ask" | "job" | "inSight">): Reading {
	const [shown, setShown] = useState<Told & { job: number }>({ job });
	const [busy, setBusy] = useState(false);
	const count = useRef(0);
	const again = useCallback(() => {
		count.current += 1;
		const mine = count.current;
		const tell = (told: Told) => {
			if (mine !== count.current) return;
			setBusy(false);
			setShown((before) =>
				before.job === job && told.failure
					? { ...before, ...told }
					: { job, ...told },
			);
		};
		setBusy(true);
		ask("jobState", job).then(
			(state) => tell({ state }),
			(error) => tell({ failure: failureOf(error) }),
		);
	}, [ask, job]);
	useEffect(() => {
		if (inSight) again();
	}, [again, inSight]);
	const { state, failure }: Told = shown.job === job ? shown : {};
	return { state, failure, busy, again };
}
