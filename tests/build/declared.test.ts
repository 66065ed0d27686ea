import { expect, test } from "vitest";
import { pure } from "../../src/build/declared";

test("calls that run when a module is loaded are marked, those inside functions are not", () => {
	expect(
		pure("export const A = f(g(1), { c: () => h(2) });\nfunction k() { m(); }"),
	).toBe(
		"export const A = /* @__PURE__ */ f(/* @__PURE__ */ g(1), { c: () => h(2) });\nfunction k() { m(); }",
	);
});
