import { pigmentHeadroom } from "../calc/headroom";
import { share, table } from "./arguments";
import { sheetFunction } from "./declare";
import { oneRowAsWide } from "./tonetable";

export const PIGMENT_HEADROOM = sheetFunction({
	name: "PIGMENT_HEADROOM",
	group: "Tones",
	summary: "How far each tone is below the highest pigment dose allowed.",
	limits:
		"ASTM C979 counts pigment as a share of cement: at most 10%, and all pigments together at most the smallest maximum of those present. Negative is over. A maker's own limit, and trials for strength, come first.",
	params: {
		doses: table(
			"One row per tone, one column per pigment, e.g. A2:B5: doses of binder",
			{},
			{ more: share("dose", { blank: 0 }) },
		),
		maxima: table(
			"One row, e.g. A1:B1: each pigment's maximum, of cement; 10% where blank",
			{},
			{
				more: share("maximum", { optional: true }),
				alone: true,
				optional: true,
			},
		),
		cement_share: share("Cement in the binder, e.g. 80%", {
			blank: 1,
			above: 0,
			max: 1,
		}),
	},
	answer: {
		shape: "column",
		text: "share of cement still allowed",
		beside: "doses",
	},
	example: {
		shown: ["A2:B2", "A1:B1", "80%"],
		values: [[[0.02, 0.02]], [[0.08, 0.06]], 0.8],
		answer: 0.01,
		working: "(2% + 2%) / 80% = 5% of cement; 6% − 5% = 1%",
	},
	source: "ASTM C979/C979M, 1.4",
	compute: ({ doses, maxima, cement_share }) => {
		const allowed = oneRowAsWide("maxima", maxima, "doses", doses);
		return doses.map(({ more }) =>
			pigmentHeadroom({
				doses: more,
				maxima: allowed,
				cementShare: cement_share,
			}),
		);
	},
});
