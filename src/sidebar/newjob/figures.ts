/** What the job takes, worked out as one types by the functions that the cells call. */

import { InputError } from "../../calc/errors";
import { sum } from "../../calc/sum";
import { MIXER_LOADS } from "../../functions/loads";
import { BATCH_MASS, MIX_DENSITY } from "../../functions/mix";
import { PIECE_TAKEOFF } from "../../functions/takeoff";
import { fromSi, toSi } from "../../job/reading/units";
import type { PanelStart } from "../../sheets/messages";
import { numberOf, rowsOf } from "./asked";
import { filledPieces, type JobForm, type Units } from "./form";
import { type FormMistakes, takeoffArguments } from "./mistakes";
import { type FirstPrice, firstPrice } from "./price";
import {
	type PigmentFigures,
	type ToneFigures,
	toneFigures,
} from "./tone-figures";
import { numberOrText } from "./typed";

export interface Load {
	number: number;
	mass: number;
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
	price?: FirstPrice;
	/** What the studio's own numbers are wrong in: mix or mixer. */
	problem?: string;
}

type Casting = readonly [name: string, mass: number];

/** Castings past which loads are left to the workbook: a slip of the finger may ask for a million. */
const MOST_CASTINGS = 200;

/** The figures that the form already allows. */
export function figuresOf(
	form: JobForm,
	mistakes: FormMistakes,
	start: PanelStart,
): Figures {
	const none: Figures = { pieceMass: new Map(), tones: new Map() };
	if (mistakes.pieces.size > 0) return none;
	const volumes = rowsOf(PIECE_TAKEOFF, ...takeoffArguments(form));
	const volume = sum(volumes.map((row) => row[4] ?? 0));
	try {
		const batch = batchFigures(form, start, volumes, volume);
		if (mistakes.tones.size > 0 || batch.mass === undefined) return batch;
		const tones = toneFigures(form, start, batch.mass);
		const price = firstPrice(form, start, batch.mass, tones.pigments);
		return { ...batch, ...tones, price };
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
	const density = numberOf(
		MIX_DENSITY,
		mix.ingredients.map(({ parts }) => [parts]),
		mix.ingredients.map(({ specificGravity }) => [specificGravity]),
		start.air,
		form.units,
	);
	const mass = (of: number, waste: number) =>
		of === 0 ? 0 : numberOf(BATCH_MASS, of, density, waste, form.units);
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
	for (const [load = 0, , mass = 0] of rowsOf(MIXER_LOADS, castings, capacity))
		loads.set(load, (loads.get(load) ?? 0) + mass);
	return [...loads].map(([number, mass]) => ({ number, mass }));
}
