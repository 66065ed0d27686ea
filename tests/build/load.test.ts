import { expect, test } from "vitest";
import { firstCall, LOAD_LIMIT_MS } from "../bench/load";

test("to load the script and answer one cell takes a few milliseconds of work", () => {
	// the quickest of fifteen: other tests run beside this one
	expect(firstCall()).toBeLessThan(LOAD_LIMIT_MS);
});
