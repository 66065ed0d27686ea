/** A few jobs a locale, other ones in each run. */
import { describe, test } from "vitest";
import { inBook, LOCALES } from "./inbook";

describe.each(LOCALES)("in a %s file", { timeout: 240_000 }, (locale) => {
	test.each(["metric", "us"] as const)(
		"a written job in %s reads back as it was typed",
		(units) => inBook(locale, units, 2),
	);
});
