/** Colors as L*, a*, b* under D65 for the 2° observer, how they differ, and how they look from afar. */
import {
	convertLab65ToRgb,
	convertLab65ToXyz65,
	convertRgbToLab65,
	convertXyz65ToLab65,
	differenceCiede2000,
	modeLab65,
	parseHex,
	useMode as register,
	serializeHex,
} from "culori/fn";
import { InputError } from "./errors";

// Once: the difference looks its color space up by name. Plain `lab` would be read as D50.
register(modeLab65);

export interface Lab {
	l: number;
	a: number;
	b: number;
}

/** Tristimulus values X/Xn, Y/Yn, Z/Zn: what each channel reflects of the white. */
export type Channels = readonly [number, number, number];

const WHITE = convertLab65ToXyz65({ l: 100, a: 0, b: 0 });

const ciede2000 = differenceCiede2000();

/**
 * CIEDE2000 of two colors, kL = kC = kH = 1.
 *
 * Made for small differences, up to about 5; it jumps where two hues are opposite.
 *
 * @source Sharma, Wu and Dalal, Color Research & Application 30(1) (2005).
 */
export const colorDifference = (a: Lab, b: Lab): number =>
	ciede2000({ mode: "lab65", ...a }, { mode: "lab65", ...b });

/**
 * The color of `#rrggbb`.
 *
 * @source IEC 61966-2-1 (sRGB), white at x 0.3127, y 0.3290.
 */
export function labOfHex(hex: string): Lab {
	const rgb = /^#[0-9a-f]{6}$/i.test(hex) ? parseHex(hex) : undefined;
	if (!rgb) throw new InputError(`color must be #rrggbb, got "${hex}"`);
	const { l, a, b } = convertRgbToLab65(rgb);
	return { l, a, b };
}

/** `#rrggbb`; channels out of gamut are limited. */
export const hexOfLab = (lab: Lab): string =>
	serializeHex(convertLab65ToRgb(lab));

export function channelsOf(lab: Lab): Channels {
	const { x, y, z } = convertLab65ToXyz65(lab);
	return [x / WHITE.x, y / WHITE.y, z / WHITE.z];
}

export function labOfChannels([x, y, z]: Channels): Lab {
	const { l, a, b } = convertXyz65ToLab65({
		x: x * WHITE.x,
		y: y * WHITE.y,
		z: z * WHITE.z,
	});
	return { l, a, b };
}

/**
 * The color that areas of several colors have from so far away that they melt: the mean of their linear light.
 *
 * @throws InputError when every share is 0.
 */
export function farColor(areas: readonly { lab: Lab; share: number }[]): Lab {
	const whole = areas.reduce((sum, { share }) => sum + share, 0);
	if (whole <= 0)
		throw new InputError(
			"shares must be above 0 for at least one color, got 0",
		);
	const light = areas.map(({ lab, share }) =>
		channelsOf(lab).map((channel) => (channel * share) / whole),
	);
	const mean = (channel: number) =>
		light.reduce((sum, each) => sum + (each[channel] ?? 0), 0);
	return labOfChannels([mean(0), mean(1), mean(2)]);
}
