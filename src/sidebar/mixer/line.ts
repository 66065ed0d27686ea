/** The line to one job's Pour card: what is weighed goes to it in order, and nothing is given up. */
import type {
	MixerState,
	Typed,
	Weighed,
	Weighing,
} from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";
import type { Ask } from "../script";
import {
	type Cell,
	changedCells,
	sameCell,
	valueAt,
	withWeighings,
} from "./overlay";

/** What is shown of the line. */
export interface Shown {
	/** As the script last read it. */
	read?: MixerState;
	/** With what is still on the way. */
	now?: MixerState;
	/** How many weights are not on the card yet. */
	waiting: number;
	/** Why the last call did not go through. */
	failure?: Failure;
	/** Sentences on weights that the card did not take. */
	refused: readonly string[];
	/** Weights that somebody typed on the card meanwhile. */
	taken: readonly Cell[];
}

export interface Line {
	shown(): Shown;
	/** Reads the card again. */
	look(): void;
	write(cell: Cell, value: Typed): void;
	choose(load: number): void;
	/** Tries at once what did not go through. */
	tryNow(): void;
	/** The person has read what was refused and taken up. */
	seen(): void;
}

/** An answer that takes longer is taken for lost: writing the same again changes nothing. */
const LOST_MS = 45_000;
const FIRST_WAIT_MS = 2_000;
const LONGEST_WAIT_MS = 15_000;

const inTime = <T>(answer: Promise<T>): Promise<T> =>
	new Promise((resolve, reject) => {
		const timer = setTimeout(
			() => reject(new Error("NetworkError: no answer in time")),
			LOST_MS,
		);
		answer.then(resolve, reject).finally(() => clearTimeout(timer));
	});

/** Why the card did not take it, and what it was: it stands nowhere else now. */
const refusedText = ({ value }: Weighing, { why }: Weighed): string =>
	value === "" ? why : `${why}; ${value} was not written`;

/** Opens the line and reads the card. `changed` is called whenever something else is to be shown. */
export function openLine(ask: Ask, job: number, changed: () => void): Line {
	let read: MixerState | undefined;
	let queue: readonly Weighing[] = [];
	let sending: Weighing | undefined;
	let failure: Failure | undefined;
	let refused: readonly string[] = [];
	let taken: readonly Cell[] = [];
	let wait = FIRST_WAIT_MS;
	let timer: ReturnType<typeof setTimeout> | undefined;
	let looking = false;
	/** Counts answers to writes: what was read before one of them is old. */
	let written = 0;

	const now = () => read && withWeighings(read, queue);

	/** Takes over what the script read; `before` is what was shown until then. */
	function adopt(next: MixerState, before = now()): void {
		read = next;
		const after = now();
		if (before && after)
			taken = [
				...taken.filter((cell) => !queue.some((each) => sameCell(each, cell))),
				...changedCells(before, after),
			];
	}

	async function asked(work: () => Promise<MixerState>): Promise<void> {
		if (looking) return;
		looking = true;
		const at = written;
		try {
			const next = await inTime(work());
			if (at === written && !sending) adopt(next);
			if (queue.length === 0) failure = undefined;
		} catch (error) {
			failure = failureOf(error);
		}
		looking = false;
		changed();
	}

	function answered(weighing: Weighing, answer: Weighed): void {
		written += 1;
		const before = now();
		queue = queue.filter((each) => each !== weighing);
		const holds = valueAt(answer.state, weighing);
		if (!answer.written && holds !== weighing.value)
			refused = [...new Set([...refused, refusedText(weighing, answer)])];
		adopt(answer.state, before);
		failure = undefined;
		wait = FIRST_WAIT_MS;
	}

	async function send(): Promise<void> {
		const [weighing] = queue;
		if (sending || !weighing) return;
		clearTimeout(timer);
		sending = weighing;
		try {
			answered(weighing, await inTime(ask("mixerWeigh", weighing)));
			sending = undefined;
			send();
		} catch (error) {
			sending = undefined;
			failure = failureOf(error);
			timer = setTimeout(send, wait);
			wait = Math.min(wait * 2, LONGEST_WAIT_MS);
		}
		changed();
	}

	const look = () => void asked(() => ask("mixerState", job));
	look();
	return {
		shown: () => ({
			read,
			now: now(),
			waiting: queue.length,
			failure,
			refused,
			taken,
		}),
		look,
		choose: (load) =>
			// What the cells work out for this load can be read only in another call.
			void asked(() => ask("mixerChoose", job, load)).then(look),
		write(cell, value) {
			const state = now();
			if (!state || valueAt(state, cell) === value) return;
			const replaced = queue.find(
				(each) => each !== sending && sameCell(each, cell),
			);
			const weighing: Weighing = {
				...cell,
				job,
				value,
				believed: replaced ? replaced.believed : valueAt(state, cell),
				planNumber: state.planNumber,
			};
			queue = [...queue.filter((each) => each !== replaced), weighing];
			taken = taken.filter((each) => !sameCell(each, cell));
			send();
			changed();
		},
		tryNow() {
			wait = FIRST_WAIT_MS;
			if (queue.length > 0) send();
			else look();
		},
		seen() {
			refused = [];
			taken = [];
			changed();
		},
	};
}
