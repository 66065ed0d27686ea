/** Where the cutouts of each piece are, and whether they can be there. */
import type { PieceCutout } from "../../calc/cutouts";
import { moldPlan } from "../../calc/mold";
import {
	type Hole,
	holesOf,
	notchOf,
	type Part,
	placeTroubles,
} from "../../calc/places";
import type { Piece } from "../../calc/takeoff";
import { onTape } from "../reading/tape";
import { unitName } from "../reading/units";
import { type Given, setting } from "./given";
import {
	all,
	flat,
	from,
	fromBoth,
	is,
	type Known,
	look,
	missing,
} from "./known";

/** The openings of a piece; missing where a place is not typed. */
export const holesIn = (
	piece: Known<Piece>,
	cutouts: Known<readonly PieceCutout[]>,
): Known<readonly Hole[]> =>
	flat(
		fromBoth(piece, cutouts, ({ name, shape }, own) =>
			shape === "area" && own.length > 0
				? missing(`the outline of ${name}: measure its cutouts on the template`)
				: from(
						all(
							own.map((cutout): Known<Hole[]> => {
								const holes = holesOf(cutout);
								return holes ? is(holes) : missing(unplaced(name, cutout));
							}),
						),
						(each) => each.flat(),
					),
		),
	);

const unplaced = (name: string, { row, count, spacingM }: PieceCutout) =>
	count > 1 && spacingM === undefined
		? `type the spacing of the row of cutouts in ${name} (cutout ${row})`
		: `type where cutout ${row} is in ${name}: left side to center, strip before it`;

/** The part of A × B that the notch takes; undefined for a shape without one, missing where its place is not typed. */
export const notchPart = (
	piece: Known<Piece>,
	typed: unknown,
): Known<Part | undefined> =>
	flat(
		from(piece, (one): Known<Part | undefined> => {
			const notchAt = String(typed ?? "");
			const { notch } = moldPlan(one, { cut: false, notchAt });
			const isNotched = one.shape === "L" || one.shape === "U";
			return isNotched && notch === undefined
				? missing(`where the notch of ${one.name} is: type it under Notch at`)
				: is(notchOf(one, notch?.finished));
		}),
	);

interface Placed {
	piece: Known<Piece>;
	cutouts: Known<readonly PieceCutout[]>;
	holes: Known<readonly Hole[]>;
	notch: Known<Part | undefined>;
}

/** Fine where every cutout is in its place, clear of the others and of the edges. */
export function placesCheck(
	given: Given,
	{ piece, cutouts, holes, notch }: Placed,
): Known<string> {
	const inPlace = from(
		all<[Piece, readonly Hole[], Part | undefined, number]>([
			piece,
			holes,
			notch,
			setting(given, "least_strip"),
		]),
		([one, own, part, leastM]) =>
			placeTroubles(
				one,
				part,
				own,
				leastM,
				(lengthM) =>
					`${onTape(lengthM, given.units)} ${unitName("length", given.units)}`,
			),
	);
	const isCut = from(cutouts, ({ length }) => length > 0);
	return flat(
		from(isCut, (cut) =>
			cut
				? flat(
						from(
							inPlace,
							([first]): Known<string> =>
								first === undefined ? is("fine") : look(first),
						),
					)
				: is("fine"),
		),
	);
}
