/** Where a person is in a load, and the moves from there. */
import { useState } from "preact/hooks";
import type { Typed } from "../../job/fields/field";
import type { Line } from "./line";
import type { Step } from "./load-steps";
import type { MixerLoad } from "./mixer-loads";

export interface Walk {
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

/** A reading as it stands on the card. */
export const onCard = ({ perReading }: Step, reading: Typed): Typed =>
	typeof reading === "number" ? reading * perReading : reading;

interface Place {
	/** A step's id, `end`, or nothing where the first open step is meant. */
	id?: string;
	begun: string;
}

const isReserve = ({ cell }: Step): boolean =>
	"step" in cell && cell.step === 0;

/** A reserve, and a step that needs no weight, are over once they were passed or a later one has a weight. */
const isOpen = (
	steps: readonly Step[],
	index: number,
	passed: ReadonlySet<string>,
): boolean => {
	const step = steps[index];
	if (step?.weighed !== "") return false;
	if (!step.optional && !isReserve(step)) return true;
	return (
		!passed.has(step.id) &&
		!steps.slice(index + 1).some(({ weighed }) => weighed !== "")
	);
};

export function useWalk(line: Line, { card, steps }: MixerLoad): Walk {
	const [place, setPlace] = useState<Place>({ begun: "" });
	const [passed, setPassed] = useState<ReadonlySet<string>>(new Set());
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
	const write = (of: Step, reading: Typed) =>
		line.write({ load: card.load, cell: of.cell }, onCard(of, reading));
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
