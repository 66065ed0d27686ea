/** Colors read from a photo by the patches of a reference card beside them: plain arithmetic on what the pixels say. */
import { solved } from "./bounded";
import { colorDifference } from "./ciede2000";
import { channelsOf, type Lab, labOfChannels } from "./color";
import { sum } from "./sum";

export type Triple = readonly [number, number, number];

/** What a patch is, and what the photo has of it in linear light. */
export interface Patch {
	lab: Lab;
	rgb: Triple;
}

export interface PhotoFit {
	/** With a constant, which takes out stray light. */
	affine: boolean;
	/** Rows count by Y^(−2/3), as lightness is seen. */
	weighed: boolean;
	/** Patches near the color that is read count more. */
	close: boolean;
}

/** Linear light of an 8-bit channel. @source IEC 61966-2-1. */
export function linearOf(code: number): number {
	const v = code / 255;
	return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
}

const DARKEST_Y = 0.02;
/** No channel of light is below: a matrix may say so of dark colors. */
const LEAST_LIGHT = 1e-4;
/** How far in L*a*b* a patch is near, and what the farthest still counts: tried on one real photo and many made ones. */
const NEAR = 40;
const FAR_COUNTS = 0.05;
const ROUNDS = 2;

interface Row {
	terms: readonly number[];
	lab: Lab;
	light: Triple;
	weight: number;
}

const termsOf = (rgb: Triple, affine: boolean): number[] =>
	affine ? [...rgb, 1] : [...rgb];

function rowsOf(patches: readonly Patch[], fit: PhotoFit): Row[] {
	return patches.map(({ lab, rgb }) => {
		const light = channelsOf(lab);
		return {
			terms: termsOf(rgb, fit.affine),
			lab,
			light,
			weight: fit.weighed ? Math.max(DARKEST_Y, light[1]) ** (-2 / 3) : 1,
		};
	});
}

/** What the photo's light is of the patches': a matrix, by least squares; undefined where the patches do not fix one. */
function matrixOf(
	rows: readonly Row[],
	near: (row: Row) => number,
): number[][] | undefined {
	const columns = rows[0]?.terms.map((_, i) => i) ?? [];
	const weights = rows.map((row) => (row.weight * near(row)) ** 2);
	const normal = columns.map((i) =>
		columns.map((k) =>
			sum(
				rows.map(
					({ terms }, n) =>
						(weights[n] ?? 0) * (terms[i] ?? 0) * (terms[k] ?? 0),
				),
			),
		),
	);
	const found = [0, 1, 2].map((channel) =>
		solved(
			normal,
			columns.map((i) =>
				sum(
					rows.map(
						({ terms, light }, n) =>
							(weights[n] ?? 0) * (terms[i] ?? 0) * (light[channel] ?? 0),
					),
				),
			),
		),
	);
	return found.every((each) => each !== undefined)
		? (found as number[][])
		: undefined;
}

const labBy = (matrix: readonly (readonly number[])[], terms: number[]): Lab =>
	labOfChannels(
		matrix.map((own) =>
			Math.max(LEAST_LIGHT, sum(own.map((each, i) => each * (terms[i] ?? 0)))),
		) as unknown as Triple,
	);

const distance2 = (one: Lab, other: Lab): number =>
	(one.l - other.l) ** 2 + (one.a - other.a) ** 2 + (one.b - other.b) ** 2;

/** What reads colors from the photo's linear light; undefined where the patches do not fix a matrix. */
export function photoReader(
	patches: readonly Patch[],
	fit: PhotoFit,
): ((rgb: Triple) => Lab) | undefined {
	const rows = rowsOf(patches, fit);
	const plain = matrixOf(rows, () => 1);
	if (!plain) return undefined;
	return (rgb) => {
		const terms = termsOf(rgb, fit.affine);
		let lab = labBy(plain, terms);
		if (!fit.close) return lab;
		for (let round = 0; round < ROUNDS; round += 1) {
			const estimate = lab;
			const near = matrixOf(
				rows,
				(row) =>
					FAR_COUNTS + Math.exp(-distance2(row.lab, estimate) / NEAR ** 2),
			);
			if (near) lab = labBy(near, terms);
		}
		return lab;
	};
}

/** CIEDE2000 of each patch by the fit to the others: what the card itself says of the photo. */
export const leftOutPatches = (
	patches: readonly Patch[],
	fit: PhotoFit,
): number[] =>
	patches.map(({ lab, rgb }, i) => {
		const read = photoReader(
			patches.filter((_, k) => k !== i),
			fit,
		);
		return read ? colorDifference(read(rgb), lab) : Number.POSITIVE_INFINITY;
	});

/**
 * How well the patches fix a matrix: smallest over largest singular value of their weighed light, columns scaled to length 1.
 *
 * Grays alone have 0.004, with one warm patch 0.007, four grays with red and yellow 0.18 (own figures). An error of
 * leaving one out does not warn: for grays alone it looks good.
 */
export function conditionOf(patches: readonly Patch[]): number {
	const rows = rowsOf(patches, { affine: false, weighed: true, close: false });
	const of = (i: number, k: number) =>
		sum(
			rows.map(
				({ terms, weight }) => weight ** 2 * (terms[i] ?? 0) * (terms[k] ?? 0),
			),
		);
	const cosine = (i: number, k: number) =>
		of(i, k) / Math.sqrt(of(i, i) * of(k, k));
	const values = eigenvalues(cosine(0, 1), cosine(0, 2), cosine(1, 2));
	return Math.sqrt(Math.max(0, Math.min(...values)) / Math.max(...values));
}

/**
 * Eigenvalues of a symmetric matrix of 3 × 3 with ones on its diagonal.
 *
 * @source Smith, Communications of the ACM 4(4) (1961) 168.
 */
function eigenvalues(xy: number, xz: number, yz: number): number[] {
	const p = Math.sqrt((xy ** 2 + xz ** 2 + yz ** 2) / 3);
	if (p === 0) return [1, 1, 1];
	const half = (xy * xz * yz) / p ** 3;
	const angle = Math.acos(Math.min(1, Math.max(-1, half))) / 3;
	return [0, 1, 2].map(
		(turn) => 1 + 2 * p * Math.cos(angle + (2 * Math.PI * turn) / 3),
	);
}
