/** The Pour card: what is typed on it is read back, and its answers are those of the public functions on the shown cells. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CARD_ROWS, ICE, jobIn } from "../../../src/job/cells/jobcells";
import { POUR } from "../../../src/job/fields/pour";
import { type JobFile, MOST, type PourInput } from "../../../src/job/jobfile";
import {
	CARD_FACTS,
	CARD_LOAD,
	CARD_STEPS,
	CARD_WEIGH_OUT,
	type CardFact,
} from "../../../src/job/tabs/card";
import { JOB_LOADS } from "../../../src/job/tabs/pieces";
import {
	JOB_INGREDIENTS,
	JOB_PIGMENTS,
	PIGMENT_ROWS,
} from "../../../src/job/tabs/pigments";
import { JOB_MIX, MIX_FACTS } from "../../../src/job/tabs/tones";
import { pourCard } from "../../../templates/card/cardtab";
import { starterStudio } from "../../../templates/starterstudio";
import { tones as tonesTab } from "../../../templates/tones/tonestab";
import {
	answerOf,
	asText,
	called,
	calledRows,
	columnIn,
	demoJob,
	gridOf,
	jobRegions,
	pageFor,
} from "./typedcells";
import { numbers, some } from "./typedvalues";

const UNITS = ["metric", "us"] as const;

const ingredientsOf = ({ units, mix }: JobFile): string[] =>
	starterStudio(units)
		.mixes.filter((row) => row.mix === mix)
		.map(({ ingredient }) => String(ingredient));

describe("what is typed on the Pour card", () => {
	const weights = (keys: readonly string[]) =>
		fc
			.uniqueArray(fc.tuple(fc.constantFrom(...keys), numbers), {
				maxLength: 6,
				selector: ([key]) => key,
			})
			.map((entries) => Object.fromEntries(entries));
	const steps = Array.from({ length: CARD_ROWS.steps }, (_, i) => String(i));

	const jobs = fc.constantFrom(...UNITS).chain((units) => {
		const job = demoJob(units);
		return fc.record({
			job: fc.constant(job),
			load: fc.integer({ min: 1, max: MOST.pours }),
			pours: fc.uniqueArray(
				fc.record({
					load: fc.integer({ min: 1, max: MOST.pours }),
					typed: some(POUR),
					weighed: weights([...ingredientsOf(job), ICE]),
					steps: weights(steps),
				}),
				{ maxLength: 3, selector: ({ load }) => load },
			),
		});
	});

	test("is read back, and the chosen load", () => {
		fc.assert(
			fc.property(jobs, ({ job, load, pours }) => {
				const typed = pours
					.map(
						({ load, typed, weighed, steps }): PourInput => ({
							load,
							...typed,
							...(Object.keys(weighed).length > 0 && { weighed }),
							...(Object.keys(steps).length > 0 && { steps }),
						}),
					)
					.filter((pour) => Object.keys(pour).length > 1)
					.sort((a, b) => a.load - b.load);
				const studio = starterStudio(job.units);
				const own = { ...job, load, pours: typed };
				const page = pageFor(pourCard, own, studio);
				const read = jobIn(
					{
						card: gridOf(page, "card"),
						load: gridOf(page, "load"),
						tones: gridOf(pageFor(tonesTab, own, studio), "tones"),
					},
					studio,
					job.units,
				);
				expect(read.load).toBe(load);
				expect(asText(read.pours ?? [])).toEqual(asText(typed));
			}),
			{ numRuns: 60 },
		);
	});

	test("a remark that says what a label says is read as a remark", () => {
		const pours = [{ load: 2, remarks: "Result", result: "even" }];
		const read = jobIn(
			jobRegions({ ...demoJob("metric"), pours }),
			starterStudio("metric"),
			"metric",
		);
		expect(read.pours).toEqual(pours);
	});
});

type Facts = readonly (readonly unknown[])[];

const factOf = (facts: Facts, key: CardFact) =>
	facts[CARD_FACTS.indexOf(key)]?.[0];

describe.each(UNITS)("answers of the Pour card, %s", (units) => {
	const studio = starterStudio(units);
	const job = demoJob(units);
	const [dryAt, waterAt] = units === "us" ? [75, 50] : [24, 10];
	const typed = { dryTemperature: dryAt, waterTemperature: waterAt };
	const cardOf = (pour: Omit<PourInput, "load">, load = 1) => {
		const regions = jobRegions({ ...job, load, pours: [{ load, ...pour }] });
		return {
			regions,
			facts: answerOf(CARD_LOAD, regions),
			weighOut: answerOf(CARD_WEIGH_OUT, regions).slice(1),
			steps: answerOf(CARD_STEPS, regions).slice(1),
		};
	};
	const plain = cardOf(typed);
	const { regions } = plain;
	const mixFact = (key: (typeof MIX_FACTS)[number]) =>
		Number(answerOf(JOB_MIX, regions)[MIX_FACTS.indexOf(key)]?.[0]);
	const [, ...ingredients] = answerOf(JOB_INGREDIENTS, regions);
	const [, ...pigmentRows] = answerOf(JOB_PIGMENTS, regions);
	const names = [
		...new Set(job.tones.flatMap(({ doses = {} }) => Object.keys(doses))),
	];
	const ofPigment = (key: keyof typeof PIGMENT_ROWS, pigment: number) =>
		Number(pigmentRows[Object.keys(PIGMENT_ROWS).indexOf(key)]?.[2 + pigment]);
	const wet = job.tones.map(({ name, share = "", doses = {} }) => [
		name,
		share,
		...names.map(
			(pigment, i) =>
				Number(doses[pigment] ?? 0) *
				ofPigment("toBinder", i) *
				ofPigment("wet", i),
		),
	]);
	const number = (facts: Facts, key: CardFact) => Number(factOf(facts, key));
	const setting = (key: keyof typeof studio.settings) =>
		Number(studio.settings[key]);

	test("the load is that of JOB_LOADS", () => {
		const [, ...loads] = answerOf(JOB_LOADS, regions);
		const own = loads.filter(([load]) => load === 1);
		expect(factOf(plain.facts, "castings")).toBe(
			own.map(([, name]) => name).join(", "),
		);
		expect(number(plain.facts, "mass")).toBeCloseTo(
			own.reduce((sum, [, , mass]) => sum + Number(mass), 0),
			9,
		);
		expect(number(plain.facts, "waterHeld")).toBeCloseTo(
			number(plain.facts, "mass") * mixFact("pigmentWater"),
			9,
		);
	});

	test("its number, by PLAN_NUMBER", () => {
		expect(factOf(plain.facts, "plan")).toBe(
			called(
				"PLAN_NUMBER",
				wet,
				[names],
				columnIn(ingredients, 1),
				mixFact("binder"),
			),
		);
	});

	test("temperatures, by MIX_TEMPERATURE and WATER_TEMPERATURE_FOR", () => {
		const { weighOut, facts } = plain;
		const shown = weighOut.slice(0, ingredients.length);
		const masses = (isWater: boolean) =>
			shown.filter((_, i) => (ingredients[i]?.[6] === "water") === isWater);
		const solids = columnIn(masses(false), 1);
		const water = masses(true).reduce((sum, [, mass]) => sum + Number(mass), 0);
		// The shown masses are rounded to the scale, so the last digit may differ.
		expect(number(facts, "mixC")).toBeCloseTo(
			called(
				"MIX_TEMPERATURE",
				solids,
				solids.map(() => [dryAt]),
				water,
				waterAt,
				0,
				units,
			) as number,
			1,
		);
		expect(number(facts, "waterC")).toBeCloseTo(
			called(
				"WATER_TEMPERATURE_FOR",
				setting("warmest_mix"),
				solids,
				solids.map(() => [dryAt]),
				water,
				units,
			) as number,
			1,
		);
		expect(number(facts, "workingMinutes")).toBeCloseTo(
			called(
				"WORKING_TIME",
				setting("working_minutes"),
				setting("working_temp"),
				number(facts, "mixC"),
				units,
			) as number,
			9,
		);
	});

	test("ice in its own row, by ICE_FOR", () => {
		const warm = units === "us" ? 95 : 35;
		const pour = { dryTemperature: warm, waterTemperature: waterAt };
		const { weighOut: without } = cardOf(pour);
		const { weighOut, facts } = cardOf({ ...pour, ice: "yes" });
		const masses = (isWater: boolean) =>
			without.filter(
				(_, i) =>
					i < ingredients.length &&
					(ingredients[i]?.[6] === "water") === isWater,
			);
		const solids = columnIn(masses(false), 1);
		const ice = called(
			"ICE_FOR",
			setting("warmest_mix"),
			solids,
			solids.map(() => [warm]),
			masses(true).reduce((sum, [, mass]) => sum + Number(mass), 0),
			waterAt,
			units,
		) as number;
		expect(ice).toBeGreaterThan(1);
		const [name, shown] = weighOut[CARD_ROWS.weighed - 1] ?? [];
		expect(name).toBe(ICE);
		// Of masses that are rounded to the scale.
		expect(Math.abs(Number(shown) - ice)).toBeLessThan(
			2 * setting("mix_division"),
		);
		expect(number(facts, "mixC")).toBeCloseTo(setting("warmest_mix"), 6);
		expect(factOf(facts, "waterC")).toBe("");
	});

	test("too much of one ingredient: the others rise, by RESCALE_BATCH", () => {
		const at = ingredients.length - 1;
		const much = Number(plain.weighOut[0]?.[1]) * 1.1;
		const { weighOut } = cardOf({
			...typed,
			weighed: { [String(ingredients[0]?.[0])]: much },
		});
		const raised = calledRows(
			"RESCALE_BATCH",
			columnIn(plain.weighOut.slice(0, at + 1), 1),
			plain.weighOut.slice(0, at + 1).map((_, i) => [i === 0 ? much : ""]),
		);
		raised.forEach(([mass], i) => {
			expect(
				Math.abs(Number(weighOut[i]?.[1]) - Number(mass)),
			).toBeLessThanOrEqual(setting("mix_division") * 1.1);
		});
	});

	test("the steps, by PULL_OFF_PLAN, after what was weighed", () => {
		const planned = plain.steps[1] ?? [];
		const { facts, steps } = cardOf({
			...typed,
			steps: { 1: Number(planned[2]) * 1.03 },
		});
		const plan = calledRows(
			"PULL_OFF_PLAN",
			wet,
			[names],
			number(facts, "toTone"),
			(mixFact("binder") * number(facts, "mass")) / number(facts, "total"),
			[[Number(planned[2]) * 1.03]],
			units,
		);
		expect(plan.length).toBeGreaterThan(5);
		plan.forEach(([step, , action, , amount, unit, dose, left], i) => {
			const row = steps[i + 1] ?? [];
			expect([row[0], row[3]]).toEqual([step, unit]);
			const division = setting(unit === "g" ? "gram_division" : "mix_division");
			const sticks =
				action === "keep" ? Math.min(Number(amount), setting("sticks")) : 0;
			expect(
				Math.abs(Number(row[2]) - (Number(amount) - sticks)),
			).toBeLessThanOrEqual(division / 2 + 1e-9);
			expect(row[6]).toBeCloseTo(Number(left), 8);
			expect(row[7]).toBeCloseTo(Number(dose), 9);
		});
		expect(String(steps[plan.length + 1])).toBe(String(Array(9).fill("")));
		expect(factOf(facts, "check")).toMatch(/^Look: type the plan number/);
		expect(factOf(facts, "fit")).toBe("Look: no number typed");
		expect(factOf(plain.facts, "fit")).toBe("nothing weighed yet");
	});

	test("every row is as wide as its headings, and stands beside its typed row", () => {
		for (const [answer, rows] of [
			[CARD_WEIGH_OUT, CARD_ROWS.weighed],
			// Under the steps two blank rows, and the tones as they came out.
			[CARD_STEPS, CARD_ROWS.steps + 2 + job.tones.length],
		] as const) {
			const cells = answerOf(answer, regions);
			expect(cells).toHaveLength(rows + 1);
			for (const row of cells) expect(row).toHaveLength(answer.shown.length);
		}
		expect(plain.weighOut.map(([name]) => name).filter(Boolean)).toEqual(
			ingredientsOf(job),
		);
		expect(plain.facts).toHaveLength(CARD_FACTS.length);
	});

	test("a load that the job has not is said, and nothing is weighed for it", () => {
		const { facts, weighOut, steps } = cardOf({}, MOST.pours);
		const say = `Look: this job has no load ${MOST.pours}`;
		expect(factOf(facts, "check")).toBe(say);
		expect(factOf(facts, "castings")).toBe(say);
		expect(weighOut.flat().filter(Boolean)).toEqual([say]);
		expect(steps.flat().filter(Boolean)).toEqual([say]);
	});

	test("without temperatures nothing is fine", () => {
		const { facts } = cardOf({});
		expect(factOf(facts, "mixC")).toBe(
			"not known yet: type the temperature of the dry material",
		);
		expect(factOf(facts, "workingMinutes")).toBe(
			"not known yet: type the mix temperature",
		);
	});
});
