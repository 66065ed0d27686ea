/** Where a person is in a load, and the moves from there. */
import { useState } from "preact/hooks";
import type { MixerLoad, Typed } from "../../sheets/messages";
import type { Line } from "./line";
import { type LoadSteps, type Step, stepsOf } from "./steps";

export interface Walk extends LoadSteps {
	/** The step that is shown; undefined past the last. */
	step?: Step;
	/** Its place, from 0; the number of steps past the last. */
	at: number;
	/** What was worked out for the step after this one. */
	next?: Step;
	/** What the field begins with, once a weight was taken out again. */
	begun: string;
	done(weight: Typed): void;
	undo?: () => void;
	back?: () => void;
	on?: () => void;
}

interface Place {
	/** A step's id, `end`, or nothing where the first open step is meant. */
	id?: string;
	begun: string;
}

/** A reserve, and a step that needs no weight, are over once they were passed or a later one has a weight. */
const isOpen = (
	steps: readonly Step[],
	index: number,
	passed: ReadonlySet<string>,
): boolean => {
	const step = steps[index];
	if (step?.weighed !== "") return false;
	if (!step.optional && step.column !== "reserve") return true;
	return (
		!passed.has(step.id) &&
		!steps.slice(index + 1).some(({ weighed }) => weighed !== "")
	);
};

export function useSteps(line: Line, number: number): Walk {
	const { read, now } = line.shown();
	const [place, setPlace] = useState<Place>({ begun: "" });
	const [passed, setPassed] = useState<ReadonlySet<string>>(new Set());
	const loadIn = (state = now): MixerLoad | undefined =>
		state?.loads.find((load) => load.number === number);
	const [before, load] = [loadIn(read), loadIn()];
	const { steps, mistake }: LoadSteps =
		now && before && load
			? stepsOf(now, before, load)
			: { steps: [], mistake: "" };
	const firstOpen = (from: number, over = passed): number => {
		const open = steps.findIndex(
			(_, index) => index >= from && isOpen(steps, index, over),
		);
		return open < 0 ? steps.length : open;
	};
	const known = steps.findIndex(({ id }) => id === place.id);
	const at =
		place.id === "end" ? steps.length : known < 0 ? firstOpen(0) : known;
	const step = steps[at];
	const go = (index: number, begun = "") =>
		setPlace({ id: steps[index]?.id ?? "end", begun });
	const write = ({ column, row }: Step, weight: Typed) =>
		line.write({ load: number, column, row }, weight);
	const done = (weight: Typed) => {
		if (!step) return;
		const over = new Set([...passed, step.id]);
		setPassed(over);
		if (weight !== "") write(step, weight);
		const next = firstOpen(at + 1, over);
		go(next < steps.length ? next : firstOpenBut(step));
	};
	/** Back to what was skipped, if anything was; else past the last. */
	const firstOpenBut = ({ id }: Step): number => {
		const over = new Set([...passed, id]);
		const open = steps.findIndex(
			(each, index) => each.id !== id && isOpen(steps, index, over),
		);
		return open < 0 ? steps.length : open;
	};
	const last = lastWeighed(steps, at);
	const undone = steps[last];
	return {
		steps,
		mistake,
		step,
		at,
		next: steps[at + 1],
		begun: place.begun,
		done,
		undo:
			undone &&
			(() => {
				setPassed(new Set([...passed].filter((id) => id !== undone.id)));
				write(undone, "");
				go(last, String(undone.weighed));
			}),
		back: at > 0 ? () => go(at - 1) : undefined,
		on: at < steps.length ? () => go(at + 1) : undefined,
	};
}

/** The step whose weight is taken out: this one if it has one, else the nearest before it. */
function lastWeighed(steps: readonly Step[], at: number): number {
	for (let index = Math.min(at, steps.length - 1); index >= 0; index--)
		if (steps[index]?.weighed !== "") return index;
	return -1;
}
