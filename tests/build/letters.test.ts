import fc from "fast-check";
import { expect, test } from "vitest";
import { bytesOf, lettersOf } from "../../src/build/letters";

test("letters go back to the bytes they came from", () => {
	fc.assert(
		fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
			expect(bytesOf(lettersOf(bytes))).toEqual(Array.from(bytes));
		}),
	);
});

test("letters need no escape in a page or in quotes", () => {
	fc.assert(
		fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
			expect(lettersOf(bytes)).toMatch(/^[!-~]*$/);
			expect(lettersOf(bytes)).not.toMatch(/["<\\]/);
		}),
	);
});
