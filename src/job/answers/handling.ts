/** How a piece is carried without cracking, at demolding and at delivery, flat and on edge. */
import { type Bending, bending, type Laid, turned } from "../../calc/carrying";
import { type Cement, tensileShare } from "../../calc/cure";
import type { PieceCutout } from "../../calc/cutouts";
import { percent } from "../../calc/errors";
import { moldPlan } from "../../calc/mold";
import {
	holesOf,
	notchOf,
	type Part,
	partOf,
	placeTroubles,
} from "../../calc/places";
import { isSlab, type Piece } from "../../calc/takeoff";
import { worstPlaced } from "../../calc/unplaced";
import { plain } from "../reading/cells";
import { onTape } from "../reading/tape";
import { unitName } from "../reading/units";
import { WHENS, type When } from "./cure/ages";
import { type Given, setting } from "./given";
import {
	all,
	flat as flatKnown,
	from,
	is,
	isKnown,
	type Known,
	look,
	missing,
} from "./known";
import { cementOf } from "./mix";

export interface HandlingAnswer {
	/** Where it breaks first when it is carried flat. */
	section: Known<{ netM: number; at: string }>;
	/** Stress under its own weight, without a factor. */
	flatPa: Known<number>;
	edgePa: Known<number>;
	/** At demolding, then at delivery. */
	moments: readonly Moment[];
	/** Which way to carry it at both ages; a look where neither way does at one of them. */
	way: Known<string>;
}

export interface Moment {
	when: When;
	ageDays: Known<number>;
	/** Flexural, at that age. */
	strengthPa: Known<number>;
	/** Factor × stress / strength. */
	flatUse: Known<number>;
	edgeUse: Known<number>;
	/** Which way to carry it then. */
	said: Known<string>;
}

/** A piece as far as it is known. */
interface Carried {
	piece: Known<Piece>;
	cutouts: Known<readonly PieceCutout[]>;
	notch: Known<Part | undefined>;
	/** Sides with a drop edge, as typed. */
	dropOn: unknown;
	densityKgPerM3: Known<number>;
	ages: Record<When, Known<number>>;
}

export function handlingAnswer(given: Given, carried: Carried): HandlingAnswer {
	const ways = waysOf(given, carried);
	const factor = setting(given, "handling_factor");
	const flatPa = from(ways, ({ flat }) => flat.stressPa);
	const edgePa = from(ways, ({ edge }) => edge.stressPa);
	const moments = WHENS.map((when): Moment => {
		const ageDays = carried.ages[when];
		const strengthPa = from(
			all<[number, number, Cement]>([
				setting(given, "flexural"),
				ageDays,
				cementOf(given),
			]),
			([strength, age, cement]) => strength * tensileShare(age, cement),
		);
		const use = (stress: Known<number>) =>
			from(
				all<[number, number, number]>([stress, factor, strengthPa]),
				([pascals, times, strength]) => (times * pascals) / strength,
			);
		const flatUse = use(flatPa);
		const edgeUse = use(edgePa);
		const said = from(
			all<[number, number, number, number, Ways]>([
				flatUse,
				edgeUse,
				ageDays,
				factor,
				ways,
			]),
			([flat, edge, age, times, { lipFirst }]) => {
				const lip = lipFirst
					? "; the lip of its drop edge sees most of it"
					: "";
				const test = age < 3 ? "; younger than 3 days: test it first" : "";
				const words = `flat takes ${percent(flat, 2)} of its strength at ${dayText(age)}, on edge ${percent(edge, 2)}, factor ${plain(times)}${lip}${test}`;
				if (flat <= 1)
					return is(
						`${edge <= 1 ? "flat or on edge" : "flat, not on edge"}: ${words}`,
					);
				return look(
					`${edge <= 1 ? "on edge, not flat" : "in a cradle or on a board only"}: ${words}`,
				);
			},
		);
		return {
			when,
			ageDays,
			strengthPa,
			flatUse,
			edgeUse,
			said: flatKnown(said),
		};
	});
	return {
		section: from(ways, ({ netM, at }) => ({ netM, at })),
		flatPa,
		edgePa,
		moments,
		way: wayOf(moments),
	};
}

const dayText = (days: number): string => {
	const shown = plain(Number(days.toFixed(1)));
	return shown === "1" ? "1 day" : `${shown} days`;
};

/** Which way does at both ages. */
function wayOf([young, old]: readonly Moment[]): Known<string> {
	if (!young || !old) throw new Error("There are two ages");
	return flatKnown(
		from(
			all<[number, number, number, number]>([
				young.flatUse,
				young.edgeUse,
				old.flatUse,
				old.edgeUse,
			]),
			([flat, edge, laterFlat, laterEdge]): Known<string> => {
				if (Math.min(flat, edge) > 1 || Math.min(laterFlat, laterEdge) > 1)
					return look(
						laterEdge > 1
							? "in a cradle or on a board only, at demolding and at delivery"
							: "in a cradle or on a board at demolding, on edge at delivery",
					);
				if (edge > 1 || laterEdge > 1) return is("flat, not on edge");
				if (flat <= 1 && laterFlat <= 1) return is("flat or on edge");
				return is(
					laterFlat <= 1
						? "on edge at demolding, flat or on edge at delivery"
						: "on edge at demolding and at delivery, flat on a board only",
				);
			},
		),
	);
}

