/** Photos made from known colors by a camera of known faults, read back. */
import { describe, expect, test } from "vitest";
import { colorDifference } from "../../src/calc/ciede2000";
import { channelsOf, type Lab } from "../../src/calc/color";
import { normal } from "../../src/calc/noise";
import type { Triple } from "../../src/calc/photofit";
import {
	type Area,
	type CardPatch,
	comparedInPhoto,
	meanReading,
	readPhoto,
} from "../../src/calc/photoread";
import { casesOf, labOf } from "../published/colormatch/checks";

/** The 24 patches of the published card (BSD-3-Clause, see the checks), six to a row. */
const CARD: { name: string; lab: Lab }[] = (
	casesOf("photo-known").find(([id]) => id === "photo-known-mild-24")?.[1]
		.inputs.patches ?? []
).map(({ name, lab }: { name: string; lab: number[] }) => ({
	name,
	lab: labOf(lab),
}));

const SAMPLES: Lab[] = [
	{ l: 62, a: 14, b: 18 },
	{ l: 48, a: 20, b: 17 },
	{ l: 74, a: 4, b: 22 },
	{ l: 55, a: 0.5, b: 2 },
];

interface Camera {
	/** Rows of a matrix from X/Xn, Y/Yn, Z/Zn to the camera's channels. */
	matrix: number[][];
	/** Of ln light over the width. */
	fall: { x: number; y: number };
	/** Contrast: 1 is none. */
	contrast: number;
	/** Stray light. */
	flare: number;
	/** Of a code, one standard deviation. */
	noise: number;
	exposure: number;
}

// Sharpened from XYZ to red, green and blue, and a little warm: invented.
const PLAIN: Camera = {
	matrix: [
		[1.9, -0.7, -0.15],
		[-0.6, 1.55, 0.05],
		[0.05, -0.2, 0.95],
	],
	fall: { x: 0, y: 0 },
	contrast: 1,
	flare: 0,
	noise: 0,
	exposure: 0.8,
};

const encode = (light: number): number =>
	light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;

function photographed(camera: Partial<Camera> = {}, seed = 1) {
	const own = { ...PLAIN, ...camera };
	const next = normal(seed);
	return (lab: Lab, at: { x: number; y: number }): Area => {
		const light = channelsOf(lab);
		const fall = Math.exp(own.fall.x * at.x + own.fall.y * at.y);
		const rgb8 = own.matrix.map((row) => {
			const seen =
				own.exposure *
				fall *
				(own.flare + row.reduce((sum, m, i) => sum + m * (light[i] ?? 0), 0));
			const tone = Math.min(1, Math.max(0, seen)) ** own.contrast;
			const code = 255 * encode(tone) + own.noise * next();
			return Math.min(255, Math.max(0, Math.round(code)));
		});
		return { rgb8: rgb8 as unknown as Triple, spread: 0.01, at };
	};
}

const place = (i: number) => ({
	x: 0.1 + 0.09 * (i % 6),
	y: 0.1 + 0.09 * Math.floor(i / 6),
});

const cardBy = (shoot: ReturnType<typeof photographed>): CardPatch[] =>
	CARD.map((patch, i) => ({ ...patch, ...shoot(patch.lab, place(i)) }));

const samplePlace = (i: number) => ({ x: 0.15 + 0.12 * i, y: 0.55 });

function errors(
	camera: Partial<Camera>,
	keep: (i: number) => boolean = () => true,
) {
	const shoot = photographed(camera);
	const card = readPhoto(cardBy(shoot).filter((_, i) => keep(i)));
	if ("refused" in card) throw new Error(card.refused);
	return SAMPLES.map((lab, i) => {
		const read = card.read(shoot(lab, samplePlace(i)));
		if ("refused" in read) throw new Error(read.refused);
		return { off: colorDifference(read.lab, lab), within: read.within };
	});
}

