/** Something of one job that is read whenever a person comes to look at it. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { PanelCalls } from "../sheets/messages";
import { type Failure, failureOf } from "./failure";
import type { Ask } from "./script";

/** Calls that need only the job. */
type OfJob = "checkJob" | "jobView" | "mixerState";

interface Told<Answer> {
	answer?: Answer;
	failure?: Failure;
}

export interface Reading<Answer> extends Told<Answer> {
	/** Whether the script is being asked. */
	busy: boolean;
	again(): void;
}

interface Asked {
	ask: Ask;
	job: number;
	inSight: boolean;
}

/** The last answer for this job; a later failure does not take it away. */
export function useReading<Name extends OfJob>(
	name: Name,
	{ ask, job, inSight }: Asked,
): Reading<ReturnType<PanelCalls[Name]>> {
	type Answer = ReturnType<PanelCalls[Name]>;
	const [shown, setShown] = useState<Told<Answer> & { job: number }>({ job });
	const [busy, setBusy] = useState(false);
	const count = useRef(0);
	const again = useCallback(() => {
		count.current += 1;
		const mine = count.current;
		const tell = (told: Told<Answer>) => {
			if (mine !== count.current) return;
			setBusy(false);
			setShown((before) =>
				before.job === job && told.failure
					? { ...before, ...told }
					: { job, ...told },
			);
		};
		setBusy(true);
		(ask as (name: Name, job: number) => Promise<Answer>)(name, job).then(
			(answer) => tell({ answer }),
			(error) => tell({ failure: failureOf(error) }),
		);
	}, [ask, name, job]);
	useEffect(() => {
		if (inSight) again();
	}, [again, inSight]);
	const { answer, failure }: Told<Answer> = shown.job === job ? shown : {};
	return { answer, failure, busy, again };
}
