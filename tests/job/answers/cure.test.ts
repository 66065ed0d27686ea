/** Calendar, strength, drying and finish of the demo job, by hand; expectations as in tests/job/cure.test.ts. */
import { describe, expect, test } from "vitest";
import { cureDays } from "../../../src/job/answers/cure/cure";
import {
	BINDER,
	BLACK,
	FINISH_AREA,
	PASTE_KG,
	PASTE_L,
	SEALER_L,
	UMBER,
} from "../worked";
import { answersOf, type Changed, known } from "./demofiles";

const cureOf = (changed: Changed = {}) => answersOf("metric", changed).cure;
const inTime = (changed: Changed) => cureOf(changed).calendar.inTime;

describe("the calendar", () => {
	test("from a Tuesday, weekends off", () => {
		// 9 March 2027; demold after 20 h, fill 3, polish 4, seal 10 days after the pour, deliver 4 after sealing.
		expect(cureDays(cureOf())).toEqual({
			pour: "2027-03-09",
			demold: "2027-03-10",
			fill: "2027-03-12",
			polish: "2027-03-15", // the 13th is a Saturday
			seal: "2027-03-19",
			lastCoat: "2027-03-19",
			deliver: "2027-03-23",
		});
	});

	test("says by how many days it is late", () => {
		const due = (dueDate: string) => inTime({ job: { dueDate } });
		expect(due("2027-03-18")).toEqual({
			state: "look",
			say: "Look: delivery would be 5 days after the due date",
		});
		expect(due("2027-03-22").say).toMatch(/1 day after/);
		expect(due("2027-03-23")).toEqual({ state: "fine", say: "fine" });
	});

	test("counts back from the due date, past the pour date of the job", () => {
		const job = { startsFrom: "due date", dueDate: "2027-04-17" };
		const studio = { closedDays: ["2027-04-02"] };
		expect(cureDays(cureOf({ job, studio }))).toMatchObject({
			pour: "2027-04-01",
			demold: "2027-04-05", // Friday 2 is closed
			deliver: "2027-04-16",
		});
		expect(
			inTime({ job: { ...job, pourDate: "2027-04-06" }, studio }).say,
		).toBe("Look: to be in time the pour is 5 days before the Job's pour date");
		expect(
			inTime({ job: { ...job, pourDate: "2027-04-01" }, studio }).state,
		).toBe("fine");
	});

	test("begins after a day off, and says so", () => {
		const job = { pourDate: "2027-03-06" };
		expect(inTime({ job }).say).toMatch(/^Look: the pour date is a day off/);
		expect(cureDays(cureOf({ job })).pour).toBe("2027-03-08");
		expect(cureDays(cureOf({ job, settings: { weekend: "none" } })).pour).toBe(
			"2027-03-06",
		);
		expect(
			cureDays(cureOf({ job, settings: { weekend: "Sunday" } })).demold,
		).toBe("2027-03-08");
	});

	test.each<[string, Changed]>([
		["a pour date", { job: { pourDate: "" } }],
		["a due date", { job: { dueDate: "" } }],
		[
			"a due date to count from",
			{ job: { startsFrom: "due date", dueDate: "" } },
		],
		["a number of the studio", { settings: { seal_days: "" } }],
	])("is not known without %s", (_, changed) => {
		expect(inTime(changed)).toMatchObject({
			state: "unknown",
			say: expect.stringMatching(/^not known yet: /),
		});
	});

	test("has no day where the studio never works", () => {
		const closedDays = Array.from({ length: 99 }, (_, day) => 46_455 + day);
		expect(inTime({ studio: { closedDays } }).say).toMatch(
			/^Look: there is no day of work within 60 days/,
		);
	});
});

describe("strength", () => {
	const log = [
		{ hours: 24, temperature: 30 },
		{ hours: 48, temperature: 15 },
	];
	const strengthOf = (cureLog: typeof log | [{ hours: number }]) =>
		cureOf({ job: { cureLog } }).strength;
	// ASTM C1074: Σ hours × exp(5000 × (1/293.15 − 1/T)).
	const HOURS =
		24 * Math.exp(5000 * (1 / 293.15 - 1 / 303.15)) +
		48 * Math.exp(5000 * (1 / 293.15 - 1 / 288.15));
	// EN 1992-1-1 eq. 3.2, class N.
	const share = (days: number) => Math.exp(0.25 * (1 - Math.sqrt(28 / days)));

	test("by the log", () => {
		const strength = strengthOf(log);
		expect(known(strength.loggedHours)).toBe(72);
		expect(known(strength.equivalentHours)).toBeCloseTo(HOURS, 9);
		expect(known(strength.byLog)).toBeCloseTo(share(HOURS / 24), 12);
		expect(strength.warm.state).toBe("fine");
	});

	test("in °F it is the same", () => {
		const { strength } = answersOf("us", {
			job: {
				cureLog: [
					{ hours: 24, temperature: 86 },
					{ hours: 48, temperature: 59 },
				],
			},
		}).cure;
		expect(known(strength.equivalentHours)).toBeCloseTo(HOURS, 9);
	});

	test("at the age of each step", () => {
		const { atSteps, wantedAfterDays } = strengthOf(log);
		expect(known(atSteps.demold)).toBeCloseTo(share(1), 12);
		expect(known(atSteps.deliver)).toBeCloseTo(share(14), 12);
		// exp(0.25 × (1 − √(28 / t))) = 0.7 → t = 28 / (1 − ln 0.7 / 0.25)².
		expect(known(wantedAfterDays)).toBeCloseTo(
			28 / (1 - Math.log(0.7) / 0.25) ** 2,
			9,
		);
	});

	test("says what is cold, half typed, young or not typed", () => {
		const warm = (rows: Parameters<typeof strengthOf>[0]) =>
			strengthOf(rows).warm;
		expect(warm([...log, { hours: 12, temperature: 4.5 }]).say).toMatch(
			/^Look: colder than 5 °C/,
		);
		expect(warm([{ hours: 12 }]).say).toMatch(/^Look: row 1 of the log/);
		expect(warm([{ hours: 60, temperature: 20 }]).state).toBe("unknown");
		expect(cureOf().strength.warm.state).toBe("unknown");
	});
});

