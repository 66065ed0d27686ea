/** Times of day as the Pour card holds them: `14:05`. */
import { useEffect, useState } from "preact/hooks";
import type { Typed } from "../../sheets/messages";

const DAY = 24 * 60;

const two = (number: number): string => String(number).padStart(2, "0");

export const timeOfDay = (date: Date): string =>
	`${two(date.getHours())}:${two(date.getMinutes())}`;

const minutesOf = (time: string): number | undefined => {
	const [, hours, minutes] = /^(\d{1,2}):(\d{2})/.exec(time) ?? [];
	return hours === undefined ? undefined : Number(hours) * 60 + Number(minutes);
};

/** Minutes from a time of day until now; undefined where it is none. */
export function minutesSince(time: Typed, now: string): number | undefined {
	const from = minutesOf(String(time));
	const at = minutesOf(now);
	if (from === undefined || at === undefined) return undefined;
	// Past midnight the clock begins again.
	const gone = (at - from + DAY) % DAY;
	return gone > DAY / 2 ? gone - DAY : gone;
}

/** Minutes left of the working time, negative when it is over; undefined while nobody knows. */
export function minutesLeft(
	waterIn: Typed,
	working: Typed,
	now: string,
): number | undefined {
	const gone = minutesSince(waterIn, now);
	return gone === undefined || typeof working !== "number"
		? undefined
		: Math.floor(working - gone);
}

/** The time of day now, kept up to date. */
export function useTimeOfDay(): string {
	const [now, setNow] = useState(() => timeOfDay(new Date()));
	useEffect(() => {
		const timer = setInterval(() => setNow(timeOfDay(new Date())), 5_000);
		return () => clearInterval(timer);
	}, []);
	return now;
}
