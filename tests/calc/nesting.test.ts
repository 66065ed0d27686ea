/** Cutting from boards: published instances, a library as the yardstick, and what must hold for any parts. */
import fc from "fast-check";
import { packer } from "guillotine-packer";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	cutsOf,
	type Part,
	type Sheet,
	type Spot,
	type Stock,
} from "../../src/calc/guillotine";
import { nested } from "../../src/calc/nesting";
import { uniform } from "../../src/calc/noise";
import { CUT_INSTANCES, pairsOf, ROLLS } from "./cutinstances";

type Pairs = readonly (readonly [number, number])[];

const partsOf = (items: Pairs, turns: boolean): Part[] =>
	items.map(([lengthM, widthM], index) => ({
		name: String(index),
		lengthM,
		widthM,
		turns,
	}));

const stockOf = (
	[lengthM, widthM]: readonly [number, number],
	kerfM: number,
): Stock => ({ offcuts: [], board: { lengthM, widthM }, kerfM });

const libraryBoards = (
	[width, height]: readonly [number, number],
	items: Pairs,
	kerfSize: number,
	allowRotation: boolean,
): number =>
	packer(
		{
			binWidth: width,
			binHeight: height,
			items: items.map(([w, h], index) => ({
				name: String(index),
				width: w,
				height: h,
			})),
		},
		{ kerfSize, allowRotation },
	).length;

describe.each(
	CUT_INSTANCES.flatMap((instance) =>
		[
			{ instance, turns: false, known: instance.oriented },
			{ instance, turns: true, known: instance.turned },
		].flatMap(({ known, ...rest }) => (known ? [{ ...rest, known }] : [])),
	),
)(
	"$instance.id, may be turned: $turns",
	({ instance: { sheet, items, kerf }, turns, known }) => {
		const pairs = pairsOf(items);
		const found = nested(partsOf(pairs, turns), stockOf(sheet, kerf));

		test("is cut from the fewest sheets, where these are known", () => {
			if (known.optimum === undefined)
				expect(found.boards).toBeGreaterThanOrEqual(known.bound);
			else expect(found.boards).toBe(known.optimum);
		});

		test("its bound is no less than the one worked out elsewhere, and no more than what is possible", () => {
			expect(found.bound).toBeGreaterThanOrEqual(known.bound);
			expect(found.bound).toBeLessThanOrEqual(known.optimum ?? found.boards);
		});

		test("takes no more sheets than the library", () => {
			expect(found.boards).toBeLessThanOrEqual(
				libraryBoards(sheet, pairs, kerf, turns),
			);
		});

		test("adds up", () => {
			expectCut(found.sheets, partsOf(pairs, turns), kerf);
		});
	},
);

test("lengths from rolls: 73, where the longest first takes 82", () => {
	const lengths = pairsOf(ROLLS).flatMap(([length, count]) =>
		Array.from({ length: count }, () => [length, 1] as const),
	);
	expect(lengths.reduce((sum, [length]) => sum + length, 0)).toBe(407160);
	const found = nested(partsOf(lengths, false), stockOf([5600, 1], 0));
	expect(found).toMatchObject({ boards: 73, bound: 73 });
});

// floor((2070 + 3.2) / (58 + 3.2)) = 33; without the blade 35
test.each([
	[33, 1, 3.2],
	[34, 2, 3.2],
	[35, 1, 0],
])(
	"%d strips of 58 from 2070: %d boards with a blade of %d",
	(count, boards, kerf) => {
		const strips = Array.from({ length: count }, () => [2800, 58] as const);
		expect(
			nested(partsOf(strips, false), stockOf([2800, 2070], kerf)).boards,
		).toBe(boards);
	},
);

// Random instances as Berkey and Wang drew theirs: sheets and the largest side of a part.
const CLASSES = [
	[10, 10],
	[30, 10],
	[40, 35],
	[100, 35],
	[100, 100],
	[300, 100],
] as const;

test("drawn instances never take more sheets than the library", () => {
	let fewer = 0;
	for (const [index, [side, largest]] of CLASSES.entries())
		for (const count of [10, 20, 40])
			for (let seed = 0; seed < 2; seed++) {
				const next = uniform(index * 1000 + count * 10 + seed);
				const items = Array.from({ length: count }, () => {
					const size = () => 1 + Math.floor(next() * largest);
					return [size(), size()] as const;
				});
				const kerf = seed % 2;
				for (const turns of [true, false]) {
					const library = libraryBoards([side, side], items, kerf, turns);
					const { boards, bound } = nested(
						partsOf(items, turns),
						stockOf([side, side], kerf),
					);
					expect(boards, `${side} ${count} ${seed}`).toBeLessThanOrEqual(
						library,
					);
					expect(bound).toBeLessThanOrEqual(boards);
					if (boards < library) fewer++;
				}
			}
	expect(fewer).toBeGreaterThan(0);
});

const size = fc.integer({ min: 1, max: 1200 });
const anyParts = fc.array(
	fc.record({ length: size, width: size, turns: fc.boolean() }),
	{ minLength: 1, maxLength: 25 },
);

