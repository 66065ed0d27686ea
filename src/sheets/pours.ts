/** Keeps finished pours in the Pour log. */
import type { MixerLoad, Recorded } from "./messages";
import { mixerOf } from "./mixer";
import { isWeighed, pourRow } from "./pourrow";
import { readJob } from "./readjob";
import { rowsAdded } from "./rows";
import { takeTurn } from "./turn";

/** Every load of the job that was weighed and is not there yet. */
export function poursRecorded(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): Recorded {
	takeTurn(spreadsheet);
	const read = readJob(spreadsheet, job, ["Job", "Tones", "Pour card", "Cost"]);
	const state = mixerOf(read);
	const open = state.loads.filter(({ recorded }) => !recorded);
	const rows = open
		.filter(isWeighed)
		.map((load) => ({ load, row: pourRow(read, state, load) }));
	const ready = rows.flatMap(({ load, row }) => (row ? [{ load, row }] : []));
	if (ready.length > 0)
		rowsAdded(
			read.studio,
			"Pour log",
			ready.map(({ row }) => row),
			read.studio.pours(),
		);
	return {
		loads: ready.map(({ load }) => load.number),
		left: [
			...open.filter((load) => !isWeighed(load)).map(notWeighed),
			...rows
				.filter(({ row }) => !row)
				.map(
					({ load }) =>
						`Load ${load.number} cannot be worked out yet: choose it on the Pour card and read what is wrong there`,
				),
		],
	};
}

const notWeighed = ({ number }: MixerLoad): string =>
	`Load ${number} has no weights yet`;
