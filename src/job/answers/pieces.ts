/** Each piece: its sizes and weight, who carries it how, and which hand its mold is. */

import type { PieceCutout } from "../../calc/cutouts";
import { quoted } from "../../calc/errors";
import { type Lie, moldPlan } from "../../calc/mold";
import { nameKey, sameName } from "../../calc/names";
import type { Hole, Part } from "../../calc/places";
import {
	isHollow,
	longestSideM,
	type Piece,
	type PieceSizes,
	pieceSizes,
	visibleDropM,
} from "../../calc/takeoff";
import { type Read, wordOf } from "../fields/field";
import { JOB } from "../fields/job";
import { CUTOUT, type CutoutRow } from "../fields/openings";
import { PIECE, type PieceRow, pieceFields } from "../fields/piece";
import { isBlank, lengthText } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import { handlingAges } from "./cure/ages";
import { type Given, setting } from "./given";
import { type HandlingAnswer, handlingAnswer, stiffened } from "./handling";
import {
	all,
	flat,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readField,
	readRow,
} from "./known";
import { type LiftAnswer, liftAnswer } from "./lifting";
import type { MixAnswers } from "./mix";
import { type MoldWords, moldWords } from "./moldwords";
import { once } from "./once";
import { holesIn, notchPart } from "./places";

/** Everything in SI. */
export interface PieceAnswer {
	name: string;
	quantity: Known<number>;
	piece: Known<Piece>;
	cutouts: Known<readonly PieceCutout[]>;
	/** Openings by their place; missing where one is not typed. */
	holes: Known<readonly Hole[]>;
	/** What its notch takes out of A × B. */
	notch: Known<Part | undefined>;
	sizes: Known<PieceSizes>;
	/** Of one, as cast. */
	massKg: Known<number>;
	/** To batch for all of them, waste included. */
	batchKg: Known<number>;
	/** Undefined for a piece given by its area. */
	longestSideM: Known<number | undefined>;
	/** Undefined where there is no drop edge. */
	visibleDropM: Known<number | undefined>;
	lift: LiftAnswer;
	/** Who carries it and how; worked out when it is asked for, like the next. */
	carry(): Known<string>;
	handling(): HandlingAnswer;
	/** Turned over with its mold; undefined where it is not, missing where nobody typed what the mold weighs. */
	turnedKg: Known<number | undefined>;
	mold: Known<MoldWords>;
}

/** The pieces in their order; a row without anything typed is none. */
export function pieceAnswers(given: Given, mix: MixAnswers): PieceAnswer[] {
	const { job } = given;
	const ages = once(() => handlingAges(given));
	return job.pieces.map((row, index) =>
		pieceAnswer(given, mix, ages, row, index),
	);
}

function pieceAnswer(
	given: Given,
	mix: MixAnswers,
	ages: () => ReturnType<typeof handlingAges>,
	row: PieceRow,
	index: number,
): PieceAnswer {
	const { job, units } = given;
	const name = String(row.name ?? "").trim();
	const read = readRow(pieceFields(row.shape), row, units);
	const twice = job.pieces.findIndex(
		(other, at) =>
			at < index && nameKey(String(other.name ?? "")) === nameKey(name),
	);
	const piece =
		twice >= 0
			? look(`name must be unique, ${quoted(name)} is piece ${twice + 1} too`)
			: pieceOf(read, row, index);
	const cutouts = cutoutsOf(given, name);
	const sizes = fromBoth(
		piece,
		cutouts,
		(one, own) =>
			pieceSizes([one], own, lengthText(given.units))[0] as PieceSizes,
	);
	const massKg = fromBoth(
		sizes,
		mix.densityKgPerM3,
		({ volumeM3 }, density) => volumeM3 * density,
	);
	const lift = liftAnswer(given, massKg);
	const sized = fromBoth(piece, sizes, (one) => one);
	const notch = notchPart(piece, row.notch);
	const handling = once(() =>
		handlingAnswer(given, {
			piece: sized,
			cutouts,
			notch,
			dropOn: row.dropOn,
			densityKgPerM3: mix.densityKgPerM3,
			ages: ages(),
		}),
	);
	return {
		name,
		quantity: from(piece, ({ quantity }) => quantity),
		piece,
		cutouts,
		holes: holesIn(sized, cutouts),
		notch,
		sizes,
		massKg,
		batchKg: from(
			all([massKg, piece, wasteOf(given)] as [
				typeof massKg,
				typeof piece,
				Known<number>,
			]),
			([mass, { quantity }, waste]) => mass * quantity * (1 + waste),
		),
		longestSideM: from(piece, longestSideM),
		visibleDropM: from(piece, visibleDropM),
		lift,
		carry: () => carryOf({ piece, cutouts, lift, way: handling().way }),
		handling,
		turnedKg: turnedOf(massKg, read),
		mold: fromBoth(piece, read, (one, typed) => moldOf(given, one, typed)),
	};
}

