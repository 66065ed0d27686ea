import { hexOfLab } from "../calc/color";
import { expectedColors, swatchesUsed } from "../calc/expected";
import { colorIn } from "../job/reading/colortext";
import { custom, list, share, table, text } from "./arguments";
import { sheetFunction } from "./declare";
import { notTooMany, TONES, tonesOf, unique } from "./tonetable";

const typed = (help: string) => text(help, { blank: "" });

const names = (help: string) =>
	list(text(help, { blank: "" }), { alone: true, mayBeEmpty: true });

export const EXPECTED_COLORS = sheetFunction({
	name: "EXPECTED_COLORS",
	group: "Color",
	summary:
		"The color each tone should have by the swatches of the same mix, finish, sealing and state.",
	limits:
		"Swatches of several pigments do not enter. A tone that the swatches do not reach has no color, and the remark says why. Water, curing and age change a color more than weighing does.",
	params: {
		tones: TONES,
		pigments: names("Pigments in the order of the tones' doses, e.g. C1:D1"),
		wanted: names("Mix, finish, sealing and state of the job, e.g. B3:B6"),
		kinds: table(
			"The swatches, one row each, e.g. A20:D40: mix, finish, sealing and state",
			{
				mix: typed("Mix"),
				finish: typed("Finish"),
				sealed: typed("Sealing"),
				state: typed("State"),
			},
			{ alone: true, optional: true },
		),
		doses: table(
			"Their doses, one column per pigment, e.g. E20:H40; 0 is undosed",
			{},
			{ more: share("dose", { optional: true }), alone: true, optional: true },
		),
		swatch_pigments: names("Pigments of these columns, e.g. E19:H19"),
		colors: list(
			custom(
				'Their colors, one per row, e.g. #b5a99a, or "52.1, 8.0, 14.2"',
				colorIn,
				{
					optional: true,
				},
			),
			{ alone: true },
		),
	},
	answer: {
		shape: "table",
		text: "one row per tone: color, remark, most alike tone, difference; in the first row which swatches were used",
		columns: [
			{ text: "#rrggbb" },
			{ text: "remark" },
			{ text: "the tone most like it" },
			{ text: "CIEDE2000 to it" },
			{ text: "swatches used" },
		],
		beside: "tones",
	},
	example: {
		shown: ["A2:C3", "C1", "B9:E9", "A20:D21", "E20:E21", "E19", "F20:F21"],
		values: [
			[
				["Plain", 1, 0],
				["Deep", 1, 0.04],
			],
			["Umber"],
			[["White", "cast", "bare", "dry"]],
			[
				["White", "cast", "bare", "dry"],
				["White", "cast", "bare", "dry"],
			],
			[[0], [0.02]],
			["Umber"],
			[["#b5a99a"], ["#8a7a6a"]],
		],
		answer: [
			["#b5a99a", "", "", "", "2 of 2 swatches used"],
			["", "past the strongest swatch of Umber, 2% of binder", "", "", ""],
		],
		working:
			"An undosed tone has the color of the undosed swatch; 4% is past the strongest swatch",
	},
	source: "As TONE_COLOR and COLOR_DIFFERENCE",
	compute: (given) => {
		const set = {
			pigments: unique("pigments", given.pigments),
			kinds: given.wanted,
			swatchPigments: given.swatch_pigments,
			swatches: given.kinds.map(({ mix, finish, sealed, state, row }) => ({
				kinds: [mix, finish, sealed, state],
				doses: given.doses.find((doses) => doses.row === row)?.more ?? [],
				lab: given.colors[row - 1],
			})),
		};
		const tones = tonesOf(given.tones, given.pigments);
		notTooMany(tones, "their colors");
		const used = swatchesUsed(set);
		return expectedColors(tones, set).map(({ lab, remark, nearest }, i) => [
			lab ? hexOfLab(lab) : "",
			remark,
			nearest?.name ?? "",
			nearest?.difference ?? "",
			i === 0 ? used : "",
		]);
	},
});
