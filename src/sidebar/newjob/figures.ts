/** What the job takes, as its answers say, in the units of the form. */
import { sum } from "../../calc/sum";
import type { Basis } from "../../job/answers/basis";
import { finishingAnswer } from "../../job/answers/cure/finishing";
import {
	all,
	from,
	isKnown,
	type Known,
	orNull,
	saying,
} from "../../job/answers/known";
import { loadsOf, overPieces } from "../../job/answers/loads";
import {
	costOfMaterials,
	unpricedOf,
} from "../../job/answers/money/materialcost";
import { materialsAnswer } from "../../job/answers/money/materials";
import { fromSi, type Quantity } from "../../job/reading/units";
import { filledPieces, type JobForm } from "./form";

interface ToneFigures {
	/** On the scale, pigment included. */
	mass: number;
	/** Dry, by pigment. */
	grams: ReadonlyMap<string, number>;
	/** How far over the pigment limit, as a share of cement; 0 when within. */
	over: number;
}

interface PigmentFigures {
	name: string;
	/** Dry. */
	grams: number;
	/** Absent where the studio has typed no price. */
	price?: number;
}

/** Of the materials, as far as packs have a price. */
interface FirstPrice {
	mix: number;
	pigment: number;
	/** What is used and has no pack price: not in it. */
	missing: readonly string[];
}

/** Absent is what cannot be known yet; masses in the job's units. */
export interface Figures {
	volume?: number;
	mass?: number;
	/** Mass of one piece as cast, waste not counted, by the piece's key. */
	pieceMass: ReadonlyMap<number, number>;
	/** Mass of each load. */
	loads?: readonly number[];
	tones: ReadonlyMap<number, ToneFigures>;
	pigments?: readonly PigmentFigures[];
	price?: FirstPrice;
	/** What the studio's own numbers are wrong in: mix or mixer. */
	problem?: string;
}

/** The figures that the form already allows. */
export function figuresOf(form: JobForm, basis: Basis): Figures {
	const { given, pieces, loads, tones } = basis;
	const shown = (quantity: Quantity, si: Known<number>): number | undefined =>
		isKnown(si) ? fromSi(si.is, quantity, form.units) : undefined;
	const materials = materialsAnswer(
		basis,
		{ finishing: finishingAnswer(basis) },
		{ goods: [] },
	);
	const dryKg = from(all(tones.rows.map((tone) => tone.dryKg)), (each) => each);
	const names = basis.pigments.map(({ name }) => name);
	const grams = (kg: number) => fromSi(kg, "pigment", form.units);
	return {
		volume: shown(
			"volume",
			from(
				overPieces(given, pieces, ({ sizes }) =>
					from(sizes, ({ volumeAllM3 }) => volumeAllM3),
				),
				sum,
			),
		),
		mass: shown("mass", loads.batchKg),
		pieceMass: new Map(
			filledPieces(form).flatMap(({ key }, index) => {
				const mass = shown("mass", pieces[index]?.massKg ?? { missing: "" });
				return mass === undefined ? [] : [[key, mass] as const];
			}),
		),
		loads:
			orNull(
				from(loadsOf(loads), (each) =>
					each.map(({ massKg }) => fromSi(massKg, "mass", form.units)),
				),
			) ?? undefined,
		tones: new Map(
			form.tones.flatMap(({ key }, index) => {
				const tone = tones.rows[index];
				const mass = tone && shown("mass", tone.scaleKg);
				if (!tone || mass === undefined || !isKnown(tone.dryKg)) return [];
				const dry = tone.dryKg.is;
				const over = -(orNull(tone.headroom) ?? 0);
				return [
					[
						key,
						{
							mass,
							grams: new Map(
								names.map((name, i) => [name, grams(dry[i] ?? 0)]),
							),
							over: Math.max(0, over),
						},
					] as const,
				];
			}),
		),
		pigments: isKnown(dryKg)
			? names.map((name, i) => ({
					name,
					grams: grams(sum(dryKg.is.map((each) => each[i] ?? 0))),
					price:
						orNull(materials.pigments[i]?.cost ?? { missing: "" }) ?? undefined,
				}))
			: undefined,
		price: firstPrice(materials),
		problem: problemOf(basis),
	};
}

function firstPrice(
	materials: ReturnType<typeof materialsAnswer>,
): FirstPrice | undefined {
	const { mix: rows, pigments } = materials;
	if (!isKnown(rows)) return undefined;
	const mix = costOfMaterials(rows.is);
	const pigment = costOfMaterials(pigments);
	return isKnown(mix) && isKnown(pigment)
		? {
				mix: mix.is,
				pigment: pigment.is,
				missing: unpricedOf([...rows.is, ...pigments]),
			}
		: undefined;
}

/** What is not known although everything it needs of the job is. */
function problemOf({ mix, pieces, loads, tones }: Basis): string | undefined {
	const sized =
		pieces.length > 0 && pieces.every(({ sizes }) => isKnown(sizes));
	const [problem] = [
		...(sized ? [mix.densityKgPerM3] : []),
		...(isKnown(loads.batchKg) ? [loads.castings] : []),
		...(isKnown(tones.typed) ? [tones.asWeighed] : []),
	].filter((known) => !isKnown(known as Known<unknown>));
	return problem && saying(problem as Known<unknown>);
}
