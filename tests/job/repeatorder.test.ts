/** What a repeat order begins with, told field by field. */
import { describe, expect, test } from "vitest";
import { JOB_SHAPE, type JobFile } from "../../src/job/jobfile";
import { repeatOrder } from "../../src/job/repeatorder";
import { starterStudio } from "../../templates/starterstudio";
import { at, fullJob, JOB_FIELDS, nameOf } from "./everyfield";
import { readBack } from "./writtenjob";

/** The least that is a job. */
const LEAST: JobFile = {
	units: "metric",
	client: "Nobody (invented)",
	title: "Slab",
	mix: "White",
	pieces: [{ name: "Slab", quantity: 1 }],
	tones: [{ name: "Plain", share: 1, doses: { Umber: 0.02 } }],
};

const again = (more: object) => repeatOrder({ ...LEAST, ...more } as JobFile);

/** Typed for one pour, for one client's agreement, or a day of one order. */
const ONCE = [
	...["pourDate", "dueDate", "stage", "load", "spent"],
	...["quotedOn", "priceAgreed", "acceptedOn", "moistureReading"],
	...["dryingAir", "dryingHumidity", "dryingMix", "dryingWind"],
];

describe("of the fields of the job", () => {
	test.each(
		Object.keys(JOB_SHAPE.fields).map((key) => [key, !ONCE.includes(key)]),
	)("%s is ordered again: %s", (key, stays) => {
		const typed = { [String(key)]: key === "units" ? "us" : "typed" };
		expect(Object.keys(again(typed)).includes(String(key))).toBe(stays);
	});
});

test.each([
	["pours", [{ load: 1, lots: "4711", weighed: { Sand: 3 }, steps: { 0: 1 } }]],
	["cureLog", [{ hours: 3, temperature: 20 }]],
	["changes", [{ what: "A niche", price: 90, agreedOn: "2027-03-01" }]],
	["payments", [{ for: "deposit", amount: 100, on: "2027-03-02" }]],
	["about", ["a note about the file"]],
])("no row of %s is left", (key, typed) => {
	expect(again({ [key]: typed })).toEqual(LEAST);
});

test.each([
	["pieces", [{ name: "Bench", quantity: 2, a: "8 ft", thickness: 2 }]],
	["cutouts", [{ piece: "Slab", count: 1, shape: "round", a: 40 }]],
	["knockouts", [{ piece: "Slab", what: "Core", volume: 3, held: 9 }]],
	["pigments", ["Umber", "Black"]],
	["whatIfs", [{ margin: 0.3 }, { hours: 2 }]],
	["whatIfs", [{}, { hours: 2 }]],
	["goods", [{ what: "Melamine", quantity: 2 }]],
	["travel", [{ what: "Ferry", amount: 40 }]],
])("%s stay as they are", (key, typed) => {
	expect(again({ [key]: typed })).toEqual({ ...LEAST, [key]: typed });
});

test("of the work the planned hours stay, and the hours it took go", () => {
	const work = {
		mold: { hoursEach: 2, hours: 7, worked: 9 },
		pour: { worked: 3 },
	};
	expect(again({ work })).toEqual({
		...LEAST,
		work: { mold: { hoursEach: 2, hours: 7 } },
	});
	expect(again({ work: { pour: { worked: 3 } } })).toEqual(LEAST);
});

test("the job itself is not touched", () => {
	const job = Object.freeze({ ...LEAST, pourDate: "2027-03-09" });
	repeatOrder(job);
	expect(job.pourDate).toBe("2027-03-09");
});

test("what is ordered again once more is the same", () => {
	const job = again({ pourDate: "2027-03-09", waste: 0.1 });
	expect(repeatOrder(job)).toEqual(job);
});

/** Lists of what one client agreed to or paid, and of what happened on one pour day. */
const AGREED_OR_POURED = ["pours", "changes", "payments", "cureLog"];

describe("a copy, written into its tabs and read again", () => {
	const job = { ...fullJob(), mix: "White casting mix, invented" };
	const copy = readBack(repeatOrder(job), starterStudio("metric"));

	test.each(
		JOB_FIELDS.filter(({ path }) => nameOf(path) !== "mix").map((declared) => ({
			...declared,
			name: nameOf(declared.path),
		})),
	)("has of $name what a repeat order has", ({ path, field, name }) => {
		const isOnce =
			AGREED_OR_POURED.includes(String(path[0])) ||
			ONCE.includes(name) ||
			name.endsWith(".worked");
		const { start } = field;
		const begins = typeof start === "object" ? start.metric : start;
		const typed = at(job, path);
		expect(typed).toBeDefined();
		expect(String(at(copy, path) ?? "")).toBe(
			String(isOnce ? (name === "load" ? 1 : (begins ?? "")) : typed),
		);
	});
});
