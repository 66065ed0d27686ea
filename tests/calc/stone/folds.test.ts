/** What makes folded tones look like stone; the bounds were measured on a prototype of this method. */
import { describe, expect, test } from "vitest";
import { farColor, labOfHex } from "../../../src/calc/color";
import { blend } from "../../../src/calc/stone/blend";
import { OUTSIDE } from "../../../src/calc/stone/deal";
import {
	type Folded,
	type FoldedPiece,
	foldBack,
	foldedPiece,
} from "../../../src/calc/stone/fold";
import { blendedLight, paintStone } from "../../../src/calc/stone/paint";
import type { Placing } from "../../../src/calc/stone/trace";

const PLACINGS: Placing[] = ["bucket fold", "mold lay-up"];
const SHARES = [40, 25, 15, 20];
const COLORS = ["#e2ddd3", "#ac947e", "#86705c", "#898987"];
const PIECE: FoldedPiece = {
	outline: { shape: "rectangle", aM: 2, bM: 2, thicknessM: 0.03 },
	cutouts: [],
	placing: "bucket fold",
	shares: SHARES,
	folds: 3,
	seed: 1,
	widthPx: 200,
};
const EIGHT = [1, 2, 3, 4, 5, 6, 7, 8];
const TEN = [...EIGHT, 9, 10];

/** L* of linear red, green and blue: IEC 61966-2-1, then CIE 15. */
function lightness([red = 0, green = 0, blue = 0]: readonly number[]): number {
	const luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
	return luminance > (6 / 29) ** 3
		? 116 * Math.cbrt(luminance) - 16
		: luminance * (29 / 3) ** 3;
}

/** Of the tones in their shares, each in its color. */
const DEALT = farColor(
	COLORS.map((color, i) => ({ lab: labOfHex(color), share: SHARES[i] ?? 0 })),
).l;

const draw = (change: Partial<FoldedPiece>) =>
	foldedPiece({ ...PIECE, ...change });

const mean = (values: readonly number[]): number =>
	values.reduce((total, value) => total + value, 0) / values.length;
const geometricMean = (values: readonly number[]): number =>
	Math.exp(mean(values.map(Math.log)));

function correlation(one: readonly number[], other: readonly number[]): number {
	const [a, b] = [mean(one), mean(other)];
	const products = one.map((value, i) => (value - a) * ((other[i] ?? 0) - b));
	const squares = (of: readonly number[], middle: number) =>
		mean(of.map((value) => (value - middle) ** 2));
	return mean(products) / Math.sqrt(squares(one, a) * squares(other, b));
}

/** Shares of the tones in blocks of 15 pixels, 0.15 m of a piece of 2 m at 200 pixels. */
function blocks({ tones, widthPx }: Folded): number[] {
	const across = Math.floor(widthPx / 15);
	const amounts = Array.from(
		{ length: across * across * SHARES.length },
		() => 0,
	);
	const count = (at: number) => {
		amounts[at] = (amounts[at] ?? 0) + 1;
	};
	tones.forEach((tone, i) => {
		const column = Math.floor((i % widthPx) / 15);
		const row = Math.floor(i / widthPx / 15);
		if (column < across && row < across)
			count((row * across + column) * SHARES.length + tone);
	});
	return amounts.map((amount, i) => amount - 2.25 * (SHARES[i % 4] ?? 0));
}

/** Points of a line, half a millimeter apart. */
const POINTS = 4000;

/** The tones along eight lines of a piece of 2 m from left to right, and along eight from back to front. */
function lines(piece: FoldedPiece): {
	along: Uint8Array[];
	down: Uint8Array[];
} {
	const { least } = foldedPiece(piece);
	const count = 2 * EIGHT.length * POINTS;
	const places = { x: new Float64Array(count), y: new Float64Array(count) };
	for (let i = 0; i < count; i++) {
		const line = Math.floor(i / POINTS) % EIGHT.length;
		const at = [(i % POINTS) / 2000 - 1, (line - 3.5) / 4.5];
		const [x = 0, y = 0] = i < count / 2 ? at : at.reverse();
		places.x[i] = x;
		places.y[i] = y;
	}
	const fields = foldBack(piece, places, 2);
	const tones = Uint8Array.from(places.x, (_, i) => {
		for (let tone = fields.length; tone > 0; tone--)
			if ((fields[tone - 1]?.all[i] ?? 0) >= (least[tone - 1] ?? 0))
				return tone;
		return 0;
	});
	const line = (n: number) => tones.subarray(n * POINTS, (n + 1) * POINTS);
	return {
		along: EIGHT.map((_, n) => line(n)),
		down: EIGHT.map((_, n) => line(n + EIGHT.length)),
	};
}

