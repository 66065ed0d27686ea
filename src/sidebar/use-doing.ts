/** What the script is to do in the workbook, one thing at a time, and what came of it. */
import { useState } from "preact/hooks";
import { failureOf } from "./failure";

export interface Told {
	kind: "plain" | "warning";
	text: string;
}

interface Doing {
	busy: boolean;
	/** Of the last thing done for this job. */
	told?: Told;
	/** `look` says where a person sees whether it was done, when the answer was lost. */
	run<Answer>(
		work: () => Promise<Answer>,
		done: (answer: Answer) => string,
		look: string,
	): Promise<void>;
}

export function useDoing(job = 0): Doing {
	const [busy, setBusy] = useState(false);
	const [last, setLast] = useState<Told & { job: number }>();
	return {
		busy,
		told: last?.job === job ? last : undefined,
		async run(work, done, look) {
			if (busy) return;
			setBusy(true);
			setLast(undefined);
			const told = await work().then(
				(answer): Told => ({ kind: "plain", text: done(answer) }),
				(error) => notDone(error, look),
			);
			setLast({ job, ...told });
			setBusy(false);
		},
	};
}

function notDone(error: unknown, look: string): Told {
	const { text, outcome } = failureOf(error);
	return {
		kind: "warning",
		text: outcome === "unknown" ? `${text} ${look}` : text,
	};
}
