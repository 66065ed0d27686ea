/** A first price: what the materials cost, as far as packs have a price. */
import { sum } from "../../calc/sum";
import type { PanelStart } from "../../sheets/messages";
import type { JobForm } from "./form";
import type { PigmentFigures } from "./tone-figures";

export interface FirstPrice {
	mix: number;
	pigment: number;
	/** What is used and has no pack price: not in it. */
	missing: readonly string[];
}

/** Of a batch of this mass; plain water costs nothing. */
export function firstPrice(
	form: JobForm,
	{ mixes }: PanelStart,
	mass: number,
	pigments: readonly PigmentFigures[],
): FirstPrice {
	const mix = mixes.find(({ name }) => name === form.mix);
	const ingredients = mix?.ingredients ?? [];
	const parts = sum(ingredients.map((each) => each.parts));
	const used = pigments.filter(({ grams }) => grams > 0);
	return {
		mix: sum(
			ingredients.map(
				(each) => (each.parts / parts) * mass * each.pricePerMass,
			),
		),
		pigment: sum(used.map(({ price = 0 }) => price)),
		missing: [
			...ingredients.filter(
				(each) =>
					each.parts > 0 && each.pricePerMass === 0 && each.waterShare < 1,
			),
			...used.filter(({ price }) => price === undefined),
		].map(({ name }) => name),
	};
}
