import { expect, test } from "vitest";
import { callFunction, functionNamed } from "../../src/functions/index";

const castings = (name: string) => {
	const loads = functionNamed("MIXER_LOADS");
	if (!loads) throw new Error("There is no MIXER_LOADS");
	return () => callFunction(loads, [[[name, 40]], 100]);
};

test("a name of ten thousand letters is taken, a longer one is refused", () => {
	expect(castings("x".repeat(10_000))).not.toThrow();
	expect(castings("x".repeat(10_001))).toThrow(
		"name is longer than 10,000 letters",
	);
});
