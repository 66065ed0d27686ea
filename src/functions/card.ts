import { castings, planNumber } from "../calc/card";
import { InputError } from "../calc/errors";
import { list, number, share, text } from "./arguments";
import { sheetFunction } from "./declare";
import { PIGMENTS, TONES, tonesOf } from "./tonetable";

/** More castings than this in one job are a slip of the finger. */
const MOST_CASTINGS = 2000;

export const CASTINGS = sheetFunction({
	name: "CASTINGS",
	group: "Mix",
	summary:
		"Pieces with a quantity as single castings, one row each, for MIXER_LOADS.",
	limits: `At most ${MOST_CASTINGS} castings together.`,
	params: {
		names: list(text("Names of the pieces, e.g. A2:A21")),
		quantities: list(
			number("How many of each, e.g. B2:B21", { min: 0, whole: true }),
		),
		masses: list(
			number("Mix for one in any unit, waste included, e.g. C2:C21", {
				above: 0,
			}),
		),
	},
	answer: {
		shape: "table",
		text: "one row per casting",
		columns: [{ text: "name" }, { text: "mass" }],
	},
	example: {
		shown: ["A2:A3", "B2:B3", "C2:C3"],
		values: [
			[["Shelf"], ["Bench"]],
			[[2], [1]],
			[[18], [40]],
		],
		answer: ["Shelf", 18, "Shelf", 18, "Bench", 40],
		working: "two shelves of 18 kg and one bench of 40 kg",
	},
	source: "Counting",
	compute: ({ names, quantities, masses }) => {
		const count = quantities.reduce((sum, quantity) => sum + quantity, 0);
		if (count > MOST_CASTINGS)
			throw new InputError(
				`quantities must be ${MOST_CASTINGS} castings or less together, got ${count}`,
			);
		if (count === 0) return [["", ""]];
		return castings(
			names.map((name, i) => ({
				name,
				quantity: quantities[i] ?? 0,
				massKg: masses[i] ?? 0,
			})),
		).map(({ name, massKg }) => [name, massKg]);
	},
});

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
