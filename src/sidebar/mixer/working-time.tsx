/** The clock of a load: when the water went in, and how long the mix can still be worked. */
import { useEffect, useState } from "preact/hooks";
import { isKnown, type Known, orNull, saying } from "../../job/answers/known";
import type { Typed } from "../../job/fields/field";
import type { PourRow } from "../../job/fields/pour";
import type { JobState } from "../../sheets/messages";
import { ended } from "../sentence";
import type { Line } from "./line";
import type { MixerLoad } from "./mixer-loads";
import { typedAt } from "./weighings";

/** From here it is said loudly. */
const SOON = 5;
/** Minutes. */
const DAY = 24 * 60;

interface Props {
	state: JobState;
	load: MixerLoad;
	line: Line;
	/** Past the last step the last tone is placed. */
	finished: boolean;
	/** The ingredients are weighed: they go into the mixer. */
	mixing: boolean;
}

export function WorkingTime(props: Props) {
	const { state, load, line, finished, mixing } = props;
	const now = useTimeOfDay();
	const { card } = load;
	const place = (note: keyof PourRow) => ({ load: card.load, cell: { note } });
	const note = (name: keyof PourRow) => () => line.write(place(name), now);
	const waterIn = typedAt(state.job, place("waterInAt"));
	const placed = typedAt(state.job, place("lastPlacedAt"));
	if (waterIn === "")
		return mixing ? (
			<button type="button" class="large" onClick={note("waterInAt")}>
				Water goes in now
			</button>
		) : null;
	const { workingMinutes } = card.times;
	const left = isKnown(workingMinutes)
		? minutesLeft(waterIn, workingMinutes.is, now)
		: undefined;
	const needed = orNull(card.times.minutesLeft) ?? 0;
	const soon = left !== undefined && (left <= SOON || left < needed);
	return (
		<>
			{placed === "" && (
				<p class={soon ? "caution big" : "time"}>
					{left === undefined
						? sinceText(waterIn, now, workingMinutes)
						: `${sinceText(waterIn, now, workingMinutes)} ${leftText(left)}${needText(card.times.minutesLeft)}`}
				</p>
			)}
			{finished && placed === "" && (
				<button type="button" class="large" onClick={note("lastPlacedAt")}>
					Last tone placed now
				</button>
			)}
			{placed !== "" && (
				<p class="time">
					Water in {waterIn}, last tone placed {placed}.
				</p>
			)}
		</>
	);
}

/** Without a mix temperature nobody knows how long it can be worked. */
function sinceText(
	waterIn: Typed,
	now: string,
	working: Known<number>,
): string {
	const gone = minutesSince(waterIn, now);
	const since =
		gone === undefined
			? `Water in: ${waterIn}.`
			: `${gone} min since the water went in.`;
	const why = saying(working);
	return why ? `${since} Time left: ${ended(why)}` : since;
}

/** What the work that is left takes. */
const needText = (needed: Known<number>): string =>
	isKnown(needed) ? `; what is left takes about ${Math.ceil(needed.is)}` : "";

const leftText = (left: number): string =>
	left >= 0
		? `${left} min left to work the mix`
		: `Working time is over by ${-left} min`;

const two = (number: number): string => String(number).padStart(2, "0");

/** As the Pour card holds it: `14:05`. */
export const timeOfDay = (date: Date): string =>
	`${two(date.getHours())}:${two(date.getMinutes())}`;

/** Minutes after midnight, of a text or of a cell's share of a day. */
function minutesOf(time: Typed): number | undefined {
	if (typeof time === "number") return Math.round((time % 1) * DAY);
	const [, hours, minutes] = /^(\d{1,2}):(\d{2})/.exec(time) ?? [];
	return hours === undefined ? undefined : Number(hours) * 60 + Number(minutes);
}

/** Minutes from a time of day until now; undefined where it is none. */
export function minutesSince(time: Typed, now: string): number | undefined {
	const from = minutesOf(time);
	const at = minutesOf(now);
	if (from === undefined || at === undefined) return undefined;
	// Past midnight the clock begins again.
	const gone = (at - from + DAY) % DAY;
	return gone > DAY / 2 ? gone - DAY : gone;
}

/** Whole minutes left of the working time, negative when it is over; undefined where the time is none. */
export function minutesLeft(
	waterIn: Typed,
	working: number,
	now: string,
): number | undefined {
	const gone = minutesSince(waterIn, now);
	return gone === undefined ? undefined : Math.floor(working - gone);
}

/** The time of day now, kept up to date. */
function useTimeOfDay(): string {
	const [now, setNow] = useState(() => timeOfDay(new Date()));
	useEffect(() => {
		const timer = setInterval(() => setNow(timeOfDay(new Date())), 5_000);
		return () => clearInterval(timer);
	}, []);
	return now;
}
