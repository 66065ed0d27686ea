import { expect, test } from "vitest";
import { draftForm, draftText } from "../../../src/sidebar/newjob/draft";
import { blankForm, type JobForm } from "../../../src/sidebar/newjob/form";
import { STUDIO } from "../studio";
import { BARS } from "./forms";

/** A form without the keys of its rows, which are of the page. */
const typed = (form: JobForm | undefined) =>
	JSON.parse(
		JSON.stringify(form, (name, value) => (name === "key" ? undefined : value)),
	);

test("a form nobody has begun is not kept", () => {
	expect(draftText(blankForm(STUDIO.studio, "metric"))).toBe("");
	expect(draftForm("", STUDIO)).toBeUndefined();
});

test.each([
	"=HYPERLINK(1)",
	'<img onerror="x">',
	"🪨 وعاء",
	"x".repeat(10_000),
])("a form comes back as it was typed: %.30s", (client) => {
	const form = { ...BARS, client };
	expect(typed(draftForm(draftText(form), STUDIO))).toEqual(typed(form));
});

test("rows have keys of their own, so that new ones do not meet them", () => {
	const form = draftForm(draftText(BARS), STUDIO);
	const keys = [...(form?.pieces ?? []), ...(form?.tones ?? [])].map(
		({ key }) => key,
	);
	const before = [...BARS.pieces, ...BARS.tones].map(({ key }) => key);
	expect(new Set([...keys, ...before]).size).toBe(keys.length * 2);
});

test("units are the workbook's once it has them", () => {
	const text = draftText({ ...BARS, units: "us" });
	expect(draftForm(text, STUDIO)?.units).toBe("metric");
	expect(draftForm(text, { ...STUDIO, unitsFixed: false })?.units).toBe("us");
});

test.each(["{", '{"build":0,"form":{}}', '{"build":1}', "null"])(
	"what cannot be read is left: %s",
	(text) => {
		expect(draftForm(text, STUDIO)).toBeUndefined();
	},
);
