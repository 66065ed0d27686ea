/** What does not go as it should: the connection, weights not taken, weights typed on the card. */
import type { MixerState } from "../../sheets/messages";
import { Notice } from "../notice";
import { ended } from "../sentence";
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
	return `load ${cell.load}, ${whatText(state, cell)}: ${value === "" ? "taken out" : value}`;
}

function whatText({ ingredients }: MixerState, { column, row }: Cell): string {
	if (column === "mixed") return ingredients[row - 1] ?? "";
	return column === "weights" ? `step ${row} of the plan` : column;
}
