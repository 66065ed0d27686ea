/** Keeps the unfinished form with the script, since another dialog over the panel takes the page away. */
import { useEffect, useRef, useState } from "preact/hooks";
import { failureOf } from "../failure";
import type { Ask } from "../script";

/** A pause in typing. */
const PAUSE_MS = 1_500;

/** Why the last text could not be kept; `""` when it is. */
export function useDraft(ask: Ask, text: string, kept: string): string {
	const [problem, setProblem] = useState("");
	const last = useRef(kept);
	useEffect(() => {
		const keep = () => {
			if (last.current === text) return;
			last.current = text;
			ask("keepDraft", text).then(
				() => setProblem(""),
				(error) => {
					last.current = "\0";
					setProblem(failureOf(error).text);
				},
			);
		};
		const timer = setTimeout(keep, PAUSE_MS);
		// Sooner where the person turns to something else, which may be a dialog over the panel.
		window.addEventListener("blur", keep);
		return () => {
			clearTimeout(timer);
			window.removeEventListener("blur", keep);
		};
	}, [ask, text]);
	return problem;
}
