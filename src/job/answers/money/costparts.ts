/** The lines of the cost as they are shown: with the materials together, and each as a share of the whole. */
import { sum } from "../../../calc/sum";
import { all, from, fromBoth, type Known, missing } from "../known";
import type { CostAnswer } from "./cost";
import type { CostLine } from "./costlines";

type PartKey = CostLine["key"] | "materials" | "cost";

interface CostPart {
	key: PartKey;
	amount: Known<number>;
	/** Of the cost. */
	share: Known<number>;
}

const MATERIALS: readonly PartKey[] = ["mix", "pigment", "sealer", "goods"];

export function costParts({ lines, cost }: CostAnswer): CostPart[] {
	const part = (key: PartKey, amount: Known<number>): CostPart => ({
		key,
		amount,
		share: shareOf(amount, cost),
	});
	const isMaterial = ({ key }: CostLine) => MATERIALS.includes(key);
	const parts = (of: readonly CostLine[]) =>
		of.map(({ key, amount }) => part(key, amount));
	const materials = lines.filter(isMaterial);
	return [
		...parts(materials),
		part("materials", from(all(materials.map(({ amount }) => amount)), sum)),
		...parts(lines.filter((line) => !isMaterial(line))),
		part("cost", cost),
	];
}

/** Of nothing there is no share. */
const shareOf = (amount: Known<number>, whole: Known<number>): Known<number> =>
	"is" in whole && whole.is === 0
		? missing("a cost above 0")
		: fromBoth(amount, whole, (part, all) => part / all);
