/** The Tones tab: what is typed on it is read back, and its answers are those of the public functions on the shown cells. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobIn } from "../../../src/job/cells/jobcells";
import { LOOK, TONE } from "../../../src/job/fields/tone";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import { JOB_TOTALS } from "../../../src/job/tabs/pieces";
import {
	JOB_INGREDIENTS,
	JOB_PIGMENTS,
	JOB_SAMPLE,
	PIGMENT_ROWS,
} from "../../../src/job/tabs/pigments";
import {
	JOB_MIX,
	JOB_TONES,
	MIX_FACTS,
	type MixFact,
} from "../../../src/job/tabs/tones";
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
import { names, numbers, some } from "./typedvalues";

const UNITS = ["metric", "us"] as const;

const regionOf = (job: JobFile) =>
	gridOf(pageFor(tonesTab, job, starterStudio(job.units)), "tones");

const readBack = (job: JobFile) =>
	jobIn({ tones: regionOf(job) }, starterStudio(job.units), job.units);

describe("what is typed on the Tones tab", () => {
	const pigments = fc.uniqueArray(names, {
		maxLength: MOST.pigments,
		selector: (name) => name.toLowerCase().replace(/\s+/g, " "),
	});
	const jobs = pigments.chain((columns) =>
		fc.record({
			units: fc.constantFrom(...UNITS),
			look: some(LOOK),
			pigments: fc.constant(columns),
			tones: fc.array(
				fc
					.tuple(
						some(TONE),
						names,
						fc.array(numbers, { maxLength: columns.length }),
					)
					.map(([tone, name, doses]) => ({
						...tone,
						name,
						...(doses.length > 0 && { doses: dosesOf(columns, doses) }),
					})),
				{ maxLength: MOST.tones },
			),
		}),
	);

	test("is read back", () => {
		fc.assert(
			fc.property(jobs, ({ look, pigments, ...rest }) => {
				const job: JobFile = {
					pieces: [],
					...rest,
					...look,
					...(pigments.length > 0 && { pigments }),
				};
				// What stands in the cells before anything is typed.
				const begun = {
					finish: "cast",
					sealing: "bare",
					state: "dry",
					placing: "bucket fold",
					folds: 3,
					...(job.units === "us"
						? { bandStart: "1 1/2", seenFrom: "6 ft" }
						: { bandStart: "40", seenFrom: "2 m" }),
				};
				expect(asText(readBack(job))).toEqual(asText({ ...begun, ...job }));
			}),
		);
	});

	test("a dose under no pigment is read, and said to be wrong", () => {
		const grid = regionOf(demoJob("metric")).map((row) => [...row]);
		const headings = grid.find(([first]) => first === "Tone") ?? [];
		headings[2] = "";
		const regions = { ...jobRegions(demoJob("metric")), tones: grid };
		expect(factOf(answerOf(JOB_MIX, regions), "check")).toMatch(
			/^Look: a dose of .* stands under no pigment: name it above$/,
		);
	});
});

const factOf = (facts: readonly (readonly unknown[])[], key: MixFact) =>
	facts[MIX_FACTS.indexOf(key)]?.[0];

describe.each(UNITS)("answers of the Tones tab, %s", (units) => {
	const job: JobFile = {
		...demoJob(units),
		placing: "mold lay-up",
		faceDepth: units === "us" ? "3/8" : "10",
		backedWith: demoJob(units).tones[0]?.name,
	};
	const bucket = demoJob(units);
	const studio = starterStudio(units);
	const regions = jobRegions(bucket);
	const facts = answerOf(JOB_MIX, regions);
	const [, ...ingredients] = answerOf(JOB_INGREDIENTS, regions);
	const [pigmentHeadings = [], ...pigmentRows] = answerOf(
		JOB_PIGMENTS,
		regions,
	);
	const [toneHeadings = [], ...toneRows] = answerOf(JOB_TONES, regions);
	const parts = columnIn(ingredients, 1);
	const mass = Number(answerOf(JOB_TOTALS, regions)[0]?.[0]);
	const count = (bucket.pigments ?? pigmentsOf(bucket)).length;
	const pigments = [pigmentsOf(bucket)];
	const ofPigment = (key: keyof typeof PIGMENT_ROWS) =>
		(pigmentRows[Object.keys(PIGMENT_ROWS).indexOf(key)] ?? []).slice(
			2,
			2 + count,
		);
	const number = (key: MixFact) => Number(factOf(facts, key));

	/** Name, share and doses of each tone, each dose times a factor of its pigment. */
	const dosed = (factor: (pigment: number) => number) =>
		bucket.tones.map(({ name, share = "", doses = {} }) => [
			name,
			share,
			...pigmentsOf(bucket).map(
				(pigment, i) => Number(doses[pigment] ?? 0) * factor(i),
			),
		]);
	const dry = dosed((i) => Number(ofPigment("toBinder")[i]));
	const wet = dosed(
		(i) => Number(ofPigment("toBinder")[i]) * Number(ofPigment("wet")[i]),
	);

	test("the mix, by BINDER_SHARE, MIX_DENSITY and WATER_BINDER_RATIO", () => {
		const binder = columnIn(ingredients, 3);
		expect(number("binder")).toBeCloseTo(
			called("BINDER_SHARE", parts, binder) as number,
			9,
		);
		expect(number("density")).toBeCloseTo(
			called(
				"MIX_DENSITY",
				parts,
				columnIn(ingredients, 2),
				studio.settings.air,
				units,
			) as number,
			6,
		);
		expect(number("waterBinder")).toBeCloseTo(
			called(
				"WATER_BINDER_RATIO",
				parts,
				binder,
				columnIn(ingredients, 5),
			) as number,
			9,
		);
		const forJob = calledRows("WEIGH_OUT", parts, mass);
		expect(forJob).toHaveLength(ingredients.length);
		ingredients.forEach((row, i) => {
			expect(row[11]).toBeCloseTo(Number(forJob[i]?.[0]), 9);
		});
	});

	test("folds, by BAND_WIDTH and FOLDS_UNTIL_BLURRED", () => {
		const [start, seen] = units === "us" ? ["1 1/2", "6 ft"] : ["40", "2 m"];
		expect(number("bands")).toBeCloseTo(
			called("BAND_WIDTH", start, 3, units) as number,
			9,
		);
		expect(number("blur")).toBe(
			called("FOLDS_UNTIL_BLURRED", start, seen, units),
		);
	});

	test.each([
		["as weighed", 2, wet],
		["dry", 11, dry],
	] as const)("pigment %s, by TONE_WEIGHTS", (_, at, tones) => {
		const water = number("pigmentWater");
		const weights = calledRows(
			"TONE_WEIGHTS",
			tones,
			pigments,
			mass * (1 - water),
			number("binder") / (1 - water),
			units,
		);
		expect(weights).toHaveLength(bucket.tones.length);
		weights.forEach((row, i) => {
			expect(toneRows[i]?.[0]).toBeCloseTo(Number(row[0]), 8);
			for (let p = 0; p < count; p++)
				expect(toneRows[i]?.[at + p]).toBeCloseTo(Number(row[2 + p]), 6);
			if (at === 2) expect(toneRows[i]?.[1]).toBeCloseTo(Number(row[1]), 8);
		});
		expect(toneHeadings[at]).toBe(
			`${pigments[0]?.[0]}${at === 2 ? "" : " dry"}, g`,
		);
	});

	test("below the limit, by PIGMENT_HEADROOM", () => {
		const headroom = calledRows(
			"PIGMENT_HEADROOM",
			dry.map((row) => row.slice(2)),
			[ofPigment("maximum")],
			number("cement"),
		);
		bucket.tones.forEach((_, i) => {
			expect(toneRows[i]?.[6]).toBeCloseTo(Number(headroom[i]?.[0]), 9);
		});
	});

	test("colors, by EXPECTED_COLORS and FAR_COLOR", () => {
		const { swatches = [], swatchPigments = [] } = studio;
		const expected = calledRows(
			"EXPECTED_COLORS",
			dry,
			pigments,
			[[bucket.mix, "cast", "bare", "dry"]],
			swatches.map(({ mix, finish, sealed, state }) => [
				mix,
				finish,
				sealed,
				state,
			]),
			swatches.map(({ doses = {} }) =>
				swatchPigments.map((name) => doses[name] ?? ""),
			),
			[swatchPigments],
			swatches.map(({ color = "" }) => [color]),
		);
		const colors = toneRows.slice(0, bucket.tones.length);
		const seen = colors.filter(([, , , , , , , color]) =>
			/^#[0-9a-f]{6}$/.test(String(color)),
		);
		expect(seen.length).toBeGreaterThan(1);
		colors.forEach((row, i) => {
			const [color, remark, nearest, difference] = expected[i] ?? [];
			if (color === "") {
				expect(row[7]).toBe(`not known yet: its color: ${remark}`);
				return;
			}
			expect(row.slice(7, 9)).toEqual([color, nearest]);
			expect(row[9]).toBeCloseTo(Number(difference), 9);
		});
		expect(factOf(facts, "farColor")).toBe(
			seen.length < colors.length
				? "not known yet: it needs the color of every tone"
				: called(
						"FAR_COLOR",
						columnIn(colors, 7),
						bucket.tones.map(({ share }) => [share]),
					),
		);
	});

	test("pigment of all tones: dry, with its water, as bought", () => {
		expect(pigmentHeadings.slice(2, 2 + count)).toEqual(pigments[0]);
		for (let p = 0; p < count; p++) {
			const all = (at: number) =>
				bucket.tones.reduce(
					(sum, _, i) => sum + Number(toneRows[i]?.[at + p]),
					0,
				);
			expect(ofPigment("weighed")[p]).toBeCloseTo(all(2), 6);
			expect(ofPigment("dry")[p]).toBeCloseTo(all(11), 6);
			expect(ofPigment("water")[p]).toBeCloseTo(all(2) - all(11), 6);
			expect(ofPigment("bought")[p]).toBeCloseTo(
				all(11) / Number(ofPigment("solids")[p]),
				6,
			);
		}
	});

	test("a lay-up saves what it takes less than the bucket fold", () => {
		const [, ...rows] = answerOf(JOB_PIGMENTS, jobRegions(job));
		const row = (key: keyof typeof PIGMENT_ROWS) =>
			(rows[Object.keys(PIGMENT_ROWS).indexOf(key)] ?? []).map(Number);
		for (let at = 2; at < 2 + count; at++)
			expect(row("saves")[at]).toBeCloseTo(
				Number(row("bucketFold")[at]) - Number(row("layUp")[at]),
				6,
			);
		const layUpFacts = answerOf(JOB_MIX, jobRegions(job));
		expect(row("layUp")[1]).toBeCloseTo(Number(factOf(layUpFacts, "face")), 9);
		expect(factOf(layUpFacts, "look")).toMatch(
			/laid up in the mold, cast finish$/,
		);
	});

	test("the sample is what TONE_WEIGHTS says of its mass, to the scale", () => {
		const [, smallest = [], batch = [], ...rows] = answerOf(
			JOB_SAMPLE,
			regions,
		);
		expect(batch[1]).toBe(smallest[1]);
		const water = number("pigmentWater");
		const weights = calledRows(
			"TONE_WEIGHTS",
			wet,
			pigments,
			Number(batch[1]) * (1 - water),
			number("binder") / (1 - water),
			units,
		);
		const half = (key: "mix_division" | "gram_division") =>
			Number(studio.settings[key]) / 2 + 1e-9;
		expect(rows).toHaveLength(bucket.tones.length);
		rows.forEach((row, i) => {
			const off = (at: number, to: unknown) =>
				Math.abs(Number(row[at]) - Number(to));
			expect(off(1, weights[i]?.[0])).toBeLessThanOrEqual(half("mix_division"));
			for (let p = 0; p < count; p++)
				expect(off(2 + p, weights[i]?.[2 + p])).toBeLessThanOrEqual(
					half("gram_division"),
				);
		});
	});

	test("the look in the words of the quote", () => {
		const words = bucket.tones.map(
			({ name, share }) => `${name} ${Math.round(Number(share) * 100)}%`,
		);
		expect(factOf(facts, "look")).toBe(
			`${words.join(", ")}; folded by hand, cast finish`,
		);
		expect(factOf(facts, "check")).toBe("fine");
	});

	test("every row is as wide as its headings, blank beside what is not typed", () => {
		for (const rows of [
			answerOf(JOB_TONES, regions),
			answerOf(JOB_PIGMENTS, regions),
			answerOf(JOB_INGREDIENTS, regions),
			answerOf(JOB_SAMPLE, regions),
		])
			for (const row of rows) expect(row).toHaveLength(rows[0]?.length ?? 0);
		// The rows end where the typed ones do: below them nothing spills.
		expect(toneRows).toHaveLength(bucket.tones.length);
		for (const row of toneRows) expect(row[0]).toBeGreaterThan(0);
	});

	test("a row left free between typed tones is blank", () => {
		const grid = regionOf(bucket).map((row) => [...row]);
		const first = grid.findIndex(([cell]) => cell === "Tone") + 1;
		const free = Array(grid[0]?.length ?? 0).fill("");
		grid.splice(first + 1, 0, free);
		grid.splice(first + MOST.tones, 1);
		const [, ...rows] = answerOf(JOB_TONES, { ...regions, tones: grid });
		expect(rows).toHaveLength(bucket.tones.length + 1);
		expect(rows[1]?.join("")).toBe("");
		expect([rows[0], ...rows.slice(2)]).toEqual(toneRows);
	});

	test("a job without a mix: nothing is fine", () => {
		const { mix: _, ...without } = bucket;
		const bare = jobRegions(without);
		const own = answerOf(JOB_MIX, bare);
		for (const key of ["binder", "density", "pigmentWater", "check"] as const)
			expect(factOf(own, key)).toBe("not known yet: choose the mix");
	});
});

/** Doses of the last pigments, so that a first one may be blank. */
const dosesOf = (columns: readonly string[], doses: readonly number[]) =>
	Object.fromEntries(
		doses.map((dose, i) => [columns[columns.length - doses.length + i], dose]),
	);

function pigmentsOf({ pigments, tones }: JobFile): string[] {
	return [
		...new Set([
			...(pigments ?? []),
			...tones.flatMap(({ doses = {} }) => Object.keys(doses)),
		]),
	];
}
