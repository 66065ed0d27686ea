/** The line to the chosen job's Pour card, kept up to date while it is in sight. */
import { useEffect, useReducer, useRef } from "preact/hooks";
import type { Ask } from "../script";
import { type Line, openLine } from "./line";

const LOOK_MS = 10_000;

/** Lines stay open: what another job's load has not written yet goes on being written. */
export function useLine(
	ask: Ask,
	job: number,
	inSight: boolean,
): Line | undefined {
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
