/** How much of each pigment all tones take together. */
import { sum } from "../../calc/sum";
import type { Basis } from "./basis";
import { all, from, fromBoth, type Known } from "./known";

export interface PigmentTotal {
	/** With its water. */
	weighedKg: Known<number>;
	dryKg: Known<number>;
	waterKg: Known<number>;
	/** Of what is bought. */
	boughtKg: Known<number>;
}

export const pigmentTotals = ({ tones, pigments }: Basis): PigmentTotal[] =>
	pigments.map(({ solids }, i) => {
		const total = (of: "weighedKg" | "dryKg") =>
			from(all(tones.rows.map((tone) => tone[of])), (each) =>
				sum(each.map((pigmentsKg) => pigmentsKg[i] ?? 0)),
			);
		const weighedKg = total("weighedKg");
		const dryKg = total("dryKg");
		return {
			weighedKg,
			dryKg,
			waterKg: fromBoth(weighedKg, dryKg, (wet, dry) => wet - dry),
			boughtKg: fromBoth(dryKg, solids, (dry, share) => dry / share),
		};
	});
