import { rescaleFactor } from "../calc/batch";
import { mixerLoads } from "../calc/loads";
import { list, mass, number, table, text, units } from "./arguments";
import { sheetFunction } from "./declare";

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
