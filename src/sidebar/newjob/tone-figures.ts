/** What each tone and pigment of the job takes. */

import { PIGMENT_HEADROOM } from "../../functions/headroom";
import { BINDER_SHARE } from "../../functions/mix";
import { TONE_WEIGHTS } from "../../functions/tones";
import type { Ingredient, PanelStart } from "../../sheets/messages";
import { numberOf, rowsOf } from "./asked";
import type { JobForm } from "./form";
import { toneArguments } from "./mistakes";

export interface ToneFigures {
	/** On the scale, pigment included. */
	mass: number;
	/** By pigment. */
	grams: ReadonlyMap<string, number>;
	/** How far over the pigment limit, as a share of cement; 0 when within. */
	over: number;
}

export interface PigmentFigures {
	name: string;
	grams: number;
	/** Absent where the studio has typed no price. */
	price?: number;
}

/** Each tone's mass and grams in a batch of this mass, and what the pigments come to. */
export function toneFigures(
	form: JobForm,
	start: PanelStart,
	mass: number,
): {
	tones: ReadonlyMap<number, ToneFigures>;
	pigments: readonly PigmentFigures[];
} {
	const ingredients = ingredientsOf(form, start);
	const binderShare = numberOf(
		BINDER_SHARE,
		ingredients.map(({ parts }) => [parts]),
		ingredients.map((ingredient) => [ingredient.binderShare]),
	);
	const weights = rowsOf(
		TONE_WEIGHTS,
		...toneArguments(form, mass, binderShare),
	);
	const over = overLimit(form, start);
	const tones = form.tones.map(({ key }, index): [number, ToneFigures] => {
		const [, onScale = 0, ...grams] = weights[index] ?? [];
		const byPigment = form.pigments.map(
			(pigment, place) => [pigment, grams[place] ?? 0] as const,
		);
		return [
			key,
			{ mass: onScale, grams: new Map(byPigment), over: over[index] ?? 0 },
		];
	});
	return {
		tones: new Map(tones),
		pigments: pigmentFigures(
			form,
			start,
			tones.map(([, tone]) => tone),
		),
	};
}

const ingredientsOf = (form: JobForm, { mixes }: PanelStart): Ingredient[] =>
	mixes.find(({ name }) => name === form.mix)?.ingredients ?? [];

/** Cement in the binder of the mix: limits are of cement, doses of binder. */
function cementInBinder(ingredients: readonly Ingredient[]): number {
	const sum = (share: "cementShare" | "binderShare") =>
		ingredients.reduce((all, each) => all + each.parts * each[share], 0);
	return sum("cementShare") / sum("binderShare");
}

/** How far each tone is over the limit; nothing where the mix says of no cement. */
function overLimit(form: JobForm, start: PanelStart): number[] {
	const cementShare = cementInBinder(ingredientsOf(form, start));
	if (form.pigments.length === 0 || cementShare === 0) return [];
	const doses = toneArguments(form, 1, 1)[0] as unknown[][];
	const maxima = form.pigments.map(
		(name) => start.pigments.find((pigment) => pigment.name === name)?.maximum,
	);
	return rowsOf(
		PIGMENT_HEADROOM,
		doses.map(([, , ...row]) => row.map((dose) => (dose === "" ? 0 : dose))),
		[maxima],
		cementShare,
	).map(([headroom = 0]) => Math.max(0, -headroom));
}

function pigmentFigures(
	form: JobForm,
	start: PanelStart,
	tones: readonly ToneFigures[],
): PigmentFigures[] {
	return form.pigments.map((name) => {
		const grams = tones.reduce(
			(sum, tone) => sum + (tone.grams.get(name) ?? 0),
			0,
		);
		const each = start.pigments.find((pigment) => pigment.name === name);
		return each && each.pricePerGram > 0
			? { name, grams, price: grams * each.pricePerGram }
			: { name, grams };
	});
}
