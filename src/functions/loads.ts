import { rescaleFactor } from "../calc/batch";
import { InputError } from "../calc/errors";
import { castings, mixerLoads } from "../calc/loads";
import { sum } from "../calc/sum";
import { list, mass, number, table, text, units } from "./arguments";
import { sheetFunction } from "./declare";

/** More castings than this in one job are a slip of the finger. */
const MOST_CASTINGS = 2000;

export const CASTINGS = sheetFunction({
	name: "CASTINGS",
	group: "Loads",
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
		const count = sum(quantities);
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

export const MIXER_LOADS = sheetFunction({
	name: "MIXER_LOADS",
	group: "Loads",
	summary:
		"Which castings share a mixer load: the fewest loads, as even as can be.",
	limits:
		"Exact to at least 24 castings. Longer lists are exact when many masses are equal; otherwise they never take more loads than filling with the heaviest first, but may not be the fewest. A casting above the capacity gets equal loads of its own.",
	params: {
		castings: table(
			"One row per casting: name and mass, e.g. A2:B9",
			{
				name: text("Name of the casting, e.g. vanity top"),
				mass: mass("Its mass of mix, e.g. 38"),
			},
			{ alone: true },
		),
		capacity: mass("What the mixer takes, e.g. 60"),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per casting and load",
		columns: [
			{ text: "load" },
			{ text: "casting" },
			{ text: "mass", unit: "mass" },
			{ text: "share of capacity that the whole load takes" },
		],
	},
	example: {
		shown: ["A2:B5", "60"],
		values: [
			[
				["bar", 40],
				["vanity", 25],
				["basin", 30],
				["table", 20],
			],
			60,
		],
		answer: [
			[1, "bar", 40, 1],
			[1, "table", 20, 1],
			[2, "vanity", 25, 55 / 60],
			[2, "basin", 30, 55 / 60],
		],
		working:
			"115 kg need two loads of 60 kg; only 40 + 20 leaves 25 + 30 within 60 kg",
	},
	source:
		"Exhaustive search; beyond it MULTIFIT, Coffman, Garey and Johnson, SIAM Journal on Computing 7 (1978)",
	compute: ({ castings, capacity }) =>
		mixerLoads(
			castings.map(({ name, mass }) => ({ name, massKg: mass })),
			capacity,
		).map(({ load, name, massKg, capacityShare }) => [
			load,
			name,
			massKg,
			capacityShare,
		]),
});

export const RESCALE_BATCH = sheetFunction({
	name: "RESCALE_BATCH",
	group: "Loads",
	summary:
		"Masses that keep the proportions after too much of one was weighed.",
	limits:
		"Nothing is ever taken out: with nothing weighed above its plan, the plan stands. A larger batch must still fit in the mixer.",
	params: {
		planned: list(
			number("Planned mass of each ingredient in any unit, e.g. B2:B9", {
				min: 0,
			}),
		),
		weighed: list(
			number("What the scale showed, e.g. C2:C9; blank is still to come", {
				optional: true,
				min: 0,
			}),
			{ decides: true },
		),
	},
	answer: {
		shape: "column",
		text: "mass to weigh of each ingredient",
		beside: "planned",
		turns: true,
	},
	example: {
		shown: ["A2:A4", "B2:B4"],
		values: [
			[[50], [40], [10]],
			[[55], [""], [""]],
		],
		answer: [[55], [44], [11]],
		working: "55 / 50 = 1.1; 40 × 1.1 = 44 and 10 × 1.1 = 11",
	},
	source: "Proportion by mass",
	compute: ({ planned, weighed }, _units, rows) => {
		const factor = rescaleFactor(
			planned.map((plannedKg, i) => ({
				plannedKg,
				weighedKg: weighed[i],
				row: rows[i] ?? i + 1,
			})),
		);
		return planned.map((mass) => mass * factor);
	},
});
