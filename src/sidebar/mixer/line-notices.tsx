/** What does not go as it should: the connection, weights not taken, weights typed on the card. */

import { correctionKey } from "../../job/cells/jobcells";
import type { JobFile } from "../../job/jobfile";
import type { CardCell } from "../../sheets/messages";
import { Notice } from "../notice";
import { ended } from "../sentence";
import type { Line } from "./line";
import { type Place, typedAt } from "./weighings";

const countText = (count: number): string =>
	count === 1 ? "1 entry is" : `${count} entries are`;

export function LineNotices({ line }: { line: Line }) {
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
							.concat(taken.map((place) => placeText(now.job, place)))
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

function placeText(job: JobFile, place: Place): string {
	const typed = typedAt(job, place);
	return `load ${place.load}, ${cellText(place.cell)}: ${typed === "" ? "taken out" : typed}`;
}

function cellText(cell: CardCell): string {
	if ("weighed" in cell) return cell.weighed;
	if ("note" in cell) return cell.note;
	if ("correction" in cell)
		return correctionKey(cell.correction, cell.part).toLowerCase();
	return cell.step === 0 ? "reserve" : `step ${cell.step} of the plan`;
}
