import fc from "fast-check";
import { expect, test } from "vitest";
import { bytesOf, lettersOf } from "../../src/build/letters";

test("letters go back to the bytes they came from, with at most one zero more", () => {
	fc.assert(
		fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
			const back = bytesOf(lettersOf(bytes));
			expect(back.slice(0, bytes.length)).toEqual(Array.from(bytes));
			expect([[], [0]]).toContainEqual(back.slice(bytes.length));
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
