/** CIEDE2000: how different two colors look, lightness, chroma and hue weighed as eyes weigh them. */
import type { Lab } from "./color";

const DEGREE = Math.PI / 180;
const TURN = 2 * Math.PI;

/** Chroma and hue as the formula has them: a* stretched where there is little chroma. */
interface Hued {
	l: number;
	chroma: number;
	/** From 0 to 2π; 0 without chroma. */
	hue: number;
}

const FULL = 25 ** 7;

/** √(C⁷ / (C⁷ + 25⁷)), by products: they are much quicker than a power. */
function saturation(chroma: number): number {
	const cube = chroma * chroma * chroma;
	const seventh = cube * cube * chroma;
	return Math.sqrt(seventh / (seventh + FULL));
}

function hued({ l, a, b }: Lab, stretch: number): Hued {
	const stretched = a * stretch;
	const chroma = Math.sqrt(stretched ** 2 + b ** 2);
	const hue = chroma === 0 ? 0 : Math.atan2(b, stretched);
	return { l, chroma, hue: hue < 0 ? hue + TURN : hue };
}

/** From one hue to the other the short way round. */
function turn(one: Hued, other: Hued): number {
	if (one.chroma * other.chroma === 0) return 0;
	const between = other.hue - one.hue;
	if (Math.abs(between) <= Math.PI) return between;
	return between > 0 ? between - TURN : between + TURN;
}

function meanHue(one: Hued, other: Hued): number {
	const both = one.hue + other.hue;
	if (one.chroma * other.chroma === 0) return both;
	if (Math.abs(one.hue - other.hue) <= Math.PI) return both / 2;
	return both < TURN ? both / 2 + Math.PI : both / 2 - Math.PI;
}

/** T, what hue does to the weight of a difference in hue. */
const hueWeight = (hue: number): number =>
	1 -
	0.17 * Math.cos(hue - 30 * DEGREE) +
	0.24 * Math.cos(2 * hue) +
	0.32 * Math.cos(3 * hue + 6 * DEGREE) -
	0.2 * Math.cos(4 * hue - 63 * DEGREE);

/**
 * CIEDE2000 of two colors, kL = kC = kH = 1.
 *
 * Made for small differences, up to about 5; it jumps where two hues are opposite.
 *
 * @source Sharma, Wu and Dalal, Color Research & Application 30(1) (2005), equations 2 to 22.
 */
export function colorDifference(a: Lab, b: Lab): number {
	const { dL, dC, dH, rotation } = weighed(a, b);
	return Math.sqrt(dL ** 2 + dC ** 2 + dH ** 2 + rotation * dC * dH);
}

/**
 * The difference as three numbers: the root of the sum of their squares is CIEDE2000.
 *
 * dC² + dH² + R·dC·dH = (dC + ½R·dH)² + (1 − ¼R²)·dH², so that least squares work on it.
 */
export function differenceParts(a: Lab, b: Lab): [number, number, number] {
	const { dL, dC, dH, rotation } = weighed(a, b);
	return [dL, dC + (rotation / 2) * dH, Math.sqrt(1 - rotation ** 2 / 4) * dH];
}

/** What two colors differ by in lightness, chroma and hue, each as it is weighed, and how the last two act together. */
function weighed(a: Lab, b: Lab) {
	const chromas =
		Math.sqrt(a.a ** 2 + a.b ** 2) + Math.sqrt(b.a ** 2 + b.b ** 2);
	const stretch = 1 + 0.5 * (1 - saturation(chromas / 2));
	const [one, other] = [hued(a, stretch), hued(b, stretch)];
	const hue = meanHue(one, other);
	const chroma = (one.chroma + other.chroma) / 2;
	const gray = ((one.l + other.l) / 2 - 50) ** 2;
	const dL = (other.l - one.l) / (1 + (0.015 * gray) / Math.sqrt(20 + gray));
	const dC = (other.chroma - one.chroma) / (1 + 0.045 * chroma);
	const dH =
		(2 *
			Math.sqrt(one.chroma * other.chroma) *
			Math.sin(turn(one, other) / 2)) /
		(1 + 0.015 * chroma * hueWeight(hue));
	const blue = 60 * DEGREE * Math.exp(-(((hue / DEGREE - 275) / 25) ** 2));
	const rotation = -Math.sin(blue) * 2 * saturation(chroma);
	return { dL, dC, dH, rotation };
}
