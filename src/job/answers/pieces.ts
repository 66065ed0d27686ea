/** Each piece: its sizes and weight, who carries it how, and which hand its mold is. */

import type { PieceCutout } from "../../calc/cutouts";
import { quoted } from "../../calc/errors";
import { selfWeightStressPa } from "../../calc/handling";
import { type Lie, moldPlan } from "../../calc/mold";
import { nameKey, sameName } from "../../calc/names";
import type { Hole, Part } from "../../calc/places";
import {
	isSlab,
	longestSideM,
	type Piece,
	type PieceSizes,
	pieceSizes,
	visibleDropM,
} from "../../calc/takeoff";
import type { Read } from "../fields/field";
import { JOB } from "../fields/job";
import { CUTOUT, type CutoutRow } from "../fields/openings";
import { PIECE, type PieceRow, pieceFields } from "../fields/piece";
import { isBlank, lengthText } from "../reading/cells";
import type { UnitSystem } from "../reading/units";
import { type Given, setting } from "./given";
import {
	all,
	from,
	fromBoth,
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
	/** Carried flat by its ends; undefined where that says nothing of it. */
	stressPa: Known<number | undefined>;
	/** The stress over the strength to count on. */
	stressShare: Known<number | undefined>;
	carry: Known<string>;
	mold: Known<MoldWords>;
}

/** The pieces in their order; a row without anything typed is none. */
export function pieceAnswers(given: Given, mix: MixAnswers): PieceAnswer[] {
	const { job } = given;
	return job.pieces.map((row, index) => pieceAnswer(given, mix, row, index));
}

function pieceAnswer(
	given: Given,
	mix: MixAnswers,
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
	const stressPa = stressOf(piece, mix);
	const stressShare = fromBoth(
		stressPa,
		setting(given, "flexural"),
		(stress, strength) =>
			stress === undefined ? undefined : stress / strength,
	);
	return {
		name,
		quantity: from(piece, ({ quantity }) => quantity),
		piece,
		cutouts,
		holes: holesIn(piece, cutouts),
		notch: notchPart(piece, row.notch),
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
		stressPa,
		stressShare,
		carry: carryOf({ piece, cutouts, lift, stressShare }),
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

export const cutoutOf = (
	row: CutoutRow,
	index: number,
	units: UnitSystem,
): Known<PieceCutout> =>
	from(
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

/** Rows of cutouts that name no piece of the job. */
export const strayCutouts = ({ job }: Given): string[] =>
	(job.cutouts ?? []).flatMap(({ piece }, index) => {
		const name = String(piece ?? "").trim();
		return job.pieces.some((one) => sameName(String(one.name ?? ""), name))
			? []
			: [`cutout ${index + 1}: there is no piece ${name || "without a name"}`];
	});

function stressOf(
	piece: Known<Piece>,
	mix: MixAnswers,
): Known<number | undefined> {
	return fromBoth(piece, mix.densityKgPerM3, (one, densityKgPerM3) =>
		isSlab(one)
			? selfWeightStressPa({
					lengthM: longestSideM(one) ?? 0,
					thicknessM: one.thicknessM,
					densityKgPerM3,
					support: "ends",
					factor: 1,
				})
			: undefined,
	);
}

interface Carried {
	piece: Known<Piece>;
	cutouts: Known<readonly PieceCutout[]>;
	lift: LiftAnswer;
	stressShare: Known<number | undefined>;
}

/** Words for carrying a piece, by what would break it. */
function carryOf({
	piece,
	cutouts,
	lift,
	stressShare,
}: Carried): Known<string> {
	return from(
		all([piece, cutouts, lift.by] as [
			typeof piece,
			typeof cutouts,
			typeof lift.by,
		]),
		([one, own, by]) => {
			const { shape } = one;
			if (shape === "basin" || shape === "tube")
				return `${by}; by its floor and walls, not by the rim`;
			const weak =
				own.length > 0
					? ", openings stiffened by a bar across"
					: shape === "L" || shape === "U"
						? ", notch stiffened by a bar across"
						: "";
			const flat =
				isKnown(stressShare) && (stressShare.is ?? 0) * 2 > 1
					? "; flat on a board only"
					: "";
			return `${by}; on edge${weak}${flat}`;
		},
	);
}

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
