/** A material with its pack and price, and what the job's amount of it costs. */
import { all, from, is, isKnown, type Known, missing, orNull } from "../known";

export interface Material {
	name: string;
	unit: string;
	needed: Known<number>;
	pack: Known<number>;
	packPrice: Known<number>;
	/** Water of the tap: nobody buys it. */
	isFree: boolean;
	/** Its amount is worked out and not typed. */
	isCounted?: boolean;
	/** Of what the job uses, not of whole packs. */
	cost: Known<number>;
}

/** A material with what the job's amount of it costs. */
export function priced(
	material: Omit<Material, "cost" | "isFree">,
	isWater = false,
): Material {
	const { name, needed, pack, packPrice } = material;
	const price = all<[number, number]>([pack, packPrice]);
	const isFree = isWater && "missing" in price;
	const cost: Known<number> =
		"missing" in price
			? isFree
				? is(0)
				: missing(`the price of ${name}`)
			: from(price, ([size, money]) => ((orNull(needed) ?? 0) / size) * money);
	return {
		...material,
		isFree,
		cost: isKnown(needed) && needed.is !== 0 ? cost : needed,
	};
}

/** The value, or else what to type. */
export const knownOr = <T>(value: T | undefined, what: string): Known<T> =>
	value === undefined ? missing(what) : is(value);
