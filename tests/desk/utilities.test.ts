/** `Utilities`: base64 by RFC 4648, and blobs. */
import { describe, expect, it } from "vitest";
import { entry, open, ran } from "./open";

/** RFC 4648 section 10, test vectors. */
const BASE64: [string, string][] = [
	["", ""],
	["f", "Zg=="],
	["fo", "Zm8="],
	["foo", "Zm9v"],
	["foob", "Zm9vYg=="],
	["fooba", "Zm9vYmE="],
	["foobar", "Zm9vYmFy"],
];

describe("base64", () => {
	it.each(BASE64)("of '%s' is %s", async (text, encoded) =>
		expect(await ran("return Utilities.base64Decode(a);", [encoded])).toEqual([
			...Buffer.from(text),
		]),
	);

	it("has signed bytes: 0x80 is -128", async () => {
		// 0x80 0xff 0x7f in base64 is gP9/: 100000 001111 111101 111111
		const body =
			"var b = Utilities.base64Decode('gP9/'); return [b, b instanceof Array];";
		expect(await ran(body)).toEqual([[-128, -1, 127], true]);
	});
});

describe("refuses", () => {
	it.each([
		["bytes above 127", "Utilities.newBlob([200]);", "method signature"],
		["holes", "Utilities.newBlob([1, , 2]);", "method signature"],
		["no bytes", "Utilities.newBlob({});", "method signature"],
		["a number as kind", "Utilities.newBlob([1], 1);", "method signature"],
		["a number as name", "Utilities.newBlob([1], 'a', 1);", "method signature"],
		["broken base64", "Utilities.base64Decode('a*b');", "Could not decode"],
		["a number", "Utilities.base64Decode(1);", "method signature"],
		[
			"what is not there",
			"Utilities.newBlob([1]).getAs('image/png');",
			"Blob.getAs is not a function",
		],
	])("%s", async (_, body, message) =>
		expect(ran(body)).rejects.toThrow(message),
	);
});

it.each(["NONE", "LIMITED", "FULL"] as const)("works in %s", async (mode) => {
	const body =
		"var bytes = Utilities.base64Decode('Zm9v'); Utilities.newBlob(bytes); return bytes;";
	const desk = await open(entry(body).replace(/var ss.*\[0\];/, ""));
	expect(await desk.call("run", [], { mode })).toEqual([102, 111, 111]);
});

it("is counted", async () => {
	const desk = await open(
		entry("Utilities.newBlob(Utilities.base64Decode('Zm9v'));"),
	);
	await desk.call("run");
	expect(desk.counts().byName).toMatchObject({
		"Utilities.base64Decode": 1,
		"Utilities.newBlob": 1,
	});
});
