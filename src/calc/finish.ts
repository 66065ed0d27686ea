/** Paste for voids, and sealer. */

/** Paste to fill and skim a face, m³: area × (void share × mean depth + skim) × (1 + waste). */
export const voidFillM3 = (face: {
	areaM2: number;
	voidShare: number;
	depthM: number;
	skimM: number;
	waste: number;
}): number =>
	face.areaM2 * (face.voidShare * face.depthM + face.skimM) * (1 + face.waste);

/** Sealer for all coats, m³: area / coverage × coats × (1 + waste); coverage is that of one coat. */
export const coatingM3 = (coating: {
	areaM2: number;
	coverageM2PerM3: number;
	coats: number;
	waste: number;
}): number =>
	(coating.areaM2 / coating.coverageM2PerM3) *
	coating.coats *
	(1 + coating.waste);
