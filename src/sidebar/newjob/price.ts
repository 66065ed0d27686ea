/** A first price: what the materials cost, as far as packs have a price. */
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
	const parts = ingredients.reduce((sum, each) => sum + each.parts, 0);
	const used = pigments.filter(({ grams }) => grams > 0);
	return {
		mix: ingredients.reduce(
			(sum, each) => sum + (each.parts / parts) * mass * each.pricePerMass,
			0,
		),
		pigment: used.reduce((sum, { price = 0 }) => sum + price, 0),
		missing: [
			...ingredients.filter(
				(each) =>
					each.parts > 0 && each.pricePerMass === 0 && each.waterShare < 1,
			),
			...used.filter(({ price }) => price === undefined),
		].map(({ name }) => name),
	};
}