describe("drying", () => {
	/** The example of the ACI 305R nomograph: 1.15 kg/m²·h. */
	const NOMOGRAPH = {
		dryingAir: 27,
		dryingHumidity: 0.5,
		dryingMix: 31,
		dryingWind: 19,
		bleeds: "yes",
	};
	const dryingOf = (job: Changed["job"]) => cureOf({ job }).drying;

	test("the example of the nomograph, with its ±40%", () => {
		const { evaporation, atLeast, atMost, drying } = dryingOf(NOMOGRAPH);
		expect(known(evaporation)).toBeCloseTo(1.15, 2);
		expect(known(atLeast)).toBeCloseTo(0.69, 2);
		expect(known(atMost)).toBeCloseTo(1.61, 2);
		expect(drying.say).toMatch(/^Look: too fast/);
	});

	test("without wind 4 of 23 parts are left", () => {
		const { evaporation, drying } = dryingOf({ ...NOMOGRAPH, dryingWind: 0 });
		expect(known(evaporation)).toBeCloseTo((1.15 * 4) / 23, 2);
		expect(drying).toEqual({ state: "fine", say: "fine" });
	});

	test("from half of it on where the mix does not bleed", () => {
		// 12 of 23 parts: 0.6 of the 1.0 allowed, of 0.5 too much. 8 of 23: 0.4, and 0.56 with 40%.
		const windy = (dryingWind: number, bleeds: string) =>
			dryingOf({ ...NOMOGRAPH, dryingWind, bleeds }).drying.say;
		expect(windy(8, "yes")).toBe("fine");
		expect(windy(8, "no")).toMatch(/^Look: too fast/);
		expect(windy(4, "no")).toMatch(/^Look: within its ±40%/);
	});

	test.each(["dryingAir", "dryingHumidity", "dryingMix", "dryingWind"])(
		"is not known without %s",
		(key) => {
			expect(dryingOf({ ...NOMOGRAPH, [key]: "" }).drying.state).toBe(
				"unknown",
			);
		},
	);
});

describe("finish", () => {
	test("sealer and paste, with its pigment", () => {
		const { finishM2, sealerM3, pasteM3, pasteKg, pastePigments } =
			cureOf().finishing;
		expect(known(finishM2)).toBeCloseTo(FINISH_AREA, 9);
		expect(known(sealerM3) * 1000).toBeCloseTo(SEALER_L, 9);
		expect(known(pasteM3) * 1000).toBeCloseTo(PASTE_L, 9);
		expect(known(pasteKg)).toBeCloseTo(PASTE_KG, 9);
		expect(pastePigments.map(({ name }) => name)).toEqual(["Umber", "Black"]);
		const grams = pastePigments.map(({ dryKg }) => known(dryKg) * 1000);
		expect(grams[0]).toBeCloseTo(PASTE_KG * BINDER * UMBER * 1000, 6);
		expect(grams[1]).toBeCloseTo(PASTE_KG * BINDER * BLACK * 1000, 6);
	});

	test("a liquid pigment is bought with its water", () => {
		const pigments = [
			{ name: "Umber", form: "liquid", solids: 0.4 },
			{ name: "Black", form: "powder" },
		];
		const [umber] = cureOf({ studio: { pigments } }).finishing.pastePigments;
		if (!umber) throw new Error("There is no pigment");
		expect(known(umber.boughtKg)).toBeCloseTo(known(umber.dryKg) / 0.4, 12);
	});

	test.each([
		[{}, "unknown"],
		[{ moistureLimit: 4 }, "unknown"],
		[{ moistureReading: 4 }, "unknown"],
		[{ moistureLimit: 4, moistureReading: 5 }, "look"],
		[{ moistureLimit: 4, moistureReading: 4 }, "fine"],
	])("sealing with %o is %s", (job, state) => {
		expect(cureOf({ job }).finishing.dryEnough.state).toBe(state);
	});
});
