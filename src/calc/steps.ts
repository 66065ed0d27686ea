/** The steps of a pull-off plan: which never change, whatever is weighed. */
import { vesselChains } from "./chains";
import { oneDose } from "./order";
import { sum } from "./sum";
import { batchShares, type Tone } from "./tones";

/** 0 is the mixer, 1 bucket A and so on. */
export type Vessel = number;

export type Step =
	| {
			kind: "fill";
			vessel: Vessel;
			bucket: Vessel;
			later: number;
			part: number;
	  }
	| { kind: "add"; vessel: Vessel; pigment: number; dose: number }
	| {
			kind: "pull off" | "keep";
			vessel: Vessel;
			/** Place in the table of tones. */
			tone: number;
			/** Shares of this tone and of what the vessel still gives after it. */
			part: number;
			later: number;
	  };

/** The steps in the order of the plan; tones of share 0 have none. */
export function pullOffSteps(tones: readonly Tone[]): Step[] {
	const shares = batchShares(tones);
	const inPlan = tones.flatMap(({ share }, i) => (share > 0 ? [i] : []));
	const chains = vesselChains(inPlan.flatMap((i) => tones[i] ?? [])).map(
		(chain) => chain.flatMap((i) => inPlan[i] ?? []),
	);
	const weights = chains.map((chain) => sum(chain.map((i) => shares[i] ?? 0)));
	const doses = oneDose(tones.map((tone) => tone.doses));
	return [
		...chains.slice(1).map((_, i): Step => {
			const bucket = i + 1;
			const part = weights[bucket] ?? 0;
			const later = (weights[0] ?? 0) + sum(weights.slice(bucket + 1));
			return { kind: "fill", vessel: 0, bucket, part, later };
		}),
		...chains.flatMap((chain, vessel) =>
			chain.flatMap((tone, i) => [
				...addSteps(vessel, doses[chain[i - 1] ?? -1], doses[tone] ?? []),
				giveStep(vessel, chain.slice(i), shares),
			]),
		),
	];
}

/** An addition of each pigment whose dose rises. */
const addSteps = (
	vessel: Vessel,
	before: readonly number[] = [],
	doses: readonly number[],
): Step[] =>
	doses.flatMap((dose, pigment) =>
		dose > (before[pigment] ?? 0)
			? [{ kind: "add", vessel, pigment, dose } as const]
			: [],
	);

function giveStep(
	vessel: Vessel,
	[tone = 0, ...after]: readonly number[],
	shares: readonly number[],
): Step {
	const part = shares[tone] ?? 0;
	const later = sum(after.map((i) => shares[i] ?? 0));
	const kind = after.length > 0 ? "pull off" : "keep";
	return { kind, vessel, tone, part, later };
}
