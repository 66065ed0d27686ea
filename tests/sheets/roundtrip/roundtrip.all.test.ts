/** More jobs a locale. */
import { describe, test } from "vitest";
import { inBook, LOCALES } from "./inbook";

describe.each(LOCALES)("in a %s file", { timeout: 1_200_000 }, (locale) => {
	test.each(["metric", "us"] as const)(
		"many written jobs in %s read back as they were typed",
		(units) => inBook(locale, units, 25),
	);
});
