/** Pictures over the grid: `Sheet.insertImage`, `getImages`, `OverGridImage`. */
import type { Worksheet } from "@univerjs/core";
import type { PictureNote } from "../contract";
import { imageSize } from "../image-size";
import { type BlobData, blobData } from "./blob";
import { type Call, signature } from "./call";
import { placeBySize } from "./place";

type Picture = GoogleAppsScript.Spreadsheet.OverGridImage;
type Methods = Pick<
	Picture,
	| "getAltTextTitle"
	| "getHeight"
	| "getWidth"
	| "remove"
	| "setAltTextTitle"
	| "setHeight"
	| "setWidth"
>;

const KIND = "OverGridImage";
/** From memory: the platform refuses larger ones. */
const MOST_BYTES = 2 * 1024 * 1024;
const MOST_PIXELS = 1_000_000;

const count = (value: unknown, method: string, least: number): number => {
	if (typeof value !== "number" || !Number.isInteger(value) || value < least)
		throw signature([value], `SpreadsheetApp.${method}`);
	return value;
};

function pictureService(call: Call, note: PictureNote): Picture {
	const put = (part: Partial<PictureNote>) => {
		call.written = true;
		Object.assign(note, part);
		return served;
	};
	const methods: Methods = {
		getAltTextTitle: () => note.title,
		getHeight: () => note.height,
		getWidth: () => note.width,
		remove() {
			call.written = true;
			const { pictures } = call.host;
			const index = pictures.indexOf(note);
			if (index < 0) throw new Error("The image has already been removed.");
			pictures.splice(index, 1);
		},
		setAltTextTitle(title: unknown) {
			if (typeof title !== "string")
				throw signature([title], `SpreadsheetApp.${KIND}.setAltTextTitle`);
			return put({ title });
		},
		setHeight: (height) =>
			put({ height: count(height, `${KIND}.setHeight`, 1) }),
		setWidth: (width) => put({ width: count(width, `${KIND}.setWidth`, 1) }),
	};
	const served: Picture = call.serve<Picture>(KIND, methods, note);
	return served;
}

/** The picture of a blob as an address that holds all of it. @throws Error for what is no picture, or too large. */
function pictureOf({ bytes, contentType }: BlobData) {
	if (!/^image\/(?:png|jpeg|gif)$/.test(contentType ?? ""))
		throw new Error(`A blob of type ${contentType} is not an image.`);
	const size = imageSize(bytes);
	if (!size) throw new Error("The image could not be read.");
	if (bytes.length > MOST_BYTES || size.width * size.height > MOST_PIXELS)
		throw new Error(
			"The image is too large: at most 2 MB and 1 million pixels.",
		);
	let binary = "";
	for (const byte of bytes) binary += String.fromCharCode(byte);
	return { source: `data:${contentType};base64,${btoa(binary)}`, size };
}

/** `(blob, column, row)` or `(blob, column, row, x, y)`: the column stands first. */
export function insertImage(
	call: Call,
	sheet: Worksheet,
	args: unknown[],
): Picture {
	const method = "Sheet.insertImage";
	const [blob, column, row, x = 0, y = 0] = args;
	if ((args.length !== 3 && args.length !== 5) || typeof blob !== "object")
		throw signature(args, `SpreadsheetApp.${method}`);
	const { source, size } = pictureOf(blobData(call, blob));
	placeBySize(sheet, [count(row, method, 1), count(column, method, 1), 1, 1]);
	const note: PictureNote = {
		sheetId: sheet.getSheetId(),
		row: row as number,
		column: column as number,
		x: count(x, method, 0),
		y: count(y, method, 0),
		...size,
		source,
		title: "",
	};
	call.written = true;
	call.host.pictures.push(note);
	return pictureService(call, note);
}

/** The pictures of a tab, in the order they were put there. */
export function picturesOf(call: Call, sheetId: string): Picture[] {
	return call.host.pictures
		.filter((note) => note.sheetId === sheetId)
		.map((note) => pictureService(call, note));
}

/** A tab's pictures for another tab too. */
export function copyPictures(call: Call, from: string, to: string): void {
	const copies = call.host.pictures
		.filter((note) => note.sheetId === from)
		.map((note) => ({ ...note, sheetId: to }));
	call.host.pictures.push(...copies);
}
