/** A folded piece as pixels of a screen. */
import { convertLrgbToRgb, convertRgbToLrgb } from "culori/fn";
import { blend } from "./blend";
import { OUTSIDE } from "./deal";
import type { Folded } from "./fold";
import { surface } from "./surface";

export interface Painted {
	widthPx: number;
	heightPx: number;
	/** Red, green, blue and opacity, a row after the other. */
	pixels: Uint8ClampedArray<ArrayBuffer>;
}

export interface Paint {
	/** `#rrggbb` of each tone. */
	colors: readonly string[];
	/** As a mold for casting face down is laid out: left and right change sides. */
	mirrored: boolean;
}

/** Red, green and blue in linear light, and how much of the pixel is of the piece; from 0 to 1. */
interface Light {
	widthPx: number;
	channels: Float32Array;
}

/** Each pixel in its one tone: at once, while a control moves. */
export const paintPlain = (folded: Folded, paint: Paint): Painted =>
	onScreen(plainLight(folded, paint.colors), paint);

/** As stone. */
export const paintStone = (folded: Folded, paint: Paint): Painted =>
	onScreen(stoneLight(folded, paint), paint);

/** As stone at half the size that it was folded at: without the beads that fine veins have at one sample a pixel. */
export const paintHalved = (folded: Folded, paint: Paint): Painted =>
	onScreen(halved(stoneLight(folded, paint)), paint);

function plainLight(
	{ tones, widthPx }: Folded,
	colors: readonly string[],
): Light {
	const light = colors.map(linear);
	const channels = new Float32Array(4 * tones.length);
	tones.forEach((tone, i) => {
		if (tone !== OUTSIDE) channels.set(light[tone] ?? [], 4 * i);
	});
	return { widthPx, channels };
}

/** The light of blended tones, without what makes them a surface. */
export function blendedLight(folded: Folded, colors: readonly string[]): Light {
	const light = colors.map(linear);
	const shares = blend(folded);
	const channels = new Float32Array(4 * folded.tones.length);
	shares.forEach((share, tone) => {
		const [red, green, blue] = light[tone] as Linear;
		for (let i = 0; i < share.length; i++) {
			const part = share[i] as number;
			if (part === 0) continue;
			channels[4 * i] = (channels[4 * i] as number) + part * red;
			channels[4 * i + 1] = (channels[4 * i + 1] as number) + part * green;
			channels[4 * i + 2] = (channels[4 * i + 2] as number) + part * blue;
			channels[4 * i + 3] = (channels[4 * i + 3] as number) + part;
		}
	});
	return { widthPx: folded.widthPx, channels };
}

function stoneLight(folded: Folded, { colors, mirrored }: Paint): Light {
	const light = blendedLight(folded, colors);
	const factors = surface(folded, mirrored);
	const { channels } = light;
	for (let i = 0; i < factors.length; i++)
		for (let channel = 4 * i; channel < 4 * i + 3; channel++)
			channels[channel] =
				(channels[channel] as number) * (factors[i] as number);
	return light;
}

/** Four pixels to one. */
function halved({ widthPx, channels }: Light): Light {
	const half = widthPx >> 1;
	const heightPx = Math.floor(channels.length / 4 / widthPx) >> 1;
	const less = new Float32Array(4 * half * heightPx);
	for (let i = 0; i < less.length; i++) {
		const pixel = i >> 2;
		const row = Math.floor(pixel / half);
		const from = 4 * (2 * row * widthPx + 2 * (pixel - row * half)) + (i & 3);
		less[i] =
			((channels[from] as number) +
				(channels[from + 4] as number) +
				(channels[from + 4 * widthPx] as number) +
				(channels[from + 4 * widthPx + 4] as number)) /
			4;
	}
	return { widthPx: half, channels: less };
}

type Linear = [red: number, green: number, blue: number, cover: number];

function linear(color: string): Linear {
	const channel = (at: number) => Number.parseInt(color.slice(at, at + 2), 16);
	const { r, g, b } = convertRgbToLrgb({
		r: channel(1) / 255,
		g: channel(3) / 255,
		b: channel(5) / 255,
	});
	return [r, g, b, 1];
}

const FINENESS = 2 ** 14;
let coded: Uint8Array | undefined;

/** From linear light in so many steps to a byte of sRGB. */
function codes(): Uint8Array {
	coded ??= Uint8Array.from({ length: FINENESS + 1 }, (_, i) => {
		const { r } = convertLrgbToRgb({ r: i / FINENESS, g: 0, b: 0 });
		return Math.round(255 * r);
	});
	return coded;
}

function onScreen({ widthPx, channels }: Light, { mirrored }: Paint): Painted {
	const code = codes();
	const pixels = new Uint8ClampedArray(channels.length);
	for (let i = 0; i < pixels.length; i += 4) {
		const cover = channels[i + 3] as number;
		if (cover === 0) continue;
		const scale = FINENESS / cover;
		for (let at = i; at < i + 3; at++) {
			const light = Math.round(scale * (channels[at] as number));
			pixels[at] = code[Math.min(light, FINENESS)] as number;
		}
		pixels[i + 3] = 255 * cover;
	}
	if (mirrored) mirror(pixels, widthPx);
	return { widthPx, heightPx: pixels.length / 4 / widthPx, pixels };
}

function mirror(pixels: Uint8ClampedArray<ArrayBuffer>, widthPx: number): void {
	const whole = new Uint32Array(pixels.buffer);
	for (let start = 0; start < whole.length; start += widthPx)
		whole.subarray(start, start + widthPx).reverse();
}
