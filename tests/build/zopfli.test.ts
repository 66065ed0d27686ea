import { inflateRawSync } from "node:zlib";
import { expect, test } from "vitest";
import { deflated } from "../../src/build/zopfli";

test("what is packed comes out again, and the library waits for no error of others", async () => {
	expect(inflateRawSync(await deflated("a tone, a tone")).toString()).toBe(
		"a tone, a tone",
	);
	// its listener knows its own way to end by this name
	expect(process.listeners("uncaughtException").join()).not.toContain(
		"ExitStatus",
	);
});
