/** Pictures on a tab: `Sheet.insertImage` of the platform. */
import { describe, expect, it } from "vitest";
import { imageSize } from "../../src/desk/image-size";
import { entry, open, ran } from "./open";
import { png } from "./png";

const RED = png(30, 20, [255, 0, 0]);
const PUT = `var p = s.insertImage(Utilities.newBlob(Utilities.base64Decode('${RED}'), 'image/png'), 2, 5, 7, 9);`;

describe("a picture", () => {
	it.each([
		["has the size it has", "[p.getWidth(), p.getHeight()]", [30, 20]],
		[
			"can be made larger",
			"[p.setWidth(60).setHeight(50).getWidth(), p.getHeight()]",
			[60, 50],
		],
		[
			"says what it is",
			"[p.getAltTextTitle(), p.setAltTextTitle('bar').getAltTextTitle()]",
			["", "bar"],
		],
		[
			"is found again",
			"[s.getImages().length, s.getImages()[0].getWidth()]",
			[1, 30],
		],
		[
			"goes with the template",
			"[ss.insertSheet('B', { template: s }).getImages().length, s.getImages().length]",
			[1, 1],
		],
		["can be taken away", "(p.remove(), s.getImages().length)", 0],
	])("%s", async (_, read, expected) =>
		expect(await ran(`${PUT} return ${read};`)).toEqual(expected),
	);

	it("can be seen at the desk, and is kept", async () => {
		const desk = await open(entry(PUT));
		const before = desk.state();
		await desk.call("run");
		expect(desk.pictures("Sheet1")).toMatchObject([
			{ row: 5, column: 2, x: 7, y: 9, source: `data:image/png;base64,${RED}` },
		]);
		expect(desk.state()).not.toBe(before);
		const again = await open(entry("s.getImages()[0].remove();"), {
			saved: desk.save(),
		});
		expect(again.pictures("Sheet1")).toHaveLength(1);
		await again.call("run");
		expect(again.pictures("Sheet1")).toEqual([]);
	});

	it("goes with its tab", async () => {
		const desk = await open(
			entry(`ss.insertSheet('B'); ${PUT} ss.deleteSheet(s);`),
		);
		await desk.call("run");
		expect(JSON.stringify(desk.save().beside)).toContain('"pictures":[]');
	});
});

describe("refuses", () => {
	const blob = (bytes: string, kind = "'image/png'") =>
		`s.insertImage(Utilities.newBlob(Utilities.base64Decode('${bytes}'), ${kind}), `;
	it.each([
		["a text", "s.insertImage('not a blob', 1, 1);", "method signature"],
		[
			"a blob of no picture",
			`${blob("Zm9v", "'text/plain'")} 1, 1);`,
			"is not an image",
		],
		["a blob without a kind", `${blob(RED, "null")} 1, 1);`, "is not an image"],
		["broken bytes", `${blob("Zm9v")} 1, 1);`, "could not be read"],
		["a column before the first", `${blob(RED)} 0, 1);`, "method signature"],
		["a cell off the grid", `${blob(RED)} 27, 1);`, "outside the dimensions"],
		["one offset alone", `${blob(RED)} 1, 1, 5);`, "method signature"],
		["a width of a half", `${PUT} p.setWidth(0.5);`, "method signature"],
		[
			"more than a million pixels",
			`${blob(png(1001, 1000, [0, 0, 0]))} 1, 1);`,
			"too large",
		],
		[
			"taking one away twice",
			`${PUT} p.remove(); p.remove();`,
			"already been removed",
		],
	])("%s", async (_, body, message) =>
		expect(ran(body)).rejects.toThrow(message),
	);
});

/** Files of known size: a PNG written by its specification, the smallest GIF, and the head of a JPEG after T.81. */
describe("the size in a file", () => {
	const bytes = (base64: string) =>
		Uint8Array.from(Buffer.from(base64, "base64"));
	// FFD8; APP0 of length 4; DHT (C4) of length 4; SOF2 of length 11: 8 bits, 0x0102 lines, 0x0304 samples a line
	const JPEG = Uint8Array.from([
		0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xc4, 0, 4, 0, 0, 0xff, 0xc2, 0,
		11, 8, 1, 2, 3, 4, 1, 1, 0x11, 0,
	]);
	it.each([
		["PNG", bytes(RED), { width: 30, height: 20 }],
		[
			"GIF",
			bytes("R0lGODlhAQABAIAAAAAAAP///yH5BAEAAAAALAAAAAABAAEAAAIBRAA7"),
			{ width: 1, height: 1 },
		],
		["JPEG", JPEG, { width: 0x0304, height: 0x0102 }],
		["JPEG cut off", JPEG.slice(0, 12), undefined],
		["nothing", new Uint8Array(), undefined],
	])("%s", (_, file, size) => expect(imageSize(file)).toEqual(size));
});
