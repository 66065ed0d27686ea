import { expect, it } from "vitest";
import type { Locale } from "../../src/desk/contract";
import { typed } from "../../src/desk/typed";

const thisYear = new Date().getFullYear();
/** Days since 1899-12-30. */
const days = (year: number, month: number, day: number) =>
	(Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 864e5;

const number = (value: number, pattern?: string) =>
	pattern === undefined
		? { kind: "number", value }
		: { kind: "number", value, pattern };
const text = (content: string) => ({ kind: "text", text: content });

// what Sheets does with typed input: Range.setValues, "parsed as if typed"; its examples '2.000' '1,000,000' '$2.99'
it.each<[string, Locale, object]>([
	["", "en_US", { kind: "blank" }],
	["2.000", "en_US", number(2)],
	["1,000,000", "en_US", number(1_000_000)],
	["$2.99", "en_US", number(2.99, "$#,##0.00")],
	["-3", "en_US", number(-3)],
	["+1", "en_US", number(1)],
	["8%", "en_US", number(0.08, "0%")],
	["true", "en_US", { kind: "boolean", value: true }],
	["3/4", "en_US", number(days(thisYear, 3, 4), "yyyy-mm-dd")],
	["2027-03-09", "en_US", number(days(2027, 3, 9), "yyyy-mm-dd")],
	["2/30/2027", "en_US", text("2/30/2027")],
	["6:00", "en_US", number(0.25, "h:mm")],
	["'3/4", "en_US", text("3/4")],
	["'=A1", "en_US", text("=A1")],
	["=A1", "en_US", { kind: "formula", formula: "=A1" }],
	["+A1", "en_US", { kind: "formula", formula: "=+A1" }],
	["- and so on", "en_US", { kind: "formula", formula: "=- and so on" }],
	["@home", "en_US", text("@home")],
	["8' 1/2\"", "en_US", text("8' 1/2\"")],
	["0,5", "de_DE", number(0.5)],
	["1.000,5", "de_DE", number(1000.5)],
	["0,5", "en_US", text("0,5")],
	["9.3.2027", "de_DE", number(days(2027, 3, 9), "yyyy-mm-dd")],
	["9/3/2027", "fr_FR", number(days(2027, 3, 9), "yyyy-mm-dd")],
])("%s in %s", (input, locale, expected) =>
	expect(typed(input, "General", locale)).toEqual(expected),
);

it.each(["3/4", "=A1", "007", "'x", "+1"])(
	"a plain-text cell keeps %s",
	(input) => expect(typed(input, "@", "en_US")).toEqual(text(input)),
);
