/** How the job looks, in the words of its quote. */
import { batchShares } from "../../calc/tones";
import { isBlank } from "../reading/cells";
import type { Basis } from "./basis";
import { lookOf } from "./given";
import { all, flat, from, is, type Known, missing } from "./known";
import { isLayUp } from "./tones";

/** The person's own words, or the tones with their shares and the finish. */
export function lookWords({ given, tones }: Basis): Known<string> {
	const { look } = given.job;
	if (!isBlank(look)) return is(String(look).trim());
	const parts = flat(
		from(tones.typed, (each): Known<string[]> => {
			if (each.every(({ share }) => share === 0))
				return missing("type the shares of the tones");
			const shares = batchShares(each);
			return is(
				each.flatMap(({ name }, i) => {
					const share = shares[i] ?? 0;
					return share > 0 ? [`${name} ${Math.round(share * 100)}%`] : [];
				}),
			);
		}),
	);
	return from(
		all<[string[], string, string]>([
			parts,
			lookOf(given, "finish"),
			lookOf(given, "sealing"),
		]),
		([named, finish, sealing]) =>
			`${named.join(", ")}; ${made(named, isLayUp(given))}${finish} finish${sealing === "sealed" ? ", sealed" : ""}`,
	);
}

/** How several tones come together. */
const made = (tones: readonly string[], laidUp: boolean): string =>
	tones.length < 2 ? "" : laidUp ? "laid up in the mold, " : "folded by hand, ";