test("parts, offcuts and cuts make up the boards; no part lies outside, on another, or where no straight cut reaches it", () => {
	fc.assert(
		fc.property(
			anyParts,
			fc.constantFrom(0, 1.5, 3.2, 40),
			fc.array(fc.tuple(size, size), { maxLength: 3 }),
			(drawn, kerf, offcuts) => {
				const parts = drawn.map(({ length, width, turns }, index) => ({
					name: String(index),
					lengthM: length,
					widthM: width,
					turns,
				}));
				const found = nested(parts, {
					offcuts: offcuts.map(([lengthM, widthM]) => ({ lengthM, widthM })),
					board: { lengthM: 1200, widthM: 1200 },
					kerfM: kerf,
				});
				expect(found.bound).toBeLessThanOrEqual(found.boards);
				expectCut(found.sheets, parts, kerf);
			},
		),
		{ numRuns: 60 },
	);
});

test("offcuts are used before a board", () => {
	const found = nested(partsOf([[400, 300]], true), {
		offcuts: [
			{ lengthM: 300, widthM: 200 },
			{ lengthM: 300, widthM: 420 },
		],
		board: { lengthM: 2800, widthM: 2070 },
		kerfM: 3,
	});
	expect(found).toMatchObject({ boards: 0, bound: 0 });
	expect(found.sheets).toHaveLength(1);
	expect(found.sheets[0]?.placed[0]).toMatchObject({ turned: true });
});

test("a part larger than a board is named", () => {
	expect(() =>
		nested(
			[{ name: "Front", lengthM: 3000, widthM: 60, turns: true }],
			stockOf([2800, 2070], 3),
		),
	).toThrow(new InputError('"Front" is larger than a board'));
});

/** Saws the sheets anew, cut by cut. */
function expectCut(
	sheets: readonly Sheet[],
	parts: readonly Part[],
	kerf: number,
): void {
	const placed = sheets.flatMap((sheet) => sheet.placed);
	expect(placed.map(({ part }) => part.name).sort()).toEqual(
		parts.map(({ name }) => name).sort(),
	);
	for (const { part, lengthM, widthM, turned } of placed) {
		if (turned) expect(part.turns).toBe(true);
		expect([lengthM, widthM]).toEqual(
			turned ? [part.widthM, part.lengthM] : [part.lengthM, part.widthM],
		);
	}
	for (const sheet of sheets) expectSawn(sheet, kerf);
}

function expectSawn(sheet: Sheet, kerf: number): void {
	let pieces: Spot[] = [
		{ xM: 0, yM: 0, lengthM: sheet.lengthM, widthM: sheet.widthM },
	];
	let sawdust = 0;
	for (const one of sheet.placed) {
		for (const cut of cutsOf(one, kerf)) {
			const whole = pieces.find((piece) => isAcross(cut, piece));
			expect(whole, "a cut from edge to edge of one piece").toBeDefined();
			if (!whole) return;
			sawdust += cut.lengthM * cut.widthM;
			pieces = pieces.flatMap((piece) =>
				piece === whole ? bothSides(piece, cut) : [piece],
			);
		}
		const taken = pieces.find((piece) => isSame(piece, one));
		expect(taken, "a piece of the part's size").toBeDefined();
		pieces = pieces.filter((piece) => piece !== taken);
	}
	const area = (spots: readonly Spot[]) =>
		spots.reduce((sum, spot) => sum + spot.lengthM * spot.widthM, 0);
	expect(area(sheet.placed) + area(sheet.rests) + sawdust).toBeCloseTo(
		sheet.lengthM * sheet.widthM,
		4,
	);
	expect(pieces).toHaveLength(sheet.rests.length);
	for (const rest of sheet.rests)
		expect(pieces.some((piece) => isSame(piece, rest))).toBe(true);
}

const near = (one: number, other: number) => Math.abs(one - other) < 1e-6;

const isSame = (one: Spot, other: Spot): boolean =>
	near(one.xM, other.xM) &&
	near(one.yM, other.yM) &&
	near(one.lengthM, other.lengthM) &&
	near(one.widthM, other.widthM);

/** Whether the cut spans the piece one way, and lies in it the other way. */
function isAcross(cut: Spot, piece: Spot): boolean {
	const along =
		near(cut.xM, piece.xM) &&
		near(cut.lengthM, piece.lengthM) &&
		cut.yM > piece.yM &&
		cut.yM + cut.widthM <= piece.yM + piece.widthM + 1e-6;
	const across =
		near(cut.yM, piece.yM) &&
		near(cut.widthM, piece.widthM) &&
		cut.xM > piece.xM &&
		cut.xM + cut.lengthM <= piece.xM + piece.lengthM + 1e-6;
	return along || across;
}

function bothSides(piece: Spot, cut: Spot): Spot[] {
	const along =
		near(cut.xM, piece.xM) &&
		near(cut.lengthM, piece.lengthM) &&
		cut.yM > piece.yM;
	const parts: Spot[] = along
		? [
				{ ...piece, widthM: cut.yM - piece.yM },
				{
					...piece,
					yM: cut.yM + cut.widthM,
					widthM: piece.yM + piece.widthM - cut.yM - cut.widthM,
				},
			]
		: [
				{ ...piece, lengthM: cut.xM - piece.xM },
				{
					...piece,
					xM: cut.xM + cut.lengthM,
					lengthM: piece.xM + piece.lengthM - cut.xM - cut.lengthM,
				},
			];
	return parts.filter(({ lengthM, widthM }) => lengthM > 1e-6 && widthM > 1e-6);
}
