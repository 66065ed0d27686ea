/** What does not go as it should: the connection, weights not taken, weights typed on the card. */
import type { MixerState } from "../../sheets/messages";
import { ended, Notice } from "../notice";
import type { Line } from "./line";
import { type Cell, valueAt } from "./overlay";

const countText = (count: number): string =>
	count === 1 ? "1 entry is" : `${count} entries are`;

export function StateNotices({ line }: { line: Line }) {
	const { now, waiting, failure, refused, taken } = line.shown();
	return (
		<>
			{failure && (
				<Notice kind="warning">
					<p>
						{failure.text}
						{waiting > 0 &&
							` ${countText(waiting)} kept here and written as soon as it can be. Go on weighing, and leave this panel open.`}
					</p>
					<button type="button" onClick={line.tryNow}>
						Try now
					</button>
				</Notice>
			)}
			{refused.length > 0 && (
				<Notice kind="warning">
					<p class="lines">{refused.map(ended).join("\n")}</p>
					<button type="button" onClick={line.seen}>
						Seen
					</button>
				</Notice>
			)}
			{now && taken.length > 0 && (
				<Notice kind="plain">
					<p class="lines">
						{["Typed on the Pour card:"]
							.concat(taken.map((cell) => cellText(now, cell)))
							.join("\n")}
					</p>
					<button type="button" onClick={line.seen}>
						Seen
					</button>
				</Notice>
			)}
		</>
	);
}

function cellText(state: MixerState, cell: Cell): string {
	const value = valueAt(state, cell);
	const what = {
		mixed: state.ingredients[cell.row - 1] ?? "",
		reserve: "reserve",
		weights: `step ${cell.row} of the plan`,
		fresh: "a note",
	}[cell.column];
	return `load ${cell.load}, ${what}: ${value === "" ? "taken out" : value}`;
}
