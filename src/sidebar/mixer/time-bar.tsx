/** The clock of a load: when the water went in, and how long the mix can still be worked. */
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
import { minutesLeft, minutesSince, useTimeOfDay } from "./clock";
import type { Line } from "./line";

/** From here it is said loudly. */
const SOON = 5;

interface Props {
	state: MixerState;
	load: MixerLoad;
	line: Line;
	/** Past the last step the last tone is placed. */
	finished: boolean;
	/** The ingredients are weighed: they go into the mixer. */
	mixing: boolean;
}

export function TimeBar({ state, load, line, finished, mixing }: Props) {
	const now = useTimeOfDay();
	const note = (name: "waterIn" | "lastTone") => () =>
		line.write({ load: load.number, column: name, row: 1 }, now);
	const { waterIn, lastTone } = load.fresh;
	if (waterIn === "")
		return mixing ? (
			<button type="button" class="large" onClick={note("waterIn")}>
				Water goes in now
			</button>
		) : null;
	const left = minutesLeft(waterIn, state.workingMinutes, now);
	const soon = left !== undefined && left <= SOON;
	return (
		<>
			{lastTone === "" && (
				<p class={soon ? "caution big" : "time"}>
					{left === undefined ? sinceText(waterIn, now) : leftText(left)}
				</p>
			)}
			{finished && lastTone === "" && (
				<button type="button" class="large" onClick={note("lastTone")}>
					Last tone placed now
				</button>
			)}
			{lastTone !== "" && (
				<p class="time">
					Water in {waterIn}, last tone placed {lastTone}.
				</p>
			)}
		</>
	);
}

/** Without a mix temperature nobody knows how long it can be worked. */
function sinceText(waterIn: Typed, now: string): string {
	const gone = minutesSince(waterIn, now);
	const since =
		gone === undefined
			? `Water in: ${waterIn}.`
			: `${gone} min since the water went in.`;
	return `${since} Note the mix temperature to see the time left.`;
}

const leftText = (left: number): string =>
	left >= 0
		? `${left} min left to work the mix`
		: `Working time is over by ${-left} min`;