/** Lengths of the runs of one tone, in half millimeters. */
function chords(line: Uint8Array): number[] {
	const ends = [...line.keys()].filter((i) => line[i] !== line[i + 1]);
	return ends.map((end, i) => end - (ends[i - 1] ?? -1));
}

describe.each(PLACINGS)("%s", (placing) => {
	const read = [1, 2, 3, 4].map((folds) =>
		EIGHT.map((seed) => lines({ ...PIECE, placing, folds, seed })),
	);
	const meanChord = (fold: number): number =>
		geometricMean(
			(read[fold] ?? []).map(({ along, down }) =>
				mean([...along, ...down].flatMap(chords)),
			),
		);

	test("each further fold halves the mean chord", () => {
		const ratios = [0, 1, 2].map(
			(fold) => meanChord(fold) / meanChord(fold + 1),
		);
		for (const ratio of ratios) {
			expect(ratio).toBeGreaterThan(1.6);
			expect(ratio).toBeLessThan(2.4);
		}
		expect(geometricMean(ratios)).toBeGreaterThan(1.8);
		expect(geometricMean(ratios)).toBeLessThan(2.15);
	});

	test("wide and narrow veins lie side by side: chords vary by 1.5 of their mean at 3 folds", () => {
		const variations = (read[2] ?? []).map(({ along, down }) => {
			const all = [...along, ...down].flatMap(chords);
			const middle = mean(all);
			return Math.sqrt(mean(all.map((each) => (each - middle) ** 2))) / middle;
		});
		expect(mean(variations)).toBeGreaterThan(1.5);
	});

	test("a bucket's veins lie along the pour, a lay-up's in all directions", () => {
		const ratios = read.flat().map(({ along, down }) => {
			const crossings = (all: Uint8Array[]) => all.flatMap(chords).length;
			return crossings(down) / crossings(along);
		});
		const [least, most] = placing === "bucket fold" ? [1.2, 2] : [0.85, 1.18];
		expect(geometricMean(ratios)).toBeGreaterThan(least);
		expect(geometricMean(ratios)).toBeLessThan(most);
	});

	test("nothing repeats: tones agree with themselves farther on no more than by chance", () => {
		const chance = mean(SHARES.map((share) => share ** 2)) / 2500;
		for (const seeds of read.slice(1)) {
			const agreements = seeds.flatMap(({ along, down }) =>
				[500, 800, 1200, 1600, 2000, 2400].map((lag) => {
					const pairs = [...along, ...down].flatMap((line) =>
						[...line.subarray(lag)].map((tone, i) =>
							tone === line[i] ? 1 : 0,
						),
					);
					return (mean(pairs) - chance) / (1 - chance);
				}),
			);
			expect(mean(agreements)).toBeLessThan(0.15);
		}
	});

	test("each pair of tones meets: at least 4% of all boundaries in the mean of ten seeds", () => {
		const met = new Map<string, number[]>();
		for (const seed of TEN) {
			const { tones, widthPx } = draw({ placing, seed, widthPx: 300 });
			const pairs: Record<string, number> = {};
			let all = 0;
			tones.forEach((tone, i) => {
				const beside = (i + 1) % widthPx ? tones[i + 1] : undefined;
				for (const other of [beside, tones[i + widthPx]]) {
					if (other === undefined || other === tone) continue;
					const pair = [tone, other].sort().join();
					pairs[pair] = (pairs[pair] ?? 0) + 1;
					all++;
				}
			});
			for (const pair of ["0,1", "0,2", "0,3", "1,2", "1,3", "2,3"])
				met.set(pair, [...(met.get(pair) ?? []), (pairs[pair] ?? 0) / all]);
		}
		for (const shares of met.values())
			expect(mean(shares)).toBeGreaterThan(0.04);
	});

	test("the same seed gives the same bytes, another seed another picture", () => {
		const paint = { colors: COLORS, mirrored: false };
		const once = paintStone(draw({ placing }), paint).pixels;
		const again = paintStone(draw({ placing }), paint).pixels;
		expect(Buffer.from(once).equals(Buffer.from(again))).toBe(true);
		const drawn = [...TEN, 11].map((seed) => blocks(draw({ placing, seed })));
		const others = TEN.map((_, i) =>
			correlation(drawn[i] ?? [], drawn[i + 1] ?? []),
		);
		expect(mean(others)).toBeLessThan(0.2);
	});

	test("a further fold keeps where tones are: blocks correlate by a half", () => {
		const kept = [1, 2, 3, 4].flatMap((folds) =>
			TEN.map((seed) =>
				correlation(
					blocks(draw({ placing, seed, folds })),
					blocks(draw({ placing, seed, folds: folds + 1 })),
				),
			),
		);
		expect(mean(kept)).toBeGreaterThan(0.5);
	});

	test("shares moved by some points change at most twice as many pixels, ties and swaps too", () => {
		const moves = [
			[SHARES, [35, 25, 20, 20], 5],
			[SHARES, [40, 20, 20, 20], 5],
			[[30, 30, 20, 20], [30, 31, 19, 20], 1],
			[[40, 21, 19, 20], [40, 19, 21, 20], 2],
			[SHARES, [40, 25, 20, 15], 5],
		] as const;
		for (const [before, after, points] of moves) {
			const changed = EIGHT.map((seed) => {
				const one = draw({ placing, seed, shares: before }).tones;
				const other = draw({ placing, seed, shares: after }).tones;
				return one.filter((tone, i) => tone !== other[i]).length / one.length;
			});
			expect(mean(changed)).toBeLessThanOrEqual((2 * points) / 100);
			expect(Math.max(...changed)).toBeLessThan((2.5 * points) / 100);
		}
	});

	test.each([
		[0, 0.3],
		[1, 0.3],
		[2, 0.3],
		[3, 0.3],
		[5, 1],
	])(
		"blended at %i folds, it is from afar as light as dealt within %f of L*",
		(folds, most) => {
			for (const seed of EIGHT) {
				const folded = draw({ placing, folds, seed, widthPx: 300 });
				const { channels } = blendedLight(folded, COLORS);
				const soft = [0, 1, 2].map((channel) =>
					mean([...folded.tones].map((_, i) => channels[4 * i + channel] ?? 0)),
				);
				expect(Math.abs(lightness(soft) - DEALT)).toBeLessThan(most);
			}
		},
	);

	test.each([1, 2, 3, 4, 5])(
		"blended at %i folds, each tone has its share within 0.3 points",
		(folds) => {
			for (const seed of EIGHT) {
				const parts = blend(draw({ placing, folds, seed, widthPx: 300 }));
				for (const [tone, share] of SHARES.entries())
					expect(
						Math.abs(100 * mean([...(parts[tone] ?? [])]) - share),
					).toBeLessThan(0.3);
			}
		},
	);

	test("the shares hold with cutouts, on a small picture", () => {
		const cutouts = [
			{ count: 1, shape: "rectangle" as const, aM: 0.5, bM: 0.4 },
		];
		for (const folds of [1, 2, 3, 4, 5, 6, 7, 8]) {
			const outline = { ...PIECE.outline, aM: 3 };
			const { tones, widthPx, heightPx } = draw({
				placing,
				folds,
				outline,
				cutouts,
				widthPx: 300,
			});
			expect([widthPx, heightPx]).toEqual([300, 200]);
			const seen = tones.filter((tone) => tone !== OUTSIDE);
			for (const [tone, share] of SHARES.entries()) {
				const count = seen.filter((each) => each === tone).length;
				expect(Math.abs((100 * count) / seen.length - share)).toBeLessThan(0.3);
			}
		}
	});

	test("600 × 400 pixels take at most three times as long as ten million sines", () => {
		const piece = {
			...PIECE,
			placing,
			outline: { ...PIECE.outline, aM: 3 },
			widthPx: 600,
		};
		const work = (run: () => unknown): number =>
			Math.min(
				...[1, 2, 3, 4, 5].map(() => {
					const before = process.cpuUsage();
					run();
					const { user, system } = process.cpuUsage(before);
					return user + system;
				}),
			);
		let total = 0;
		const sines = work(() => {
			for (let i = 0; i < 1e7; i++) total += Math.sin(i / 1000);
		});
		expect(total).not.toBeNaN();
		const paint = { colors: COLORS, mirrored: false };
		const drawn = work(() => paintStone(foldedPiece(piece), paint));
		expect(drawn / sines).toBeLessThan(3);
	});
});
