import { colorDifference } from "../calc/ciede2000";
import { farColor, hexOfLab, type Lab } from "../calc/color";
import { type DoseForColor, doseFinder } from "../calc/dosecolor";
import { at, InputError } from "../calc/errors";
import { swatchesOf, toneColors } from "../calc/tonecolor";
import { list, number, share, table } from "./arguments";
import { sheetFunction } from "./declare";
import { color, OWN, SOURCE, swatches, swatchRows } from "./swatchrows";

type Doses = readonly { more: readonly number[]; row: number }[];

export const COLOR_DIFFERENCE = sheetFunction({
	name: "COLOR_DIFFERENCE",
	group: "Color",
	summary: "How different two colors look: CIEDE2000.",
	limits:
		"Half of people see 0.8 and accept 1.8; above about 5 it only says that two colors are far apart. It compares under D65, 2°.",
	params: { a: color("One color"), b: color("The other") },
	answer: { text: "CIEDE2000" },
	example: {
		shown: [`"50, 0, 0"`, `"50, -1, 2"`],
		values: ["50, 0, 0", "50, -1, 2"],
		answer: 2.3669,
		working: "Pair 7 of the published test data: 2.3669",
	},
	source:
		"Sharma, Wu and Dalal, Color Research & Application 30(1) (2005); limits of seeing: Paravina et al. (2015)",
	compute: ({ a, b }) => colorDifference(a, b),
});

export const TONE_COLOR = sheetFunction({
	name: "TONE_COLOR",
	group: "Color",
	summary: "The color a dose should give, fitted to the studio's own swatches.",
	limits: `${OWN} Swatches of two pigments at once do not enter the fit; two doses alone leave the curve between them a guess.`,
	params: {
		...swatches("a dose of each pigment"),
		dose: table(
			"The tone's dose of each pigment, one row per tone, e.g. 3%",
			{},
			{ more: share("dose", { blank: 0 }) },
		),
	},
	answer: { shape: "column", text: "#rrggbb", beside: "dose" },
	example: {
		shown: ["A2:A4", "B2:B4", "0"],
		values: [[[0], [0.02], [0.06]], [["#b5a99a"], ["#8a7a6a"], ["#5a4a40"]], 0],
		answer: "#b5a99a",
		working: "The fit passes through the weakest swatch",
	},
	source: SOURCE,
	compute: ({ doses, colors, dose }) => {
		const width = doses[0]?.more.length ?? 0;
		const colorOf = toneColors(swatchRows(doses, colors));
		return dose.map(({ more, row }) => {
			if (more.length !== width)
				throw new InputError(
					`dose must have as many columns as doses, ${width}, got ${more.length}`,
				);
			const hex = () => hexOfLab(colorOf(more));
			return dose.length > 1 ? at(`row ${row}`, hex) : hex();
		});
	},
});

/** What finds doses by a table of swatches; one call may ask for many colors. */
const finders = new WeakMap<object, (lab: Lab) => DoseForColor>();

function finderOf(
	doses: Doses,
	colors: readonly (Lab | undefined)[],
): (lab: Lab) => DoseForColor {
	const known = finders.get(doses);
	if (known) return known;
	const width = doses[0]?.more.length ?? 0;
	if (width !== 1)
		throw new InputError(
			`doses must be one column, of one pigment, got ${width} columns`,
		);
	const finder = doseFinder(swatchesOf(swatchRows(doses, colors), 0));
	finders.set(doses, finder);
	return finder;
}

export const DOSE_FOR_COLOR = sheetFunction({
	name: "DOSE_FOR_COLOR",
	group: "Color",
	summary: "The dose of one pigment that comes nearest to a color.",
	limits: `${OWN} A leftover above 1.8 means that this pigment alone does not make that color. Low and high are one standard uncertainty, for readings good to 0.4 in L* and 0.28 in a* and b*. Two doses cannot show saturation: the band then covers everything from none to strong. Where a stronger dose hardly changes the color, the band is wide.`,
	params: {
		...swatches("doses of one pigment"),
		color: color("Color wanted"),
	},
	answer: {
		shape: "row",
		text: "dose, leftover difference, low and high dose",
		columns: [
			{ text: "dose" },
			{ text: "leftover CIEDE2000" },
			{ text: "low dose" },
			{ text: "high dose" },
		],
	},
	example: {
		shown: ["A2:A4", "B2:B4", `"60, 0, 0"`],
		values: [
			[[0], [0.02], [0.06]],
			[["50, 0, 0"], ["40, 0, 0"], ["30, 0, 0"]],
			"60, 0, 0",
		],
		answer: [[0, 9.4706, 0, 0]],
		working:
			"Lighter than the undosed swatch, so dose 0 is nearest; the leftover of 10 in L* is 10 / (1 + 0.015 × 5² / √(20 + 5²)) = 9.4706",
	},
	source: `${SOURCE}; band by 200 draws (JCGM 101:2008)`,
	compute: ({ doses, colors, color }) => {
		const { dose, leftover, low, high } = finderOf(doses, colors)(color);
		return [dose, leftover, low, high];
	},
});

export const FAR_COLOR = sheetFunction({
	name: "FAR_COLOR",
	group: "Color",
	summary: "The color that folded tones have from across the room.",
	limits:
		"Mean of linear light by area. It is not the color of the tones mixed evenly: for that, TONE_COLOR of the mean dose.",
	params: {
		colors: list(color("Colors of the tones")),
		shares: list(
			number("Their shares of the area, or any weights, e.g. 60%", { min: 0 }),
		),
	},
	answer: { text: "#rrggbb" },
	example: {
		shown: ["A2:A3", "B2:B3"],
		values: [
			[["#000000"], ["#ffffff"]],
			[[1], [1]],
		],
		answer: "#bcbcbc",
		working:
			"Half of white's light is 0.5, encoded 1.055 × 0.5^(1/2.4) − 0.055 = 0.735, 188 of 255",
	},
	source: "Additivity of light (Grassmann); encoding IEC 61966-2-1",
	compute: ({ colors, shares }) =>
		hexOfLab(
			farColor(colors.map((lab, i) => ({ lab, share: shares[i] ?? 0 }))),
		),
});
