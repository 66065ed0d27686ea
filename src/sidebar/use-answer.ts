/** Something the script is asked for when it is first wanted, and again when a person wants it. */
import { useCallback, useEffect, useState } from "preact/hooks";
import type { PanelCalls } from "../sheets/messages";
import { type Failure, failureOf } from "./failure";
import type { Ask } from "./script";

/** Calls that need nothing said. */
type Plain = "panelStart" | "functionHelp";

interface Asked<Answer> {
	/** The last that came; a later failure does not take it away. */
	answer?: Answer;
	failure?: Failure;
	askAgain(): void;
}

export function useAnswer<Name extends Plain>(
	ask: Ask,
	name: Name,
	wanted = true,
): Asked<ReturnType<PanelCalls[Name]>> {
	const [answer, setAnswer] = useState<ReturnType<PanelCalls[Name]>>();
	const [failure, setFailure] = useState<Failure>();
	const askAgain = useCallback(() => {
		setFailure(undefined);
		(ask as (name: Name) => Promise<ReturnType<PanelCalls[Name]>>)(name).then(
			(came) => setAnswer(() => came),
			(error) => setFailure(failureOf(error)),
		);
	}, [ask, name]);
	const due = wanted && answer === undefined;
	useEffect(() => {
		if (due) askAgain();
	}, [askAgain, due]);
	return { answer, failure, askAgain };
}
