/** The molds of a job: what they are built of, cut from boards and strips, sealed and oiled. */
import { sealantBeadM3 } from "../../../calc/formwork";
import type { Sheet } from "../../../calc/guillotine";
import { type Lie, moldPlan } from "../../../calc/mold";
import {
	type InMold,
	type MoldTakes,
	moldTakes,
} from "../../../calc/moldparts";
import type { Nesting } from "../../../calc/nesting";
import { sum } from "../../../calc/sum";
import type { Piece } from "../../../calc/takeoff";
import { type PieceRow, pieceFields } from "../../fields/piece";
import { onTape } from "../../reading/tape";
import type { UnitSystem } from "../../reading/units";
import type { Given } from "../given";
import { setting } from "../given";
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
	readRow,
	saying,
} from "../known";
import type { PieceAnswer } from "../pieces";
import { type Workshop, workshop } from "./building";
import {
	bentStrips,
	MOST_SAWN,
	onBoards,
	type SawnPart,
	type ShopPart,
	type StripRow,
	sawnParts,
	stripRows,
} from "./cutlist";

export interface PieceMold {
	name: string;
	/** A mold a casting. */
	count: Known<number>;
	lie: Known<InMold>;
	/** Of one mold. */
	takes: Known<MoldTakes>;
}

/** Goods by their names on Stock and Cost. */
export interface MoldGood {
	name: "Mold sheet" | "Strips" | "Sealant" | "Release" | "Screws";
	unit: string;
	amount: Known<number>;
}

/** Everything in SI; of the molds that are known, which are all where nothing is left out. */
export interface MoldAnswer {
	workshop: Known<Workshop>;
	pieces: readonly PieceMold[];
	/** What is not counted, a sentence each. */
	leftOut: readonly string[];
	parts: readonly ShopPart[];
	nesting: Known<Nesting>;
	strips: readonly StripRow[];
	sealantM: Known<number>;
	sealantM3: Known<number>;
	tubes: Known<number>;
	releaseM2: Known<number>;
	goods: readonly MoldGood[];
}

interface Stood {
	given: Given;
	pieces: readonly PieceAnswer[];
}

export function moldAnswer({ given, pieces }: Stood): MoldAnswer {
	const shop = workshop(given);
	const molds = pieces.map((piece, index) =>
		pieceMold(given, piece, given.job.pieces[index] ?? {}, shop),
	);
	const built = molds.flatMap(({ name, count, takes }) =>
		isKnown(count) && isKnown(takes)
			? [{ name, count: count.is, takes: takes.is }]
			: [],
	);
	const leftOut = molds.flatMap(({ name, count, takes }) => {
		const both = all<[number, MoldTakes]>([count, takes]);
		return isKnown(both) || ("is" in count && count.is === 0)
			? []
			: [
					`${name || "a piece without a name"}: ${saying(both).replace(/^Look: |^not known yet: /, "")}`,
				];
	});
	const parts = built.flatMap(({ name, count, takes }) =>
		Array.from({ length: count }, () =>
			takes.parts.map((part): ShopPart => ({ ...part, piece: name })),
		).flat(),
	);
	const together = (of: (takes: MoldTakes) => number) =>
		sum(built.map(({ count, takes }) => count * of(takes)));
	const sealantM = fromBoth(
		shop,
		is(together((one) => one.sealantM)),
		(_, m) => m,
	);
	const releaseM2 = fromBoth(
		shop,
		is(together((one) => one.releaseM2)),
		(_, m2) => m2,
	);
	const nesting = flat(
		from(shop, (one) => nestingOf(sawnParts(parts, one), one)),
	);
	const sealantM3 = fromBoth(
		sealantM,
		setting(given, "bead_radius"),
		sealantBeadM3,
	);
	const tubes = from(
		all<[number, number, number]>([
			sealantM3,
			setting(given, "sealant_waste"),
			setting(given, "tube_volume"),
		]),
		([m3, waste, tubeM3]) => Math.ceil((m3 * (1 + waste)) / tubeM3 - 1e-9),
	);
	const cans = from(
		all<[number, number, number]>([
			releaseM2,
			setting(given, "release_coverage"),
			setting(given, "release_can"),
		]),
		([m2, coverage, canM3]) => m2 / coverage / canM3,
	);
	const whole = <T>(amount: Known<T>): Known<T> =>
		leftOut[0] === undefined ? amount : missing(leftOut[0]);
	return {
		workshop: shop,
		pieces: molds,
		leftOut,
		parts,
		nesting,
		strips: stripRows(parts),
		sealantM,
		sealantM3,
		tubes,
		releaseM2,
		goods: (
			[
				["Mold sheet", "sheet", from(nesting, ({ boards }) => boards)],
				["Strips", "strip", from(shop, (one) => bentStrips(parts, one))],
				["Sealant", "tube", tubes],
				["Release", "can", cans],
				["Screws", "screw", from(shop, () => together((one) => one.screws))],
			] as const
		).map(([name, unit, amount]) => ({ name, unit, amount: whole(amount) })),
	};
}

const nestingOf = (
	parts: readonly SawnPart[],
	shop: Workshop,
): Known<Nesting> =>
	parts.length > MOST_SAWN
		? look(
				`the molds have ${parts.length} parts, more than the ${MOST_SAWN} that are cut in one go: split the job`,
			)
		: from(is(parts), (all) => onBoards(all, shop, []));

function pieceMold(
	given: Given,
	{ name, quantity, piece, cutouts, sizes }: PieceAnswer,
	row: PieceRow,
	shop: Known<Workshop>,
): PieceMold {
	const lie = flat(from(piece, (one) => lieOf(given, one, row)));
	return {
		name,
		count: quantity,
		lie,
		takes: from(
			all([piece, cutouts, sizes, lie, shop] as [
				typeof piece,
				typeof cutouts,
				typeof sizes,
				typeof lie,
				typeof shop,
			]),
			([one, own, size, lies, build]) => moldTakes(one, own, size, lies, build),
		),
	};
}

/** Where notch and drop edge are in the mold; cast face down, left and right have changed sides. */
const lieOf = ({ units }: Given, piece: Piece, row: PieceRow): Known<InMold> =>
	from(
		readRow(pieceFields(row.shape), row, units),
		({ face, notch, dropOn }) => {
			const said: Lie = { face, notchAt: notch, dropOn, cut: false };
			const plan = moldPlan(piece, said);
			return {
				face,
				notchAt: plan.notch?.mold.toLowerCase(),
				dropOn: plan.drop?.mold.toLowerCase(),
			};
		},
	);

/** `Mold sheet 2800 × 2070`, or the offcut by its size. */
export function boardName(
	{ workshop: shop }: MoldAnswer,
	{ offcut, ...size }: Sheet,
	units: UnitSystem,
): string {
	const { lengthM, widthM } = !offcut && isKnown(shop) ? shop.is.board : size;
	return `${offcut ? "Offcut" : "Mold sheet"} ${onTape(lengthM, units)} × ${onTape(widthM, units)}`;
}
