/** The picture on the Quote, and the drawing on the Mold tab. */
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

/** What is put in the place of this name. */
const PUT = {
	picture: { what: "picture", on: "the quote" },
	drawing: { what: "drawing", on: "the Mold tab" },
} as const;

/** Puts a picture at its place, then takes an earlier one away; answers the tab's name. */
export function placePicture(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
	png: string,
	named: keyof typeof PUT = "picture",
): string {
	const { what, on } = PUT[named];
	const [, data] = PNG.exec(String(png)) ?? [];
	if (data === undefined || data.length > MOST)
		throw new InputError(`The ${what} must be a PNG of at most 2 MB`);
	takeTurn(spreadsheet);
	jobRanges(spreadsheet, job);
	const place = namedCells(spreadsheet, `${jobPrefix(job)}${named}`);
	const sheet = place.getSheet();
	const [column, row] = [place.getColumn(), place.getRow()];
	const name = sheet.getName();
	const earlier = sheet
		.getImages()
		.filter((image) => image.getAltTextTitle() === TITLE);
	const blob = Utilities.newBlob(
		Utilities.base64Decode(data),
		"image/png",
		`${what}.png`,
	);
	let put: GoogleAppsScript.Spreadsheet.OverGridImage | undefined;
	wholly(`The ${what} was not put on ${on}`, [
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
		`The new ${what} is on ${on}, and an earlier one is still under it: put it there again`,
		earlier.map((image) => () => image.remove()),
	);
	return name;
}
