/** Keeps finished pours in the Pour log. */
import { isFinished, isWeighed, pourOf } from "../../job/answers/card/loadpour";
import { logRow } from "../../job/answers/card/logrow";
import { isKnown, saying } from "../../job/answers/known";
import { wholeOf } from "../../job/answers/whole";
import { cellOf } from "../../job/cells/jobslots";
import { LOGGED, type LoggedRow } from "../../job/fields/log";
import type { Recorded } from "../messages";
import { loggedLoads } from "../reading/loggedloads";
import { type JobRead, readJob } from "../reading/readjob";
import { studioRegion } from "../reading/readstudio";
import { addRows, type GrowingTable, growingTable } from "../writing/newrows";
import { takeTurn } from "./taketurn";

/** Every load of the job that is finished and is not there yet. */
export function logPours(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	number: number,
): Recorded {
	takeTurn(spreadsheet);
	const read = readJob(spreadsheet, number);
	const { units } = read.studio;
	const log = studioRegion(spreadsheet, "pours");
	const there = loggedLoads(log, units, number);
	const loads = toLog(read).filter(({ load }) => !there.includes(load));
	const ready = loads.flatMap(({ load, row }) => (row ? [{ load, row }] : []));
	if (ready.length > 0) {
		const table = growingTable("pours", log, LOGGED, units);
		addRows(
			table,
			ready.map(({ row }) => rowOf(row, table)),
		);
	}
	return {
		loads: ready.map(({ load }) => load),
		left: loads.flatMap(({ left }) => (left ? [left] : [])),
	};
}

/** What is to be logged of one load, or why it is left out. */
interface ToLog {
	load: number;
	row?: LoggedRow;
	left?: string;
}

function toLog({ number, job, studio }: JobRead): ToLog[] {
	const whole = wholeOf(studio.file, job);
	return whole.cards().map((card): ToLog => {
		const { load } = card;
		const pour = pourOf(whole.basis.given, load);
		if (!isWeighed(pour))
			return { load, left: `Load ${load} has no weights yet` };
		if (!isFinished(pour))
			return {
				load,
				left: `Load ${load} is not finished: type yes beside Finished on the Pour card once it is`,
			};
		const { cost } = whole.cost();
		const row = logRow(whole.basis, card, { job: number, cost });
		return isKnown(row)
			? { load, row: row.is }
			: { load, left: `Load ${load} cannot be worked out yet. ${saying(row)}` };
	});
}

const rowOf = (row: LoggedRow, { place: { columns } }: GrowingTable) =>
	Object.fromEntries(
		Object.entries(LOGGED).map(([key, field]) => [
			columns[key] ?? -1,
			cellOf(field, row[key as keyof LoggedRow]),
		]),
	);
