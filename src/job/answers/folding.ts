/** How fine folding makes the bands, and from how far they blur. */
import { bandWidthM, foldsUntilBlurred } from "../../calc/folding";
import type { Basis } from "./basis";
import { lookOf } from "./given";
import { fromBoth, type Known } from "./known";

interface FoldingAnswer {
	bandM: Known<number>;
	foldsUntilBlurred: Known<number>;
}

export function foldingAnswer({ given }: Pick<Basis, "given">): FoldingAnswer {
	const start = lookOf(given, "bandStart");
	return {
		bandM: fromBoth(start, lookOf(given, "folds"), bandWidthM),
		foldsUntilBlurred: fromBoth(
			start,
			lookOf(given, "seenFrom"),
			foldsUntilBlurred,
		),
	};
}
