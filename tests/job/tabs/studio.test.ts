/** The studio's tabs: what is typed on them is read back, and what they answer of days, pours and colors, by hand. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Grid } from "../../../src/job/cells/regions";
import { studioIn } from "../../../src/job/cells/studiocells";
import { studioSlots } from "../../../src/job/cells/studioslots";
import { LOGGED } from "../../../src/job/fields/log";
import { INGREDIENT } from "../../../src/job/fields/mix";
import { PIGMENT } from "../../../src/job/fields/pigment";
import { SETTINGS } from "../../../src/job/fields/settings";
import { STOCK } from "../../../src/job/fields/stock";
import { SWATCH } from "../../../src/job/fields/swatch";
import type { UnitSystem } from "../../../src/job/reading/units";
import { checkedStudio, type StudioFile } from "../../../src/job/studiofile";
import { VERSION } from "../../../src/job/version";
import { areaOf } from "../../../src/sheets/reading/a1";
import { pageOf } from "../../../src/sheets/writing/page";
import { studioTabs } from "../../../templates/index";
import { starterStudio } from "../../../templates/starterstudio";

import { asText } from "./typedcells";
import { names, numbers, some } from "./typedvalues";

const UNITS = ["metric", "us"] as const;

const ANYWHERE = new Proxy({}, { get: () => "Elsewhere!$A$1" });

/** Each region as a sheet gives it. @throws Error where one of its cells is a formula. */
function regionsOf(studio: StudioFile, units: UnitSystem) {
	const slots = studioSlots(studio);
	const pages = studioTabs.map((tab) =>
		pageOf({
			tab,
			tokens: { units, tabs: {}, cells: ANYWHERE },
			prefix: "studio_",
			slots,
		}),
	);
	const grid = (region: string): Grid => {
		const page = pages.find(({ names }) => names[`studio_${region}`]);
		const area = areaOf(page?.names[`studio_${region}`] ?? "");
		return (page?.cells ?? [])
			.slice(area.row, area.row + area.rows)
			.map((line) =>
				line.slice(area.column, area.column + area.columns).map(({ value }) => {
					if (String(value).startsWith("="))
						throw new Error(`${region} has ${value}`);
					return typeof value === "string" ? value.replace(/^'/, "") : value;
				}),
			);
	};
	return {
		settings: grid("settings"),
		mixes: grid("mixes"),
		pigments: grid("pigments"),
		swatches: grid("swatches"),
		stock: grid("stock"),
		pours: grid("pours"),
	};
}

const filled = <R extends object>(rows: fc.Arbitrary<R>, maxLength: number) =>
	fc.array(
		rows.filter((row) => Object.keys(row).length > 0),
		{ minLength: 1, maxLength },
	);

const days = fc
	.integer({ min: 0, max: 4000 })
	.map((day) =>
		new Date(Date.UTC(2024, 0, 1 + day)).toISOString().slice(0, 10),
	);

const studios = fc
	.tuple(
		fc.constantFrom(...UNITS),
		fc.uniqueArray(names, {
			minLength: 1,
			maxLength: 8,
			selector: (name) => name.toLowerCase().replace(/\s+/g, " "),
		}),
	)
	.chain(([units, pigments]) =>
		fc.record({
			settings: some(SETTINGS).map((settings) => ({ ...settings, units })),
			closedDays: fc.array(days, { minLength: 1, maxLength: 30 }),
			mixes: filled(some(INGREDIENT), 60),
			pigments: filled(some(PIGMENT), 30),
			swatchPigments: fc.constant(pigments),
			swatches: filled(
				fc
					.tuple(some(SWATCH), fc.subarray(pigments), numbers)
					.map(([row, dosed, dose]) => ({
						...row,
						...(dosed.length > 0 && {
							doses: Object.fromEntries(dosed.map((name) => [name, dose])),
						}),
					})),
				40,
			),
			stock: filled(some(STOCK), 80),
			log: filled(some(LOGGED), 40),
		}),
	);

describe("what is typed about the studio", () => {
	test("is read back as it was written", () => {
		fc.assert(
			fc.property(studios, (studio) => {
				const units = studio.settings.units as UnitSystem;
				expect(asText(studioIn(regionsOf(studio, units)))).toEqual(
					asText({ units, ...studio }),
				);
			}),
			{ numRuns: 40 },
		);
	});

	test.each(UNITS)("is a studio file from the start, %s", (units) => {
		const studio = starterStudio(units);
		expect(checkedStudio(studio)).toEqual(studio);
		expect(asText(studioIn(regionsOf(studio, units)))).toEqual(
			asText({ units, ...studio, log: [] }),
		);
	});

	test("is refused where its swatches dose more pigments than have columns", () => {
		const swatches = Array.from({ length: 9 }, (_, i) => ({
			doses: { [`Pigment ${i}`]: 0.01 },
		}));
		expect(() => studioSlots({ ...starterStudio("us"), swatches })).toThrow(
			/there is room for 8$/,
		);
	});
});

test("a workbook says the version of the package that wrote it", () => {
	expect(VERSION).toBe(
		JSON.parse(readFileSync("package.json", "utf8")).version,
	);
	const [studio] = studioTabs;
	const at = studio?.names?.version;
	expect(studio?.blocks.find((block) => block.at === at)?.rows).toEqual([
		[VERSION],
	]);
});
