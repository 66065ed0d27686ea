/** Every check: fine on the sound demo, made to speak by a job that is broken in one place, and not fine without what it needs. */
import { describe, expect, test } from "vitest";
import { byWorst, checksOf } from "../../../src/job/answers/checks";
import { wholeOf } from "../../../src/job/answers/whole";
import type { SettingKey } from "../../../src/job/fields/settings";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import { soundJob, soundStudio } from "./soundjob";

interface Broken {
	job?: (job: JobFile) => Partial<JobFile>;
	setting?: Partial<Record<SettingKey, number | string>>;
	studio?: (studio: StudioFile) => Partial<StudioFile>;
}

function checksWith({ job, setting, studio }: Broken = {}) {
	const sound = soundJob();
	const starter = soundStudio();
	const own = {
		...starter,
		...studio?.(starter),
		settings: { ...starter.settings, ...setting },
	};
	return checksOf(wholeOf(own, { ...sound, ...job?.(sound) }));
}

const said = (what: string, broken: Broken) =>
	checksWith(broken).find((check) => check.what === what);

const piece =
	(index: number, change: object) =>
	({ pieces }: JobFile): Partial<JobFile> => ({
		pieces: pieces.map((row, i) => (i === index ? { ...row, ...change } : row)),
	});

const cutout =
	(index: number, change: object) =>
	({ cutouts = [] }: JobFile): Partial<JobFile> => ({
		cutouts: cutouts.map((row, i) =>
			i === index ? { ...row, ...change } : row,
		),
	});

const tone =
	(index: number, change: object) =>
	({ tones }: JobFile): Partial<JobFile> => ({
		tones: tones.map((row, i) => (i === index ? { ...row, ...change } : row)),
	});

const temperatures = (dry: number, water: number) => (): Partial<JobFile> => ({
	pours: [1, 2].map((load) => ({
		load,
		dryTemperature: dry,
		waterTemperature: water,
	})),
});

test("the sound demo has nothing to look at, and nothing is unknown", () => {
	for (const { what, state, say } of checksWith())
		expect([what, state, say]).toEqual([what, "fine", "fine"]);
});

