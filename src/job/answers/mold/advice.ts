/** What whoever builds a mold should know of it: how far its sides bend, and where a piece too large for the mixer is split. */
import { SIDE_LIMIT, sideDeflectionM } from "../../../calc/formwork";
import type { MoldPart } from "../../../calc/moldparts";
import type { Piece } from "../../../calc/takeoff";
import { onTape } from "../../reading/tape";
import { type UnitSystem, unitName } from "../../reading/units";
import { type Given, setting } from "../given";
import { all, flat, from, is, type Known, look } from "../known";
import type { MixAnswers } from "../mix";
import type { PieceAnswer } from "../pieces";
import type { PieceMold } from "./mold";

const lengthWords = (units: UnitSystem) => (lengthM: number) =>
	`${onTape(lengthM, units)} ${unitName("length", units)}`;

/** The highest of the straight outer sides. */
const highestSide = (parts: readonly MoldPart[]): MoldPart | undefined =>
	parts
		.filter(({ madeOf, name }) => madeOf === "board" && / side/.test(name))
		.reduce<MoldPart | undefined>(
			(high, one) => (high && high.widthM >= one.widthM ? high : one),
			undefined,
		);

/** How far the highest side bends between its supports, fine up to the published limit; nothing where no side is straight. */
export function sidesBend(
	given: Given,
	mix: MixAnswers,
	{ takes }: PieceMold,
): Known<string> {
	const words = lengthWords(given.units);
	return flat(
		from(
			all([
				takes,
				setting(given, "side_span"),
				setting(given, "board_thickness"),
				setting(given, "board_modulus"),
				mix.densityKgPerM3,
			] as [
				typeof takes,
				Known<number>,
				Known<number>,
				Known<number>,
				Known<number>,
			]),
			([{ parts }, spanM, thicknessM, modulusPa, densityKgPerM3]) => {
				const side = highestSide(parts);
				if (!side) return is("");
				const bentM = sideDeflectionM({
					spanM,
					heightM: side.widthM,
					thicknessM,
					modulusPa,
					densityKgPerM3,
				});
				const limitM = spanM * SIDE_LIMIT;
				const said = `${side.name}, ${words(side.widthM)} high, bends ${words(rounded(bentM))} between supports every ${words(spanM)}; 1/360 of that is ${words(rounded(limitM))}`;
				return bentM <= limitM ? is(said) : look(`${said}: support it closer`);
			},
		),
	);
}

/** To a hundredth of a millimeter, which a tape does not show. */
const rounded = (lengthM: number): number => Math.round(lengthM * 1e5) / 1e5;

/** What a piece larger than a mixer load asks for; nothing for one that is not. */
export function splitWords(
	given: Given,
	{ piece, massKg }: PieceAnswer,
): Known<string> {
	return flat(
		from(
			all([piece, massKg, setting(given, "mixer_capacity")] as [
				typeof piece,
				typeof massKg,
				Known<number>,
			]),
			([one, mass, capacity]) => {
				const loads = Math.ceil(mass / capacity - 1e-9);
				if (loads < 2) return is("");
				return look(
					`one casting takes ${loads} mixer loads. Poured wet on wet, veins and tones do not run on from one load to the next. As ${loads} pieces, split ${splitAt(one, loads, lengthWords(given.units))}, away from cutouts; the joint shows, and neither veins nor tones meet in it`,
				);
			},
		),
	);
}

/** Where a piece is split into so many. */
function splitAt(
	{ shape, aM = 0, bM = 0, cM = 0, dM = 0 }: Piece,
	count: number,
	words: (lengthM: number) => string,
): string {
	if (shape === "L")
		return `at the inner corner of the notch, into ${words(aM)} × ${words(bM - dM)} and ${words(aM - cM)} × ${words(dM)}`;
	if (shape === "U") return "at both inner corners of the notch";
	if (shape === "rectangle")
		return `across every ${words(Math.max(aM, bM) / count)}`;
	if (shape === "round" || shape === "oval") return "through the middle";
	return "where its drawing says";
}
