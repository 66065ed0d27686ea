/** The first thing that is wrong with what is typed about the tones, or is still missing. */
import type { Basis } from "./basis";
import { isWeighed } from "./card/loadpour";
import { lookOf } from "./given";
import { all, from, type Said, saidOf } from "./known";

const WEIGHED =
	"Weights are typed on the Pour card: a change here makes another plan, and the card will say so.";

export function tonesCheck({ given, mix, tones }: Basis): Said {
	const needed = all<unknown[]>([
		mix.ingredients,
		mix.binderShare,
		tones.typed,
		...(["finish", "sealing", "state", "placing"] as const).map((key) =>
			lookOf(given, key),
		),
		tones.asWeighed,
		tones.pigmentWater,
	]);
	const weighed = (given.job.pours ?? []).some(isWeighed);
	return saidOf(from(needed, () => (weighed ? WEIGHED : "fine")));
}