// Of the demo: umber is allowed 6% of cement, and 46 of 54 of the binder is cement: 5.1% of binder.
// The vanity top of 980 × 520 less a sink of 360, 30 thick, weighs about 26 kg; the bar 128 kg in a mixer of 150 kg.
const CASES: readonly (readonly [string, Broken, RegExp])[] = [
	[
		"Everything calculates",
		{ job: piece(1, { a: "about a meter" }) },
		/^Look: .*"about a meter" is not a length/,
	],
	[
		"Everything calculates",
		{ job: () => ({ mix: "No such mix" }) },
		/^Look: there is no mix No such mix on the Mixes tab/,
	],
	[
		"Everything calculates",
		{ job: tone(2, { doses: { Rust: 0.02 } }) },
		/^Look: Rust is not on the Pigments tab/,
	],
	[
		"Everything calculates",
		{ job: tone(0, { share: -0.4 }) },
		/^Look: Shell: share must be between 0% and 100%, got -40%/,
	],
	[
		"Everything calculates",
		{ job: piece(1, { quantity: 50 }) },
		/^Look: there is room for 40/,
	],
	[
		"Pigment limit of every tone",
		{ job: tone(2, { doses: { Umber: 0.055 } }) },
		/^Look: a tone is over its pigment limit/,
	],
	[
		"Weights belong to this plan",
		{ job: () => ({ pours: [{ load: 1, steps: { 2: 50 } }] }) },
		/^Look: type the plan number/,
	],
	[
		"Weights belong to this plan",
		{ job: () => ({ pours: [{ load: 1, planNumber: 1, steps: { 2: 50 } }] }) },
		/^Look: weights were typed for another plan/,
	],
	[
		"Every mold is the right hand",
		{ job: piece(0, { notch: "" }) },
		/^Look: say how it is cast/,
	],
	// The vanity's sink of 360 moved to the back: 520 − 130 − 360 leaves 30 mm.
	[
		"Every cutout is in its place",
		{ job: cutout(1, { front: 130 }) },
		/^Look: Vanity top: cutout 2 leaves a strip of 30 mm to the edge, and the studio's least is 50 mm/,
	],
	[
		"Every cutout is in its place",
		{ job: cutout(0, { left: 2100 }) },
		/^Look: Breakfast bar: cutout 1 leaves the piece/,
	],
	[
		"Every cutout is in its place",
		{ job: cutout(0, { front: 300 }) },
		/^Look: Breakfast bar: cutout 1 leaves the piece/,
	],
	[
		"Every cutout is in its place",
		{ job: cutout(1, { count: 2, a: 60, spacing: 50 }) },
		/^Look: Vanity top: the openings of cutout 2 overlap/,
	],
	[
		"The crew can lift every piece",
		{ setting: { equipment: 100 } },
		/^Look: Breakfast bar: more than the crew and the lifting equipment/,
	],
	// The bar: 7.2 MPa flat, the strength at a day 0.342 × 5 MPa.
	[
		"Slabs carried flat by their ends",
		{ setting: { flexural: 5 } },
		/^Look: Breakfast bar: on edge, not flat: flat takes 630%/,
	],
	[
		"The crew can turn every mold over",
		{ job: piece(0, { moldMass: 130 }) },
		/^Look: Breakfast bar: more than the crew and the lifting equipment/,
	],
	[
		"Out of the mold before it shrinks onto it",
		{ setting: { longest_mold_hours: 20 } },
		/^Look: 24 h in the mold: from 20 h on Breakfast bar shrinks onto/,
	],
	[
		"Knockouts stay down",
		{
			job: ({ knockouts = [] }) => ({
				knockouts: knockouts.map((row) => ({ ...row, held: 10 })),
			}),
		},
		/^Look: a knockout would float/,
	],
	[
		"Every casting fits in one load",
		{ setting: { mixer_capacity: 120 } },
		/^Look: a piece is more than the mixer takes/,
	],
	[
		"Every load is enough to blend",
		{ setting: { least_blend: 130 } },
		/^Look: a load is less/,
	],
	[
		"Every tone is enough to blend",
		{ setting: { least_blend: 40 } },
		/^Look: a tone in the mixer is less/,
	],
	[
		"Every dose can be weighed to 5%",
		{ setting: { gram_division: 50 } },
		/^Look: a dose of a small load is too small/,
	],
	[
		"The card has columns for every load",
		{ job: piece(0, { quantity: 9 }) },
		/^Look: the Pour card has columns for 8 loads/,
	],
	[
		"Waste covers reserve and what sticks",
		{ job: () => ({ waste: 0.01 }) },
		/^Look: waste is less/,
	],
	[
		"The steps fit in the working time",
		{ setting: { step_minutes: 30 } },
		/^Look: mixing 6, \d+ steps [\d.]+ and placing 10 take/,
	],
	["The mix is not too warm", { job: temperatures(35, 30) }, /^Look: .*warmer/],
	[
		"Drying before it is covered",
		{
			job: () => ({
				dryingAir: 35,
				dryingHumidity: 0.2,
				dryingMix: 35,
				dryingWind: 30,
			}),
		},
		/^Look: too fast/,
	],
	[
		"The date can be met",
		{ job: () => ({ dueDate: "2027-03-10" }) },
		/^Look: delivery would be 13 days after/,
	],
	[
		"The price covers the cost",
		{ job: () => ({ priceTyped: 100 }) },
		/^Look: the price is below/,
	],
	[
		"What was ordered has its price",
		{ job: () => ({ stage: "ordered" }) },
		/^Look: type the price agreed/,
	],
	[
		"Payments fit the quote",
		{ job: () => ({ payments: [{ for: "balance", amount: 99_999 }] }) },
		/^Look: € .* more was paid than the quote/,
	],
	[
		"Every pigment is on the Pigments tab",
		{
			studio: ({ pigments }) => ({
				pigments: pigments.filter(({ name }) => name !== "Black"),
			}),
		},
		/^Look: Black is not on the Pigments tab/,
	],
	[
		"Neighboring tones can be told apart",
		{ job: tone(1, { doses: { Umber: 0.0001 } }) },
		/^Look: hard to tell from/,
	],
	[
		"Tone shares add up to 100%",
		{ job: tone(0, { share: 0.3 }) },
		/^Look: shares are not 100%/,
	],
];

