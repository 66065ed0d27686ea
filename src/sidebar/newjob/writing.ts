/** Having the script write a job: one at a time, and what came of it. */
import { useState } from "preact/hooks";
import type { JobMade } from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";

export type Writing =
	| { state: "idle" }
	| { state: "busy" }
	| { state: "failed"; failure: Failure }
	| { state: "made"; made: JobMade };

export function useWriting(): {
	writing: Writing;
	write(work: () => Promise<JobMade>): void;
	reset(): void;
} {
	const [writing, setWriting] = useState<Writing>({ state: "idle" });
	return {
		writing,
		write: (work) => {
			if (writing.state === "busy") return;
			setWriting({ state: "busy" });
			work().then(
				(made) => setWriting({ state: "made", made }),
				(error) => setWriting({ state: "failed", failure: failureOf(error) }),
			);
		},
		reset: () => setWriting({ state: "idle" }),
	};
}
