/** The picture on the Quote. */
import { InputError } from "../../calc/errors";
import { jobPrefix } from "../reading/rangenames";
import { jobRanges } from "../reading/readjob";
import { namedCells } from "../reading/regiongrids";
import { throughout, wholly } from "../writing/allornothing";
import { takeTurn } from "./taketurn";

const PNG = /^data:image\/png;base64,([A-Za-z0-9+/]+=*)$/;
/** Two megabytes is what Sheets takes. */
const MOST = 2_700_000;
/** By it the picture is known from one that a person put there. */
const TITLE = "Tonefold";

/** Height of a new tab's rows, in pixels. */
const ROW_PX = 21;

/** Makes the picture no higher than its place: what stands below is for the client too. */
function fitInto(
	picture: GoogleAppsScript.Spreadsheet.OverGridImage | undefined,
	most: number,
): void {
	const height = picture?.getHeight() ?? 0;
	if (!picture || height <= most) return;
	picture
		.setWidth(Math.round((picture.getWidth() * most) / height))
		.setHeight(most);
}

/** Puts the picture at its place, then takes an earlier one away; answers the tab's name. */
export function placePicture(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
	png: string,
): string {
	const [, data] = PNG.exec(String(png)) ?? [];
	if (data === undefined || data.length > MOST)
		throw new InputError("The picture must be a PNG of at most 2 MB");
	takeTurn(spreadsheet);
	jobRanges(spreadsheet, job);
	const place = namedCells(spreadsheet, `${jobPrefix(job)}picture`);
	const sheet = place.getSheet();
	const [column, row] = [place.getColumn(), place.getRow()];
	const name = sheet.getName();
	const earlier = sheet
		.getImages()
		.filter((image) => image.getAltTextTitle() === TITLE);
	const blob = Utilities.newBlob(
		Utilities.base64Decode(data),
		"image/png",
		"picture.png",
	);
	let put: GoogleAppsScript.Spreadsheet.OverGridImage | undefined;
	wholly("The picture was not put on the quote", [
		{
			act: () => {
				put = sheet.insertImage(blob, column, row);
			},
			undo: () => put?.remove(),
		},
		{ act: () => put?.setAltTextTitle(TITLE), undo: () => undefined },
		{
			act: () => fitInto(put, place.getNumRows() * ROW_PX),
			undo: () => undefined,
		},
	]);
	throughout(
		"The new picture is on the quote, and an earlier one is still under it: put it there again",
		earlier.map((image) => () => image.remove()),
	);
	return name;
}
