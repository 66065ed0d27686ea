/** Where the cost is: its parts, by the plan that the price is taken from. */
import { type Given, setting } from "../given";
import { all, flat, from, fromBoth, type Known } from "../known";
import { costOfMaterials, countedGoods } from "./materialcost";
import type { MaterialsAnswer } from "./materials";
import type { Material } from "./pricing";
import type { PlanAnswer } from "./whatifs";

export interface CostLine {
	key:
		| "mix"
		| "pigment"
		| "sealer"
		| "goods"
		| "work"
		| "overhead"
		| "remake"
		| "travel"
		| "cardFee"
		| "changes";
	name: string;
	amount: Known<number>;
}

interface Spent {
	materials: MaterialsAnswer;
	labor: Known<number>;
	plan: Known<PlanAnswer>;
	travel: Known<number>;
	cardFee: Known<number>;
	changes: Known<number>;
}

export function costLines(given: Given, spent: Spent): CostLine[] {
	const { materials, plan } = spent;
	const assumed = flat(from(plan, (chosen) => chosen.assumed));
	const ofMaterials = (list: Known<readonly Material[]>): Known<number> =>
		fromBoth(
			flat(from(list, costOfMaterials)),
			assumed,
			(money, share) => money * share.materials,
		);
	const mix = ofMaterials(materials.mix);
	const pigment = ofMaterials({ is: materials.pigments });
	const sealer = ofMaterials({ is: [materials.sealer] });
	const goods = ofMaterials({ is: countedGoods(materials) });
	const work = fromBoth(
		spent.labor,
		assumed,
		(money, share) => money * share.hours,
	);
	const made = from(
		all<[number, number, number, number, number]>([
			mix,
			pigment,
			sealer,
			goods,
			work,
		]),
		(parts) => parts.reduce((total, part) => total + part),
	);
	const overhead = fromBoth(
		made,
		setting(given, "overhead"),
		(money, share) => money * share,
	);
	const remake = from(
		all<[number, number, number]>([made, overhead, setting(given, "remake")]),
		([money, over, share]) => (money + over) * share,
	);
	return [
		{ key: "mix", name: "Mix, its waste and the paste in it", amount: mix },
		{ key: "pigment", name: "Pigment", amount: pigment },
		{ key: "sealer", name: "Sealer", amount: sealer },
		{
			key: "goods",
			name:
				countedGoods(materials).length > 0
					? "Mold and other goods"
					: "Mold and other goods: none typed yet",
			amount: goods,
		},
		{ key: "work", name: "Work", amount: work },
		{ key: "overhead", name: "Overhead on both", amount: overhead },
		{ key: "remake", name: "Remake allowance", amount: remake },
		{
			key: "travel",
			name: "Travel and outside help",
			amount: spent.travel,
		},
		{
			key: "cardFee",
			name: "Card fee, on the quote's total",
			amount: spent.cardFee,
		},
		{ key: "changes", name: "Change orders", amount: spent.changes },
	];
}
