/** Colors as L*, a*, b* under D65 for the 2° observer, and how they look from afar. */
import {
	convertLab65ToRgb,
	convertLab65ToXyz65,
	convertLabToXyz50,
	convertRgbToLab65,
	convertXyz50ToXyz65,
	convertXyz65ToLab65,
} from "culori/fn";
import { InputError } from "./errors";
import { sum } from "./sum";

export interface Lab {
	l: number;
	a: number;
	b: number;
}

/** Tristimulus values X/Xn, Y/Yn, Z/Zn: what each channel reflects of the white. */
export type Channels = readonly [number, number, number];

const WHITE = convertLab65ToXyz65({ l: 100, a: 0, b: 0 });

/**
 * The color of `#rrggbb`.
 *
 * @source IEC 61966-2-1 (sRGB), white at x 0.3127, y 0.3290.
 */
export function labOfHex(hex: string): Lab {
	if (!/^#[0-9a-f]{6}$/i.test(hex))
		throw new InputError(`color must be #rrggbb, got "${hex}"`);
	const channel = (at: number) =>
		Number.parseInt(hex.slice(at, at + 2), 16) / 255;
	const [r, g, b] = [channel(1), channel(3), channel(5)];
	const lab = convertRgbToLab65({ r, g, b });
	return { l: lab.l, a: lab.a, b: lab.b };
}

/** The color under D65 of L*, a*, b* that are stated under D50, as those of reference cards often are: Bradford's adaptation. */
export function labOfD50(lab: Lab): Lab {
	const { l, a, b } = convertXyz65ToLab65(
		convertXyz50ToXyz65(convertLabToXyz50(lab)),
	);
	return { l, a, b };
}

/** `#rrggbb`; channels out of gamut are limited. */
export function hexOfLab(lab: Lab): string {
	const { r, g, b } = convertLab65ToRgb(lab);
	const channel = (value: number) =>
		Math.round(255 * Math.min(1, Math.max(0, value)))
			.toString(16)
			.padStart(2, "0");
	return `#${channel(r)}${channel(g)}${channel(b)}`;
}

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
	const whole = sum(areas.map(({ share }) => share));
	if (whole <= 0)
		throw new InputError(
			"shares must be above 0 for at least one color, got 0",
		);
	const light = areas.map(({ lab, share }) =>
		channelsOf(lab).map((channel) => (channel * share) / whole),
	);
	const mean = (channel: number) =>
		sum(light.map((each) => each[channel] ?? 0));
	return labOfChannels([mean(0), mean(1), mean(2)]);
}
