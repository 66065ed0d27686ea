/** Keeps finished pours in the Pour log. */
import { toRecord } from "../../job/answers/card/torecord";
import { wholeOf } from "../../job/answers/whole";
import { cellOf } from "../../job/cells/jobslots";
import { LOGGED, type LoggedRow } from "../../job/fields/log";
import type { Recorded } from "../messages";
import { loggedRows } from "../reading/loggedloads";
import { readJob } from "../reading/readjob";
import { studioRegion } from "../reading/readstudio";
import {
	addRows,
	type GrowingTable,
	growingTable,
	replaceRow,
} from "../writing/newrows";
import { takeTurn } from "./taketurn";

/** Every load of the job that is finished and is not there yet, and those whose row says something else by now. */
export function logPours(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	number: number,
): Recorded {
	takeTurn(spreadsheet);
	const { studio, job } = readJob(spreadsheet, number);
	const log = studioRegion(spreadsheet, "pours");
	const there = loggedRows(log, studio.units, number);
	const loads = toRecord(
		wholeOf(studio.file, job),
		number,
		there.map(({ row }) => row),
	);
	const ready = loads.flatMap(({ load, row, isAgain }) =>
		row ? [{ load, row, isAgain }] : [],
	);
	const [again, anew] = [true, false].map((isAgain) =>
		ready.filter((one) => Boolean(one.isAgain) === isAgain),
	) as [typeof ready, typeof ready];
	if (ready.length > 0) {
		const table = growingTable("pours", log, LOGGED, studio.units);
		for (const { load, row } of again) {
			const was = there.find((one) => Number(one.row.load) === load);
			if (was) replaceRow(table, was.at, rowOf(row, table));
		}
		if (anew.length > 0)
			addRows(
				table,
				anew.map(({ row }) => rowOf(row, table)),
			);
	}
	return {
		loads: anew.map(({ load }) => load),
		...(again.length > 0 && { again: again.map(({ load }) => load) }),
		left: loads.flatMap(({ left }) => (left ? [left] : [])),
	};
}

const rowOf = (row: LoggedRow, { place: { columns } }: GrowingTable) =>
	Object.fromEntries(
		Object.entries(LOGGED).map(([key, field]) => [
			columns[key] ?? -1,
			cellOf(field, row[key as keyof LoggedRow]),
		]),
	);