describe("a job broken in one place", () => {
	test.each(CASES)("%s", (what, broken, sentence) => {
		const check = said(what, broken);
		expect(check?.state).toBe("look");
		expect(check?.say).toMatch(sentence);
	});
});

const without =
	(...keys: (keyof JobFile)[]) =>
	(): Partial<JobFile> =>
		Object.fromEntries(keys.map((key) => [key, undefined]));

describe("a check that lacks what it needs is not fine", () => {
	test.each<[string, Broken]>([
		["Everything calculates", { job: () => ({ pieces: [] }) }],
		["Everything calculates", { job: without("mix") }],
		["Pigment limit of every tone", { job: () => ({ tones: [] }) }],
		["Every mold is the right hand", { job: piece(0, { face: "" }) }],
		["The crew can lift every piece", { setting: { one_person: "" } }],
		["Every cutout is in its place", { job: cutout(0, { left: "" }) }],
		["Every cutout is in its place", { job: cutout(1, { front: "" }) }],
		["Every cutout is in its place", { job: cutout(1, { count: 2, a: 60 }) }],
		["Every cutout is in its place", { job: piece(0, { notch: "" }) }],
		["Every cutout is in its place", { setting: { least_strip: "" } }],
		["Every cutout is in its place", { job: piece(0, { shape: "area" }) }],
		["The crew can lift every piece", { setting: { crew: "" } }],
		["The crew can lift every piece", { setting: { equipment: "" } }],
		["Slabs carried flat by their ends", { setting: { flexural: "" } }],
		["Slabs carried flat by their ends", { setting: { cement: "" } }],
		["Slabs carried flat by their ends", { setting: { handling_factor: "" } }],
		["Slabs carried flat by their ends", { job: piece(0, { shape: "area" }) }],
		["The crew can turn every mold over", { job: piece(0, { moldMass: "" }) }],
		["The crew can turn every mold over", { job: piece(0, { face: "" }) }],
		[
			"Out of the mold before it shrinks onto it",
			{ job: without("pourDate", "dueDate") },
		],
		["Knockouts stay down", { job: without("knockouts") }],
		["Every casting fits in one load", { setting: { mixer_capacity: "" } }],
		["Every load is enough to blend", { setting: { least_blend: "" } }],
		["Every tone is enough to blend", { job: () => ({ pieces: [] }) }],
		["Every dose can be weighed to 5%", { setting: { gram_division: "" } }],
		["The card has columns for every load", { job: () => ({ pieces: [] }) }],
		["Waste covers reserve and what sticks", { setting: { sticks: "" } }],
		["The steps fit in the working time", { job: without("pours") }],
		["The mix is not too warm", { job: without("pours") }],
		["Drying before it is covered", { job: without("dryingWind") }],
		["The date can be met", { job: without("dueDate") }],
		["The price covers the cost", { job: without("mix") }],
		["What was ordered has its price", { job: () => ({ stage: "sold" }) }],
		[
			"Payments fit the quote",
			{ job: () => ({ pieces: [], payments: [{ amount: 1 }] }) },
		],
		[
			"Swatches match this mix and finish",
			{ job: () => ({ finish: "polished" }) },
		],
		[
			"Neighboring tones can be told apart",
			{ studio: () => ({ swatches: [] }) },
		],
		["Tone shares add up to 100%", { job: () => ({ tones: [] }) }],
	])("%s", (what, broken) => {
		const check = said(what, broken);
		expect(check?.state).not.toBe("fine");
		expect(check?.say).not.toBe("fine");
	});
});

test("every check has a case that breaks it, or lacks what it needs", () => {
	const broken = new Set(CASES.map(([what]) => what));
	expect(
		checksWith()
			.map(({ what }) => what)
			.filter((what) => !broken.has(what)),
	).toEqual(["Swatches match this mix and finish"]);
});

test("what is wrong comes first, the worst of it before the rest, then what is not known", () => {
	const order = byWorst(
		checksWith({
			job: () => ({ ...without("pours")(), waste: 0.01 }),
			setting: { equipment: 100 },
		}),
	).map(({ state, weight }) => `${state} ${weight}`);
	expect(order.slice(0, 2)).toEqual(["look 3", "look 2"]);
	expect(order.indexOf("fine 3")).toBeGreaterThan(
		order.lastIndexOf("unknown 2"),
	);
});
