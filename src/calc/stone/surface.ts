/** What makes blended tones a surface: clouds, streaks, grain, pores, and light on edges. */
import { FACES } from "../silhouette";
import { type Folded, stream } from "./fold";
import { waveAt, waves } from "./waves";

/** Deviation of light from clouds, streaks and grain together, about 1 of L*: chosen by looking, as all here. */
const UNEVEN = 0.035 / Math.sqrt(3);
const REPEAT_M = 6;

const PORES_PER_M2 = 220;
const PORE_M = { least: 0.0004, most: 0.0015 };
const PORE_DARK = 0.55;

const EDGE_M = 0.012;
const EDGE_LIGHT = 0.16;
const OUTLINE = 0.82;

/** Light from the upper left on what does not look up. */
const LOOKING: Readonly<Record<number, number>> = {
	[FACES.up]: 1,
	[FACES.floor]: 0.9,
	[FACES.left]: 0.95,
	[FACES.back]: 0.98,
	[FACES.right]: 0.6,
	[FACES.front]: 0.68,
};
/** Where two faces meet. */
const MEETING = 0.7;

/** The factor of each pixel's light; a mirrored picture is lit from its other side, so that it is lit from the left. */
export function surface(folded: Folded, mirrored: boolean): Float32Array {
	const factors = unevenness(folded);
	darkenPores(folded, factors);
	lightEdges(folded, factors, mirrored);
	return factors;
}

function unevenness({ faces, places, widthPx, pixelM, seed }: Folded) {
	const clouds = waves(stream(seed, 4), REPEAT_M, { startM: 0.3, spread: 0.7 });
	const streaks = waves(stream(seed, 5), REPEAT_M, { startM: 0.4, layered: 4 });
	const random = stream(seed, 6);
	const factors = new Float32Array(faces.length);
	for (let i = 0; i < factors.length; i++) {
		const column = i % widthPx;
		const row = (i - column) / widthPx;
		const cloud = waveAt(clouds, column * pixelM, row * pixelM);
		const streak = waveAt(
			streaks,
			places.x[i] as number,
			places.y[i] as number,
		);
		// of variance 1
		const grain = Math.sqrt(12) * (random() - 0.5);
		factors[i] = 1 + UNEVEN * (cloud + streak + grain);
	}
	return factors;
}

/** Pores are smaller than a pixel: each darkens the pixels it covers by how much it covers of them. */
function darkenPores(
	{ widthPx, heightPx, pixelM, seed }: Folded,
	factors: Float32Array,
) {
	const random = stream(seed, 7);
	const count = Math.round(PORES_PER_M2 * widthPx * heightPx * pixelM ** 2);
	for (let pore = 0; pore < count; pore++) {
		const column = random() * widthPx;
		const row = random() * heightPx;
		const { least, most } = PORE_M;
		const radiusM = least + (most - least) * random() ** 2;
		const reach = Math.max(0.5, radiusM / pixelM);
		const dark =
			PORE_DARK * Math.min(1, (Math.PI * radiusM ** 2) / pixelM ** 2);
		for (let v = Math.floor(row - reach + 0.5); v <= row + reach - 0.5; v++)
			for (
				let u = Math.floor(column - reach + 0.5);
				u <= column + reach - 0.5;
				u++
			)
				if (u >= 0 && v >= 0 && u < widthPx && v < heightPx)
					factors[v * widthPx + u] =
						(factors[v * widthPx + u] as number) * (1 - dark);
	}
}

function lightEdges(
	{ faces, widthPx, heightPx, pixelM }: Folded,
	factors: Float32Array,
	mirrored: boolean,
) {
	const toLight = mirrored ? 1 : -1;
	const reach = EDGE_M / pixelM / Math.SQRT2;
	const steps = Math.ceil(reach);
	const faceAt = (u: number, v: number): number =>
		u < 0 || v < 0 || u >= widthPx || v >= heightPx
			? 0
			: (faces[v * widthPx + u] as number);
	/** From 0 in the middle of a face to 1 at its edge. */
	const nearness = (
		u: number,
		v: number,
		right: number,
		down: number,
		face: number,
	): number => {
		for (let step = 1; step <= steps; step++)
			if (faceAt(u + step * right, v + step * down) !== face)
				return Math.max(0, 1 - (step - 1) / reach);
		return 0;
	};
	for (let v = 0, i = 0; v < heightPx; v++)
		for (let u = 0; u < widthPx; u++, i++) {
			const face = faces[i] as number;
			if (face === 0) continue;
			const lit =
				nearness(u, v, toLight, -1, face) - nearness(u, v, -toLight, 1, face);
			let factor =
				(1 + EDGE_LIGHT * lit) * (LOOKING[mirroredFace(face, mirrored)] ?? 1);
			const right = faceAt(u + 1, v);
			const below = faceAt(u, v + 1);
			if (!right || !below || !faceAt(u - 1, v) || !faceAt(u, v - 1))
				factor *= OUTLINE;
			else if (right !== face || below !== face) factor *= MEETING;
			factors[i] = (factors[i] as number) * factor;
		}
}

function mirroredFace(face: number, mirrored: boolean): number {
	if (!mirrored) return face;
	if (face === FACES.left) return FACES.right;
	return face === FACES.right ? FACES.left : face;
}
