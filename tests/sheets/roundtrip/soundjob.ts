/** Jobs that a studio would not refuse, with names and texts that a sheet might take for something else. */
import fc from "fast-check";
import { nameKey } from "../../../src/calc/names";
import { ingredientsOf } from "../../../src/job/cells/jobcells";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	QUOTE,
	TRAVEL,
} from "../../../src/job/fields/cost";
import { CURE } from "../../../src/job/fields/cure";
import { JOB } from "../../../src/job/fields/job";
import { CURE_LOG, POUR } from "../../../src/job/fields/pour";
import { type JobFile, MOST } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import { starterStudio } from "../../../templates/starterstudio";
import { amount, HOSTILE, soundRow, soundRows } from "../../job/writtenjob";

const LENGTHS: Readonly<Record<UnitSystem, readonly (string | number)[]>> = {
	metric: [900, 1480.5, "2.4 m", "65 cm", "98 in", "8 ft 1/2 in", "1200"],
	us: [36, 61.25, "8' 1/2\"", "25-1/2 in", "61 1/4", "1.5 m", "48"],
};
const THICK: Readonly<Record<UnitSystem, readonly (string | number)[]>> = {
	metric: [30, "3 cm", "28.5", "1 1/4 in"],
	us: [1.5, "1 1/2", "3/4", '1-1/4"', "30 mm"],
};

/** Names that are not the same to anybody who reads them. */
const names = (maxLength: number) =>
	fc.uniqueArray(fc.constantFrom(...HOSTILE), {
		selector: nameKey,
		minLength: 1,
		maxLength,
	});

const hostile = fc.constantFrom(...HOSTILE);

export function soundJob(units: UnitSystem): fc.Arbitrary<JobFile> {
	const studio = starterStudio(units);
	const mix = String(studio.mixes[0]?.mix);
	const pigments = studio.pigments.map(({ name }) => String(name)).slice(0, 3);
	const piece = fc.record(
		{
			quantity: fc.integer({ min: 1, max: 9 }),
			shape: fc.constant("rectangle"),
			a: fc.constantFrom(...LENGTHS[units]),
			b: fc.constantFrom(...LENGTHS[units]),
			thickness: fc.constantFrom(...THICK[units]),
			face: fc.constantFrom("face up", "face down"),
		},
		{ requiredKeys: ["quantity", "shape", "a", "b", "thickness"] },
	);
	const pieces = names(6).chain((own) =>
		fc.tuple(...own.map((name) => piece.map((one) => ({ name, ...one })))),
	);
	const tones = names(MOST.tones).chain((own) =>
		fc.tuple(
			...own.map((name) =>
				fc
					.dictionary(
						fc.constantFrom(...pigments),
						fc.constantFrom(0.005, 0.01, 0.0275, 0.04),
						{ minKeys: 1 },
					)
					.map((doses) => ({ name, share: 1 / own.length, doses })),
			),
		),
	);
	const pour = fc.record({
		row: soundRow(POUR),
		weighed: fc.dictionary(
			fc.constantFrom(...ingredientsOf(studio, mix)),
			amount(0, 300),
			{ minKeys: 1 },
		),
		steps: fc.dictionary(
			fc.integer({ min: 0, max: 36 }).map(String),
			amount(0, 300),
			{ minKeys: 1 },
		),
	});
	return fc
		.record(
			{
				head: soundRow(JOB),
				client: hostile,
				title: hostile,
				look: hostile,
				sampleNumber: hostile,
				pieces,
				tones,
				cure: soundRow(CURE),
				quote: soundRow(QUOTE),
				pours: fc.array(pour, { minLength: 1, maxLength: 3 }).map((all) =>
					all.map(({ row, ...weights }, index) => ({
						load: index * 2 + 1,
						...row,
						...weights,
					})),
				),
				cureLog: soundRows(CURE_LOG, MOST.cureLog),
				changes: soundRows(CHANGE, MOST.changes),
				payments: soundRows(PAYMENT, MOST.payments),
				goods: soundRows(GOODS, MOST.goods),
				travel: soundRows(TRAVEL, MOST.travel),
			},
			{ requiredKeys: ["head", "client", "title", "pieces", "tones", "cure"] },
		)
		.map(
			({ head, cure, quote, ...rest }): JobFile => ({
				units,
				...head,
				...cure,
				...quote,
				mix,
				...rest,
			}),
		);
}
