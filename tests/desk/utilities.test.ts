/** `Utilities`: base64 by RFC 4648, gzip against Node's own zlib. */
import { gunzipSync, gzipSync } from "node:zlib";
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
	it.each(BASE64)("of '%s' is %s, and back", async (text, encoded) => {
		const body =
			"var e = Utilities.base64Encode(a); return [e, Utilities.newBlob(Utilities.base64Decode(e)).getDataAsString()];";
		expect(await ran(body, [text])).toEqual([encoded, text]);
	});

	it("has signed bytes: 0x80 is -128", async () => {
		// 0x80 0xff 0x7f in base64 is gP9/: 100000 001111 111101 111111
		const body =
			"var b = Utilities.base64Decode('gP9/'); return [b, b instanceof Array, Utilities.base64Encode(b)];";
		expect(await ran(body)).toEqual([[-128, -1, 127], true, "gP9/"]);
	});

	it("of letters outside ASCII is that of their UTF-8", async () => {
		// U+00E9 in UTF-8 is C3 A9 (RFC 3629 section 3): 110000 111010 1001(00) is w6k=
		expect(
			await ran("return Utilities.base64Encode('é', Utilities.Charset.UTF_8);"),
		).toBe("w6k=");
	});
});

describe("gzip", () => {
	const text = "a tone, a dose, a load; ".repeat(400);

	it("that another program packed is unpacked", async () => {
		const packed = gzipSync(text).toString("base64");
		const body =
			"var packed = Utilities.newBlob(Utilities.base64Decode(a), 'application/x-gzip', 'x.txt.gz'); var out = Utilities.ungzip(packed); return [out.getDataAsString(), out.getName()];";
		expect(await ran(body, [packed])).toEqual([text, "x.txt"]);
	});

	it("that a script packs another program unpacks", async () => {
		const body =
			"var packed = Utilities.gzip(Utilities.newBlob(a)); return [Utilities.base64Encode(packed.getBytes()), packed.getContentType()];";
		const [packed, kind] = (await ran(body, [text])) as [string, string];
		expect(gunzipSync(Buffer.from(packed, "base64")).toString()).toBe(text);
		expect(kind).toBe("application/x-gzip");
	});
});

describe("a blob", () => {
	it.each([
		["of text", "Utilities.newBlob('é')", ["text/plain", null, [-61, -87]]],
		["of bytes", "Utilities.newBlob([65])", [null, null, [65]]],
		[
			"with kind and name",
			"Utilities.newBlob([65], 'image/png', 'a.png')",
			["image/png", "a.png", [65]],
		],
		[
			"changed",
			"Utilities.newBlob([65]).setContentType('image/png').setName('b')",
			["image/png", "b", [65]],
		],
	])("%s", async (_, made, expected) => {
		const body = `var blob = ${made}; return [blob.getContentType(), blob.getName(), blob.getBytes()];`;
		expect(await ran(body)).toEqual(expected);
	});
});

describe("refuses", () => {
	it.each([
		["bytes above 127", "Utilities.newBlob([200]);", "method signature"],
		["no bytes", "Utilities.newBlob({});", "method signature"],
		["a number as kind", "Utilities.newBlob('a', 1);", "method signature"],
		["broken base64", "Utilities.base64Decode('a*b');", "Could not decode"],
		[
			"letters outside ASCII without a charset",
			"Utilities.base64Encode('é');",
			"needs Utilities.Charset.UTF_8",
		],
		[
			"to unpack a blob of another kind",
			"Utilities.ungzip(Utilities.newBlob([1, 2]));",
			"content type application/x-gzip",
		],
		[
			"to unpack what is not packed",
			"Utilities.ungzip(Utilities.newBlob([1, 2], 'application/x-gzip'));",
			"Could not decompress",
		],
		["to unpack a text", "Utilities.ungzip('abc');", "method signature"],
		[
			"what is not there",
			"Utilities.newBlob('a').getAs('image/png');",
			"Blob.getAs is not a function",
		],
	])("%s", async (_, body, message) =>
		expect(ran(body)).rejects.toThrow(message),
	);
});

it.each(["NONE", "LIMITED", "FULL"] as const)("works in %s", async (mode) => {
	const body =
		"return Utilities.newBlob(Utilities.base64Decode('Zm9v')).getDataAsString();";
	const desk = await open(entry(body).replace(/var ss.*\[0\];/, ""));
	expect(await desk.call("run", [], { mode })).toBe("foo");
});

it("is counted", async () => {
	const desk = await open(
		entry("Utilities.newBlob(Utilities.base64Decode('Zm9v')).getBytes();"),
	);
	await desk.call("run");
	expect(desk.counts().byName).toMatchObject({
		"Utilities.base64Decode": 1,
		"Utilities.newBlob": 1,
		"Blob.getBytes": 1,
	});
});
