import { describe, expect, it } from "vitest";
import {
	closeRanges,
	shownFormula,
	typedFormula,
	writtenFormula,
} from "../../src/desk/separators";

describe("a formula that a script wrote", () => {
	it("has ; between arguments and means the same in every file", () => {
		const formula = `=IF(A1="a;b,c.d";SUM('x;y'!A1:B2;3);1/10)`;
		const engine = `=IF(A1="a;b,c.d",SUM('x;y'!A1:B2,3),1/10)`;
		for (const locale of ["en_US", "de_DE", "fr_FR", "pt_BR"] as const)
			expect(writtenFormula(formula, locale)).toBe(engine);
	});

	it.each(["=SUM(A1,B1)", "=A1*0.5", "={1;2}", "=SUM({1\\2})", "=A1\\B1"])(
		"%s is refused in a decimal-comma file",
		(formula) => {
			for (const locale of ["de_DE", "fr_FR", "pt_BR"] as const)
				expect(() => writtenFormula(formula, locale)).toThrow(/parse error/);
		},
	);

	it.each(["=SUM(A1,B1)", "=A1*0.5"])("%s passes in en_US", (formula) =>
		expect(writtenFormula(formula, "en_US")).toBe(formula),
	);
});

it("a person types in the file's own way", () => {
	expect(typedFormula("=SUM(A1;0,5)", "de_DE")).toBe("=SUM(A1,0.5)");
	expect(typedFormula("=SUM(A1,0.5)", "en_US")).toBe("=SUM(A1,0.5)");
	expect(shownFormula("=SUM(A1,0.5)", "fr_FR")).toBe("=SUM(A1;0,5)");
	expect(shownFormula("=SUM(A1,0.5)", "en_US")).toBe("=SUM(A1,0.5)");
});

it("open ends close at the last row of their own tab", () => {
	const rows = (tab: string | undefined) => (tab === "Ann's" ? 7 : 50);
	expect(closeRanges(`=SUM(B2:B)+SUM('Ann''s'!A1:A)&"A1:A"`, rows)).toBe(
		`=SUM(B2:B50)+SUM('Ann''s'!A1:A7)&"A1:A"`,
	);
	expect(closeRanges("=SUM(A1:B2)+SUM(C:C)", rows)).toBe(
		"=SUM(A1:B2)+SUM(C:C)",
	);
});