/** Waste of this job, or the studio's usual one. */
export function wasteOf(given: Given): Known<number> {
	const own = readField(JOB, "waste", given.job, given.units);
	return "missing" in own ? setting(given, "waste") : own;
}

function pieceOf(
	read: Known<Read<typeof PIECE>>,
	row: PieceRow,
	index: number,
): Known<Piece> {
	const needed = NEEDED.find((key) => isBlank(row[key]));
	if (isKnown(read) && needed)
		return missing(PIECE[needed].label.toLowerCase());
	return from(read, (typed) => {
		const { shape = "rectangle", a } = typed;
		const isArea = shape === "area";
		return {
			row: index + 1,
			name: typed.name ?? "",
			quantity: typed.quantity ?? 0,
			shape,
			aM: isArea ? undefined : a,
			areaM2: isArea ? a : undefined,
			bM: typed.b,
			cM: typed.c,
			dM: typed.d,
			thicknessM: typed.thickness ?? 0,
			dropHeightM: typed.dropHeight,
			dropRunM: typed.dropRun,
			dropThicknessM: typed.dropThickness,
			radiusM: typed.radius,
		};
	});
}

const NEEDED = ["name", "quantity", "shape", "a", "thickness"] as const;

/** The cutouts of a piece; a row of another piece is not read here. */
const cutoutsOf = (
	{ job, units }: Given,
	name: string,
): Known<readonly PieceCutout[]> =>
	all(
		(job.cutouts ?? []).flatMap((row, index) =>
			isIn(row, name) ? [cutoutOf(row, index, units)] : [],
		),
	);

export const isIn = ({ piece }: CutoutRow, name: string): boolean =>
	sameName(String(piece ?? ""), name);

export function cutoutOf(
	row: CutoutRow,
	index: number,
	units: UnitSystem,
): Known<PieceCutout> {
	const blank = NEEDED_OF_CUTOUT.find((key) => isBlank(row[key]));
	if (blank)
		return missing(`${wordOf(blank)} of cutout ${index + 1} in ${row.piece}`);
	return from(
		readRow(CUTOUT, row, units),
		({ piece = "", count = 1, shape = "rectangle", a = 0, ...typed }) => ({
			row: index + 1,
			piece,
			count,
			shape,
			aM: a,
			bM: typed.b,
			leftM: typed.left,
			frontM: typed.front,
			radiusM: typed.radius,
			spacingM: typed.spacing,
		}),
	);
}

const NEEDED_OF_CUTOUT = ["count", "shape", "a"] as const;

/** Rows of cutouts that name no piece of the job. */
export const strayCutouts = ({ job }: Given): string[] =>
	(job.cutouts ?? []).flatMap(({ piece }, index) => {
		const name = String(piece ?? "").trim();
		return job.pieces.some((one) => sameName(String(one.name ?? ""), name))
			? []
			: [`cutout ${index + 1}: there is no piece ${name || "without a name"}`];
	});

/** What is turned over once it is cast face down. */
const turnedOf = (
	massKg: Known<number>,
	read: Known<Read<typeof PIECE>>,
): Known<number | undefined> =>
	flat(
		fromBoth(massKg, read, (mass, { name, face, moldMass }) =>
			face === undefined
				? missing(`whether ${name} is cast face up or face down`)
				: face === "face up"
					? is(undefined)
					: moldMass === undefined
						? missing(`what the mold of ${name} weighs`)
						: is(mass + moldMass),
		),
	);

interface Carried {
	piece: Known<Piece>;
	cutouts: Known<readonly PieceCutout[]>;
	lift: LiftAnswer;
	way: Known<string>;
}

/** Words for who carries a piece and how, by what would break it. */
const carryOf = ({ piece, cutouts, lift, way }: Carried): Known<string> =>
	flat(
		from(
			all<[Piece, readonly PieceCutout[], string]>([piece, cutouts, lift.by]),
			([one, own, by]): Known<string> => {
				if (isHollow(one))
					return is(`${by}; by its floor and walls, not by the rim`);
				const weak = stiffened(one, own.length);
				if ("look" in way) return look(`${by}; ${way.look}${weak}`);
				return is(
					isKnown(way)
						? `${by}; ${way.is}${weak}`
						: `${by}; on edge${weak}; whether it bears that is not known yet: ${way.missing}`,
				);
			},
		),
	);

function moldOf(
	{ job, units }: Given,
	piece: Piece,
	{ face, notch, dropOn }: Read<typeof PIECE>,
): MoldWords {
	const lie: Lie = {
		face,
		notchAt: notch,
		dropOn,
		cut: (job.cutouts ?? []).some(({ piece: name }) =>
			sameName(String(name ?? ""), piece.name),
		),
	};
	return moldWords(piece, lie, moldPlan(piece, lie), units);
}
