/** The parts of all molds of a job, each named so that it is found in the shop, cut from boards and strips. */
import type { Part, Rectangle, Stock } from "../../../calc/guillotine";
import type { MoldPart } from "../../../calc/moldparts";
import { type Nesting, nested } from "../../../calc/nesting";
import { sum } from "../../../calc/sum";
import type { Workshop } from "./building";

/** A part of the mold of one casting. */
export interface ShopPart extends MoldPart {
	piece: string;
}

/** A part on its way to the saw; `Counter: front side`. */
export interface SawnPart extends Part {
	of: ShopPart;
}

/** More parts than these are not cut in one go. */
export const MOST_SAWN = 500;

/** What is longer or wider than a board is joined of equal parts, with seams. */
export function joined(
	part: ShopPart,
	room: Rectangle,
): { part: ShopPart; count: number } {
	const [roomLongM, roomShortM] = inSize(room);
	const [longM, shortM] = inSize(part);
	const along = Math.ceil(longM / roomLongM - 1e-9);
	const across = Math.ceil(shortM / roomShortM - 1e-9);
	const count = along * across;
	if (count === 1) return { part, count };
	const isLong = part.lengthM >= part.widthM;
	return {
		part: {
			...part,
			name: `${part.name}, joined of ${count}`,
			lengthM: isLong ? longM / along : shortM / across,
			widthM: isLong ? shortM / across : longM / along,
		},
		count,
	};
}

const inSize = ({ lengthM, widthM }: Rectangle): [number, number] => [
	Math.max(lengthM, widthM),
	Math.min(lengthM, widthM),
];

/** What stands or lies in the mold as board, ready to be cut. */
export const sawnParts = (
	parts: readonly ShopPart[],
	{ usable }: Workshop,
): SawnPart[] =>
	parts
		.filter(({ madeOf }) => madeOf === "board")
		.flatMap((one) => {
			const { part, count } = joined(one, usable);
			const sawn: SawnPart = {
				name: `${part.piece}: ${part.name}`,
				lengthM: part.lengthM,
				widthM: part.widthM,
				turns: true,
				of: part,
			};
			return Array.from({ length: count }, () => sawn);
		});

/** The parts on boards, kept offcuts first. */
export const onBoards = (
	parts: readonly SawnPart[],
	{ usable, kerfM }: Workshop,
	offcuts: Stock["offcuts"],
): Nesting => nested(parts, { offcuts, board: usable, kerfM });

/** Strips of the bought length for all that is bent, height by height. */
export function bentStrips(
	parts: readonly ShopPart[],
	{ stripLengthM, kerfM }: Workshop,
): number {
	const bent = parts.filter(({ madeOf }) => madeOf === "bent strip");
	const heights = [...new Set(bent.map(({ widthM }) => widthM))];
	return sum(
		heights.map((heightM) => {
			const room = { lengthM: stripLengthM, widthM: heightM };
			const lengths = bent
				.filter(({ widthM }) => widthM === heightM)
				.flatMap((one) => {
					const count = Math.ceil(one.lengthM / stripLengthM - 1e-9);
					return Array.from({ length: count }, () => ({
						name: one.name,
						lengthM: one.lengthM / count,
						widthM: heightM,
						turns: false,
					}));
				});
			return nested(lengths, { offcuts: [], board: room, kerfM }).boards;
		}),
	);
}

export interface StripRow {
	piece: string;
	part: string;
	madeOf: MoldPart["madeOf"];
	lengthM: number;
	heightM: number;
	count: number;
}

/** What stands in the molds, equal ones counted together. */
export function stripRows(parts: readonly ShopPart[]): StripRow[] {
	const rows = new Map<string, StripRow>();
	for (const { piece, name, madeOf, lengthM, widthM, stands } of parts) {
		if (!stands) continue;
		const key = [piece, name, lengthM.toFixed(6), widthM.toFixed(6)].join("\n");
		const row = rows.get(key);
		if (row) row.count++;
		else
			rows.set(key, {
				piece,
				part: name,
				madeOf,
				lengthM,
				heightM: widthM,
				count: 1,
			});
	}
	return [...rows.values()];
}
