/** What the materials of the job cost together, and which of them have no price. */
import { sum } from "../../../calc/sum";
import { all, from, isKnown, type Known, look } from "../known";
import type { MaterialsAnswer } from "./materials";
import type { Material } from "./pricing";

/** Goods of which nobody typed how many are not in the cost. */
export const countedGoods = ({ goods }: MaterialsAnswer): readonly Material[] =>
	goods.filter(({ needed }) => !("missing" in needed));

/** The materials of the job that its cost counts. */
export const countedMaterials = (
	materials: MaterialsAnswer,
): Known<readonly Material[]> =>
	from(materials.mix, (mix) => [
		...mix,
		...materials.pigments,
		materials.sealer,
		...countedGoods(materials),
	]);

/** What the job uses of these; those without a price are left out. */
export function costOfMaterials(materials: readonly Material[]): Known<number> {
	const wrong = materials.find(({ cost }) => "look" in cost);
	if (wrong && "look" in wrong.cost)
		return look(`${wrong.name}: ${wrong.cost.look}`);
	return from(all(materials.map(({ needed }) => needed)), () =>
		sum(materials.map(({ cost }) => (isKnown(cost) ? cost.is : 0))),
	);
}

/** Names of the materials that the cost leaves out. */
export const unpricedOf = (materials: readonly Material[]): string[] =>
	materials
		.filter(({ needed, cost }) => isKnown(needed) && "missing" in cost)
		.map(({ name }) => name);

/** What keeps goods for the molds from being counted; the cost leaves them out. */
export const uncountedOf = ({ goods }: MaterialsAnswer): string[] =>
	goods.flatMap(({ needed, isCounted }) =>
		isCounted && "missing" in needed ? [needed.missing] : [],
	);