describe("samples beside a card of 24 patches are read within what is said", () => {
	test.each<[string, Partial<Camera>]>([
		["by a camera without faults", {}],
		["with noise", { noise: 1 }],
		["through a contrast curve", { contrast: 1.2 }],
		["with stray light", { flare: 0.02 }],
		[
			"in light that falls off by 20% to the right",
			{ fall: { x: -0.4, y: 0 } },
		],
		["in light that falls off by 20% downward", { fall: { x: 0, y: -0.5 } }],
		[
			"with all of it",
			{ noise: 0.7, contrast: 1.1, fall: { x: 0.3, y: -0.2 } },
		],
	])("%s", (_, camera) => {
		for (const { off, within } of errors(camera))
			expect(off).toBeLessThanOrEqual(within);
	});

	test("a fall of light that is taken out errs less than half as far as it would", () => {
		const fall = { x: -0.5, y: 0.2 };
		const shoot = photographed({ fall });
		const mean = (placed: boolean) => {
			const strip = (area: Area): Area => ({
				...area,
				at: placed ? area.at : undefined,
			});
			const card = readPhoto(
				cardBy(shoot).map((patch) => ({ ...patch, ...strip(patch) })),
			);
			if ("refused" in card) return Number.POSITIVE_INFINITY;
			const off = SAMPLES.map((lab, i) => {
				const read = card.read(strip(shoot(lab, samplePlace(i))));
				return "refused" in read ? 99 : colorDifference(read.lab, lab);
			});
			return off.reduce((sum, each) => sum + each, 0) / off.length;
		};
		expect(mean(true)).toBeLessThan(mean(false) / 2);
	});
});

describe("what cannot be read is refused in words", () => {
	const card = cardBy(photographed());
	const whole = (patches: CardPatch[]) => {
		const read = readPhoto(patches);
		return "refused" in read ? read.refused : read;
	};

	test("clipped and uneven patches are left out, each with its reason", () => {
		const read = whole(
			card.map((patch, i) => ({
				...patch,
				...(i === 3 && { rgb8: [254, 120, 90] as const }),
				...(i === 5 && { rgb8: [40, 1, 30] as const }),
				...(i === 7 && { spread: 0.09 }),
			})),
		);
		if (typeof read === "string") throw new Error(read);
		expect(read.used).toBe(21);
		expect(read.leftOut).toEqual([
			`${CARD[3]?.name} is too bright`,
			`${CARD[5]?.name} is too dark`,
			`${CARD[7]?.name} is uneven`,
		]);
	});

	test("a patch that is not where it is marked is left out", () => {
		const orange = card[6] as CardPatch;
		const read = whole(
			card.map((patch, i) =>
				i === 13 ? { ...patch, rgb8: orange.rgb8 } : patch,
			),
		);
		if (typeof read === "string") throw new Error(read);
		expect(read.leftOut).toEqual([
			`${CARD[13]?.name} is not where it is marked, or not that color`,
		]);
	});

	test("a card marked upside down is refused", () => {
		const turned = card.map((patch, i) => ({
			...patch,
			...(card[23 - i] as CardPatch),
			lab: patch.lab,
			name: patch.name,
		}));
		expect(whole(turned)).toMatch(/do not fit the card's colors/);
	});

	test("grays alone, and fewer than six patches", () => {
		expect(whole(card.slice(18))).toMatch(/grays.*red, yellow and brown/);
		expect(whole(card.slice(0, 5))).toMatch(/only 5 patches/);
	});

	test("a sample that is too bright or uneven", () => {
		const read = whole(card);
		if (typeof read === "string") throw new Error(read);
		expect(read.read({ rgb8: [255, 240, 230], spread: 0.01 })).toEqual({
			refused: "the sample is too bright",
		});
		expect(read.read({ rgb8: [120, 110, 100], spread: 0.2 })).toEqual({
			refused: "the sample is uneven",
		});
	});
});

test("several photos are averaged, and no camera's own error is said to be gone", () => {
	const one = { lab: { l: 60, a: 2, b: 10 }, within: 3 };
	const other = { lab: { l: 62, a: 4, b: 12 }, within: 4 };
	expect(meanReading([one, other])).toEqual({
		lab: { l: 61, a: 3, b: 11 },
		within: 3,
	});
});

test("two like samples in one photo are compared better than each is read; unlike ones are not", () => {
	const one = { lab: { l: 60, a: 2, b: 10 }, within: 3 };
	const like = { lab: { l: 62, a: 2, b: 10 }, within: 3 };
	const unlike = { lab: { l: 40, a: 2, b: 10 }, within: 4 };
	expect(comparedInPhoto(one, like).within).toBe(1.5);
	expect(comparedInPhoto(one, like).difference).toBeCloseTo(
		colorDifference(one.lab, like.lab),
		12,
	);
	expect(comparedInPhoto(one, unlike).within).toBe(4);
});
