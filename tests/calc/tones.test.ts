import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sum } from "../../src/calc/sum";
import {
	dosedKg,
	mixToLightenKg,
	pigmentToDeepenKg,
	toneWeights,
} from "../../src/calc/tones";

const share = (min: number, max: number) =>
	fc.double({ min, max, noNaN: true });
const tones = fc.array(
	fc.record({
		name: fc.string(),
		share: share(0.01, 10),
		doses: fc.tuple(share(0, 0.1), share(0, 0.1)),
	}),
	{ minLength: 1, maxLength: 8 },
);

describe("tone weights", () => {
	test("twice the batch is twice each mass, and shares add up to the batch", () => {
		fc.assert(
			fc.property(tones, share(0.1, 1), (tones, binderShare) => {
				const of = (massKg: number) =>
					toneWeights({ tones, massKg, binderShare });
				const [once, twice] = [of(60), of(120)];
				expect(sum(once.map(({ undosedKg }) => undosedKg))).toBeCloseTo(60, 9);
				for (const [i, tone] of once.entries()) {
					expect(twice[i]?.scaleKg).toBeCloseTo(2 * tone.scaleKg, 9);
					expect(tone.scaleKg).toBeCloseTo(
						tone.undosedKg + sum(tone.pigmentsKg),
						9,
					);
				}
			}),
			{ seed: 1 },
		);
	});
});

describe("correcting a tone", () => {
	const mass = share(0.1, 500);
	const binder = share(0.1, 1);

	test("what deepening asks for reaches the dose, and lightening takes it back", () => {
		fc.assert(
			fc.property(
				mass,
				binder,
				share(0.001, 0.1),
				share(0, 0.1),
				(undosed, binderShare, doseNow, more) => {
					const doseWanted = doseNow + more;
					const now = dosedKg({ massKg: undosed, binderShare, dose: doseNow });
					const pigment = pigmentToDeepenKg({
						massKg: now,
						binderShare,
						doseNow,
						doseWanted,
					});
					const deeper = now + pigment;
					expect(deeper).toBeCloseTo(
						dosedKg({ massKg: undosed, binderShare, dose: doseWanted }),
						9,
					);
					const mix = mixToLightenKg({
						massKg: deeper,
						binderShare,
						doseNow: doseWanted,
						doseWanted: doseNow,
					});
					// All pigment over all binder is the dose it had.
					const all = pigment + undosed * binderShare * doseNow;
					expect(all / ((undosed + mix) * binderShare)).toBeCloseTo(doseNow, 9);
				},
			),
			{ seed: 2 },
		);
	});
});