interface Ways {
	flat: Bending;
	edge: Bending;
	netM: number;
	at: string;
	/** The lip of a drop edge sees more than the slab. */
	lipFirst: boolean;
}

/** Flat by the ends of A or of B, whichever is worse; on edge along the longer side. */
function waysOf(given: Given, carried: Carried): Known<Ways> {
	const { piece, cutouts, notch, dropOn, densityKgPerM3 } = carried;
	return flatKnown(
		from(
			all<[Piece, readonly PieceCutout[], Part | undefined, number]>([
				piece,
				cutouts,
				notchAsFar(piece, cutouts, notch),
				densityKgPerM3,
			]),
			([one, own, part, density]): Known<Ways> => {
				if (!isSlab(one)) return missing(notWorkedOut(one));
				const placed = own.flatMap((cutout) => holesOf(cutout) ?? []);
				const [trouble] = placeTroubles(one, part, placed, 0, String);
				if (trouble) return look(trouble);
				const least = setting(given, "least_strip");
				const laidFor = (
					along: (laid: Laid) => Laid,
					how: "flat" | "on edge",
				): Laid =>
					along({
						piece: one,
						notch: part,
						holes: worstPlaced(
							one,
							part,
							own,
							isKnown(least) ? least.is : 0,
							(laid) => bending(along(laid), density, how, false).stressPa,
						),
					});
				const lips = lipsOf(one, dropOn);
				const ways = [
					{
						along: "A",
						laid: { ...laidFor((laid) => laid, "flat"), lips: lips.a },
					},
					{ along: "B", laid: { ...laidFor(turned, "flat"), lips: lips.b } },
				].map((way) => ({ ...way, bent: bending(way.laid, density, "flat") }));
				const [first, second] = ways as [Way, Way];
				const worse =
					first.bent.stressPa >= second.bent.stressPa ? first : second;
				const { aM = 0, bM = aM } = one;
				const edge = bending(
					laidFor(aM >= bM ? (laid) => laid : turned, "on edge"),
					density,
					"on edge",
				);
				const slabOnly = bending({ ...worse.laid, lips: 0 }, density, "flat");
				return is({
					flat: worse.bent,
					edge,
					netM: worse.bent.netM,
					at: placeWords(given, worse),
					lipFirst: slabOnly.stressPa < worse.bent.stressPa * (1 - 1e-9),
				});
			},
		),
	);
}

/** Which corner the notch is at says nothing of a piece without cutouts. */
const notchAsFar = (
	piece: Known<Piece>,
	cutouts: Known<readonly PieceCutout[]>,
	notch: Known<Part | undefined>,
): Known<Part | undefined> =>
	"missing" in notch && isKnown(cutouts) && cutouts.is.length === 0
		? from(piece, (one) => notchOf(one))
		: notch;

interface Way {
	along: string;
	laid: Laid;
	bent: Bending;
}

const notWorkedOut = ({ name, shape }: Piece): string =>
	shape === "area"
		? `the sides of ${name}: carry it as a slab of its size`
		: `what a ${shape} bears: carry ${name} by its floor and walls, not by the rim`;

/** How many drop edges run along A and along B over the whole side; undefined where that is not known. */
function lipsOf(piece: Piece, typed: unknown): { a?: number; b?: number } {
	const { shape, aM = 0, bM = 0, dropHeightM, dropRunM = 0 } = piece;
	if (dropHeightM === undefined) return { a: 0, b: 0 };
	const { drop } = moldPlan(piece, { cut: false, dropOn: String(typed ?? "") });
	if (shape !== "rectangle" || drop === undefined) return {};
	const on = (side: string) =>
		drop.finished === "all around" || drop.finished.includes(side) ? 1 : 0;
	const a = on("front") + on("back");
	const b = on("left") + on("right");
	return dropRunM >= 0.95 * (a * aM + b * bM) ? { a, b } : {};
}

/** `1160 mm from the left, beside cutout 1`. */
function placeWords({ units }: Given, { along, laid, bent }: Way): string {
	const { atM } = bent;
	const side = along === "A" ? "left" : "front";
	const beside = laid.holes.find((hole) => reaches(partOf(hole), atM));
	const what = beside
		? `beside cutout ${beside.row}`
		: laid.notch && reaches(laid.notch, atM)
			? "in the arm beside the notch"
			: "across the whole of it";
	return `${onTape(Number(atM.toFixed(6)), units)} ${unitName("length", units)} from the ${side}, ${what}`;
}

const reaches = ({ left, right }: Part, x: number): boolean =>
	x >= left - 1e-6 && x <= right + 1e-6;

/** What is to be stiffened by a bar across before it is lifted. */
export const stiffened = ({ shape }: Piece, openings: number): string => {
	const weak = [
		...(shape === "L" || shape === "U" ? ["notch"] : []),
		...(openings > 0 ? [openings > 1 ? "openings" : "opening"] : []),
	];
	return weak.length > 0
		? `, ${weak.join(" and ")} stiffened by a bar across`
		: "";
};
