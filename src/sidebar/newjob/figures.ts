/** What the job takes, worked out as one types by the functions that the cells call. */

import { InputError } from "../../calc/errors";
import { callFunction } from "../../functions/call";
import type { SheetFunction } from "../../functions/declare";
import { MIXER_LOADS } from "../../functions/loads";
import { BATCH_MASS, BINDER_SHARE, MIX_DENSITY } from "../../functions/mix";
import { PIECE_TAKEOFF } from "../../functions/takeoff";
import { PIGMENT_HEADROOM, TONE_WEIGHTS } from "../../functions/tones";
import { fromSi, toSi } from "../../functions/units";
import type { PanelStart } from "../../sheets/messages";
import { filledPieces, type JobForm, type Units } from "./form";
import { type FormMistakes, takeoffArguments, toneArguments } from "./mistakes";
import { numberOrText } from "./typed";

export interface Load {
	number: number;
	mass: number;
}

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

/** Absent is what cannot be known yet; masses in the job's units. */
export interface Figures {
	volume?: number;
	mass?: number;
	/** Mass of one piece as cast, waste not counted, by the piece's key. */
	pieceMass: ReadonlyMap<number, number>;
	loads?: readonly Load[];
	tones: ReadonlyMap<number, ToneFigures>;
	pigments?: readonly PigmentFigures[];
	/** What the studio's own numbers are wrong in: mix or mixer. */
	problem?: string;
}

type Casting = readonly [name: string, mass: number];

/** Castings past which loads are left to the workbook: a slip of the finger may ask for a million. */
const MOST_CASTINGS = 200;

const number = (fn: SheetFunction, ...args: unknown[]): number =>
	callFunction(fn, args) as number;

const rows = (fn: SheetFunction, ...args: unknown[]): number[][] => {
	const all = callFunction(fn, args);
	return (Array.isArray(all) ? all : [[all]]) as number[][];
};

/** The figures that the form already allows. */
export function figuresOf(
	form: JobForm,
	mistakes: FormMistakes,
	start: PanelStart,
): Figures {
	const none: Figures = { pieceMass: new Map(), tones: new Map() };
	if (mistakes.pieces.size > 0) return none;
	const volumes = rows(PIECE_TAKEOFF, ...takeoffArguments(form));
	const volume = volumes.reduce((sum, row) => sum + (row[4] ?? 0), 0);
	try {
		const batch = batchFigures(form, start, volumes, volume);
		return mistakes.tones.size > 0 || batch.mass === undefined
			? batch
			: { ...batch, ...toneFigures(form, start, batch.mass) };
	} catch (error) {
		if (error instanceof InputError)
			return { ...none, volume, problem: error.message };
		throw error;
	}
}

function batchFigures(
	form: JobForm,
	start: PanelStart,
	volumes: readonly number[][],
	volume: number,
): Figures {
	const mix = start.mixes.find(({ name }) => name === form.mix);
	if (!mix || volume === 0)
		return { volume, pieceMass: new Map(), tones: new Map() };
	const density = number(
		MIX_DENSITY,
		mix.ingredients.map(({ parts }) => [parts]),
		mix.ingredients.map(({ specificGravity }) => [specificGravity]),
		start.air,
		form.units,
	);
	const mass = (of: number, waste: number) =>
		of === 0 ? 0 : number(BATCH_MASS, of, density, waste, form.units);
	const pieces = filledPieces(form);
	const castings = pieces.flatMap((piece, index) =>
		repeated<Casting>(piece.quantity, [
			piece.name.trim(),
			mass(volumes[index]?.[2] ?? 0, start.waste),
		]),
	);
	return {
		volume,
		mass: mass(volume, start.waste),
		pieceMass: new Map(
			pieces.map(({ key }, index) => [key, mass(volumes[index]?.[2] ?? 0, 0)]),
		),
		loads:
			castings.length > MOST_CASTINGS
				? undefined
				: loadsOf(castings, mixerCapacity(start, form.units)),
		tones: new Map(),
	};
}

const repeated = <T>(quantity: string, casting: T): T[] =>
	Array(Math.min(Number(numberOrText(quantity)), MOST_CASTINGS + 1)).fill(
		casting,
	);

/** The mixer's capacity where the units are still being chosen. */
export const mixerCapacity = (start: PanelStart, units: Units): number =>
	units === start.units
		? start.mixerCapacity
		: fromSi(toSi(start.mixerCapacity, "mass", start.units), "mass", units);

function loadsOf(castings: readonly Casting[], capacity: number): Load[] {
	const loads = new Map<number, number>();
	for (const [load = 0, , mass = 0] of rows(MIXER_LOADS, castings, capacity))
		loads.set(load, (loads.get(load) ?? 0) + mass);
	return [...loads].map(([number, mass]) => ({ number, mass }));
}

function toneFigures(
	form: JobForm,
	start: PanelStart,
	mass: number,
): Pick<Figures, "tones" | "pigments"> {
	const mix = start.mixes.find(({ name }) => name === form.mix);
	const ingredients = mix?.ingredients ?? [];
	const binderShare = number(
		BINDER_SHARE,
		ingredients.map(({ parts }) => [parts]),
		ingredients.map((ingredient) => [ingredient.binderShare]),
	);
	const weights = rows(TONE_WEIGHTS, ...toneArguments(form, mass, binderShare));
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
	return rows(
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
