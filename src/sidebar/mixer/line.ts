/** The line to one job's Pour card: what is weighed goes to it in order, and nothing is given up. */
import { basisOf } from "../../job/answers/basis";
import { planNumberOf } from "../../job/answers/card/planfit";
import { orNull } from "../../job/answers/known";
import type { Typed } from "../../job/fields/field";
import type { JobState, Weighed, Weighing } from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";
import type { Ask } from "../script";
import {
	changedPlaces,
	type Place,
	samePlace,
	typedAt,
	withWeighing,
} from "./weighings";

/** What is shown of the line. */
export interface Shown {
	/** As the script last read it, with what is still on the way; the same object until something changes. */
	now?: JobState;
	/** How many weights are not on the card yet. */
	waiting: number;
	/** Why the last call did not go through. */
	failure?: Failure;
	/** Sentences on weights that the card did not take. */
	refused: readonly string[];
	/** Weights that somebody typed on the card meanwhile. */
	taken: readonly Place[];
}

export interface Line {
	shown(): Shown;
	/** Reads the card again. */
	look(): void;
	write(place: Place, value: Typed): void;
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

/** The state once all of these are written. */
const withAll = (
	state: JobState,
	weighings: readonly Weighing[],
): JobState => ({
	...state,
	job: weighings.reduce(withWeighing, state.job),
});

const planNumber = ({ studio, job }: JobState): Typed =>
	orNull(planNumberOf(basisOf(studio, job))) ?? "";

/** Opens the line and reads the card. `changed` is called whenever something else is to be shown. */
export function openLine(ask: Ask, job: number, changed: () => void): Line {
	let read: JobState | undefined;
	let now: JobState | undefined;
	let queue: readonly Weighing[] = [];
	let sending: Weighing | undefined;
	let failure: Failure | undefined;
	let refused: readonly string[] = [];
	let taken: readonly Place[] = [];
	let wait = FIRST_WAIT_MS;
	let timer: ReturnType<typeof setTimeout> | undefined;
	let looking = false;
	/** Counts answers to writes: what was read before one of them is old. */
	let written = 0;

	/** Shows what the script read, with what it has not written yet. */
	function adopt(next: JobState): void {
		const before = now;
		read = next;
		now = withAll(read, queue);
		if (before)
			taken = [
				...taken.filter((one) => !queue.some((each) => samePlace(each, one))),
				...changedPlaces(before.job, now.job),
			];
	}

	async function asked(work: () => Promise<JobState>): Promise<void> {
		const at = written;
		try {
			const next = await inTime(work());
			if (at === written && !sending) adopt(next);
			if (queue.length === 0) failure = undefined;
		} catch (error) {
			failure = failureOf(error);
		}
		changed();
	}

	function answered(weighing: Weighing, answer: Weighed): void {
		written += 1;
		queue = queue.filter((each) => each !== weighing);
		const holds = typedAt(answer.state.job, weighing);
		if (!answer.written && holds !== weighing.value)
			refused = [...new Set([...refused, refusedText(weighing, answer)])];
		adopt(answer.state);
		failure = undefined;
		wait = FIRST_WAIT_MS;
	}

	async function send(): Promise<void> {
		const [weighing] = queue;
		if (sending || !weighing) return;
		clearTimeout(timer);
		sending = weighing;
		try {
			answered(weighing, await inTime(ask("weigh", weighing)));
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

	function look(): void {
		if (looking) return;
		looking = true;
		asked(() => ask("jobState", job)).finally(() => {
			looking = false;
		});
	}
	look();
	return {
		shown: () => ({ now, waiting: queue.length, failure, refused, taken }),
		look,
		choose: (load) => void asked(() => ask("chooseLoad", job, load)),
		write(place, value) {
			if (!read || !now || typedAt(now.job, place) === value) return;
			const replaced = queue.find(
				(each) => each !== sending && samePlace(each, place),
			);
			const weighing: Weighing = {
				...place,
				job,
				value,
				believed: replaced ? replaced.believed : typedAt(now.job, place),
				planNumber: planNumber(now),
			};
			queue = [...queue.filter((each) => each !== replaced), weighing];
			now = withAll(read, queue);
			taken = taken.filter((each) => !samePlace(each, place));
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
