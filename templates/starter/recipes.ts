/** The mixes that a new studio begins with. */
import type { IngredientRow } from "../../src/job/fields/mix";

type Part = readonly [
	ingredient: string,
	parts: number,
	specificGravity: number,
	binderShare: number,
	cementShare: number,
	waterShare: number,
];

/** What a pack of an ingredient holds, and costs. */
export type Packs = Readonly<
	Record<string, readonly [pack: number, price: number]>
>;

// Kilograms a cubic meter of the mix that Lepech and Li (ACI Materials Journal 105(4), 2008) call M45; from memory.
// Specific gravities: cement 3.15, fly ash 2.14, sand 2.62, reducer 1.26 (Materials 2020, 13, 1505, Table 2); fiber 1.30.
const PUBLISHED_M45: readonly Part[] = [
	["Portland cement", 583, 3.15, 1, 1, 0],
	["Fly ash", 700, 2.14, 1, 0, 0],
	["Fine silica sand", 467, 2.62, 0, 0, 0],
	["Water", 298, 1, 0, 0, 1],
	["Water reducer", 19, 1.26, 0, 0, 0.6],
	["PVA fiber, 8 mm", 26, 1.3, 0, 0, 0],
];

// Invented for the demo: a white mix with a glassy pozzolan and two fiber lengths, 1.5% of its volume.
const INVENTED_WHITE: readonly Part[] = [
	["White cement", 46, 3.1, 1, 1, 0],
	["Pozzolan", 8, 2.4, 1, 0, 0],
	["Fine sand", 46, 2.65, 0, 0, 0],
	["Water", 15.5, 1, 0, 0, 1],
	["Water reducer", 0.9, 1.07, 0, 0, 0.7],
	["Fiber, long", 0.7, 1.3, 0, 0, 0],
	["Fiber, short", 0.35, 1.3, 0, 0, 0],
];

// Invented: a bagged dry blend states its binder share on the data sheet.
const INVENTED_BAGGED: readonly Part[] = [
	["Dry blend", 100, 2.85, 0.55, 0.45, 0],
	["Water", 14, 1, 0, 0, 1],
	["Water reducer", 0.5, 1.07, 0, 0, 0.7],
	["Fiber", 1, 1.3, 0, 0, 0],
];

/** The mix that the starter's swatches were cast of. */
export const WHITE_MIX = "White casting mix, invented";

const MIXES: Readonly<Record<string, readonly Part[]>> = {
	"ECC M45, published": PUBLISHED_M45,
	[WHITE_MIX]: INVENTED_WHITE,
	"Bagged blend, invented": INVENTED_BAGGED,
};

/** What counts as water when the mix temperature is worked out. */
const WATERY = ["Water", "Water reducer"];

/** The mixes, with pack and price of the ingredients that come in packs. */
export const mixesPacked = (packs: Packs): IngredientRow[] =>
	Object.entries(MIXES).flatMap(([mix, parts]) =>
		parts.map(
			([
				ingredient,
				parts,
				specificGravity,
				binderShare,
				cementShare,
				waterShare,
			]) => {
				const [pack, packPrice] = packs[ingredient] ?? [];
				return {
					mix,
					ingredient,
					parts,
					specificGravity,
					binderShare,
					cementShare,
					waterShare,
					group: WATERY.includes(ingredient) ? "water" : "solid",
					...(pack !== undefined && { pack, packPrice }),
				};
			},
		),
	);
