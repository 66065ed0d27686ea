/** Keeps the unfinished form with the script, since another dialog over the panel takes the page away. */
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { failureOf } from "../failure";
import type { Ask } from "../script";

/** A pause in typing. */
const PAUSE_MS = 1_500;

/** Why the last text could not be kept; `""` when it is. */
export function useDraft(ask: Ask, text: string, kept: string): string {
	const [problem, setProblem] = useState("");
	const last = useRef(kept);
	const now = useRef(text);
	now.current = text;
	const keep = useCallback(() => {
		const sent = now.current;
		if (last.current === sent) return;
		last.current = sent;
		ask("keepDraft", sent).then(
			() => setProblem(""),
			(error) => {
				last.current = "\0";
				setProblem(failureOf(error).text);
			},
		);
	}, [ask]);
	useEffect(() => {
		const timer = setTimeout(keep, text === "" ? 0 : PAUSE_MS);
		return () => clearTimeout(timer);
	}, [keep, text]);
	useEffect(() => {
		// Sooner where the person turns to something else, which may be a dialog over the panel.
		window.addEventListener("blur", keep);
		return () => window.removeEventListener("blur", keep);
	}, [keep]);
	return problem;
}
