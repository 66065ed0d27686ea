/** What each tone and pigment of the job takes. */
import { BINDER_SHARE } from "../../functions/mix";
import { PIGMENT_HEADROOM, TONE_WEIGHTS } from "../../functions/tones";
import type { PanelStart } from "../../sheets/messages";
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
	const mix = start.mixes.find(({ name }) => name === form.mix);
	const ingredients = mix?.ingredients ?? [];
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

/** Of cement that is all of the binder; where it is less, the dose is over by more. */
function overLimit(form: JobForm, start: PanelStart): number[] {
	if (form.pigments.length === 0) return [];
	const doses = toneArguments(form, 1, 1)[0] as unknown[][];
	const maxima = form.pigments.map(
		(name) => start.pigments.find((pigment) => pigment.name === name)?.maximum,
	);
	return rowsOf(
		PIGMENT_HEADROOM,
		doses.map(([, , ...row]) => row.map((dose) => (dose === "" ? 0 : dose))),
		[maxima],
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
