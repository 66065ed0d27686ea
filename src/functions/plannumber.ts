import { InputError } from "../calc/errors";
import { planNumber } from "../calc/plannumber";
import { list, number, share } from "./arguments";
import { sheetFunction } from "./declare";
import { PIGMENTS, TONES, tonesOf } from "./tonetable";

export const PLAN_NUMBER = sheetFunction({
	name: "PLAN_NUMBER",
	group: "Tones",
	summary:
		"A four-digit number that changes when tones, shares, doses, pigments or the mix change.",
	limits:
		"Two different plans share a number once in 9000: it is for noticing a change after weights were typed.",
	params: {
		tones: TONES,
		pigments: PIGMENTS,
		parts: list(
			number("Parts of the mix's ingredients, e.g. B2:B9", {
				min: 0,
				optional: true,
			}),
			{ alone: true },
		),
		binder_share: share("Binder in the mix, e.g. 55%", { optional: true }),
	},
	answer: { text: "the plan's number" },
	example: {
		shown: ["A2:C2", "C1"],
		values: [[["Sand", 1, 0]], ["Umber"]],
		answer: 9919,
		working:
			'FNV-1a of [[["sand","1.00000000","0.00000000"]],["umber"]] by another program (Python, integer arithmetic): 3717287919; 1000 + remainder by 9000',
	},
	source:
		"FNV-1a hash, 32 bit (Fowler, Noll and Vo), of the tones with their shares of the whole",
	compute: ({ tones, pigments, parts, binder_share }) => {
		if (!tones.some((tone) => tone.share > 0))
			throw new InputError("tones must have a share above 0, got only 0");
		return planNumber(tonesOf(tones, pigments), pigments, {
			parts: parts.flatMap((part) => part ?? []),
			binderShare: binder_share,
		});
	},
});
