/** Which job somebody looks at. */
import { jobOfName } from "../reading/rangenames";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** The number of the job whose tab is open, whatever the tab is called; 0 when it is a tab of none. */
export function openJob(spreadsheet: Spreadsheet): number {
	const sheet = spreadsheet.getActiveSheet();
	const id = sheet.getSheetId();
	// most tabs still begin with their number: its names are asked first
	const likely = Number.parseInt(sheet.getName(), 10);
	const ranges = spreadsheet.getNamedRanges().flatMap((range) => {
		const job = jobOfName(range.getName());
		return job === undefined ? [] : [{ job, range }];
	});
	const found = [
		...ranges.filter(({ job }) => job === likely),
		...ranges.filter(({ job }) => job !== likely),
	].find(({ range }) => range.getRange().getSheet().getSheetId() === id);
	return found?.job ?? 0;
}
