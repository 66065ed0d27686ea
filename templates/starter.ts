import type { Slots } from "../src/template/plan";
import { packed } from "./starter-mixes";

type Rows = readonly (readonly (string | number)[])[];

// Invented pigments. A maker's data sheet gives the real maximum; 6% is a usual one for iron oxides (trade pages).
const PIGMENTS: Rows = [
	["Umber", "powder", "", "binder", 0.06, 0.5, 1000, 24],
	["Black", "powder", "", "binder", 0.06, 0.5, 1000, 21],
	["Ocher", "powder", "", "binder", 0.06, 0.5, 1000, 23],
	["White", "powder", "", "binder", 0.1, 0.5, 1000, 19],
];

const DEMO_MIX = "White casting mix, invented";
const SWATCH_PIGMENTS = ["Umber", "Black", "Ocher", "White", "", "", "", ""];

// Invented: bare cast samples at 0, 1, 2 and 4% of binder, from pale to deep as iron oxides do in a white mix.
const SWATCHES: Rows = (
	[
		[[0, "", "", ""], "#e3dfd5"],
		[[0.01, "", "", ""], "#b8a591"],
		[[0.02, "", "", ""], "#9f8a74"],
		[[0.04, "", "", ""], "#84705c"],
		[["", 0.01, "", ""], "#a9a7a2"],
		[["", 0.02, "", ""], "#8b8986"],
		[["", 0.04, "", ""], "#6d6c6a"],
		[["", "", 0.01, ""], "#d9c193"],
		[["", "", 0.02, ""], "#d0b077"],
		[["", "", 0.04, ""], "#c59c58"],
		[["", "", "", 0.02], "#e9e6de"],
		[["", "", "", 0.04], "#eeece6"],
	] as const
).map(([doses, color]) => [
	DEMO_MIX,
	"cast",
	"bare",
	"dry",
	...doses,
	"",
	"",
	"",
	"",
	color,
	28,
	"",
	"",
	"invented for the demo",
]);

type StockRow = readonly [
	material: string,
	onHand: number,
	unit: string,
	pack: number,
	price: number,
];

/** Rows of the shelf, with the mark that they are invented. */
const shelf = (rows: readonly StockRow[]): Rows =>
	rows.map(([material, onHand, unit, pack, price]) => [
		material,
		onHand,
		unit,
		"",
		"",
		pack,
		price,
		"invented for the demo",
	]);

/** What does not depend on the units. */
const ANY_UNITS = {
	overhead: 0.18,
	remake: 0.05,
	margin: 0.35,
	card_fee: 0.02,
	deposit: 0.5,
	quote_days: 30,
	gram_division: 0.1,
	reserve: 0.03,
	waste: 0.08,
	air: 0.02,
	crew: 3,
	working_minutes: 45,
	step_minutes: 1.5,
	demold_hours: 20,
	fill_days: 3,
	polish_days: 4,
	recoat_hours: 4,
	seal_days: 10,
	deliver_days: 4,
	cement: "normal",
	weekend: "Saturday and Sunday",
	bench_hours: 60,
	void_share: 0.06,
	sealer_coats: 2,
	pigments: PIGMENTS,
	swatches: SWATCHES,
	swatch_pigments: [SWATCH_PIGMENTS],
};

/** What the studio tabs hold when they are made; every number is a start to be replaced by the studio's own. */
export const starter: Record<"metric" | "us", Slots> = {
	metric: {
		...ANY_UNITS,
		units: "metric",
		currency: "€",
		labor_rate: 42,
		tax: 0.2,
		mixer_capacity: 150,
		least_blend: 15,
		mix_division: 0.02,
		sticks: 0.3,
		one_person: 23,
		equipment: 250,
		flexural: 5,
		warmest_mix: 20,
		working_temp: 20,
		void_depth: 1.5,
		skim: 0.2,
		sealer_coverage: 12,
		sealer_price: 48,
		mixes: packed({
			"Portland cement": [25, 9],
			"White cement": [25, 16],
			"Fly ash": [20, 7],
			Pozzolan: [20, 22],
			"Fine silica sand": [25, 6],
			"Fine sand": [25, 5],
			"Dry blend": [25, 31],
			"PVA fiber, 8 mm": [5, 60],
			"Fiber, long": [5, 58],
			"Fiber, short": [5, 55],
			Fiber: [5, 58],
			"Water reducer": [10, 62],
		}),
		stock: shelf([
			["White cement", 75, "kg", 25, 16],
			["Fine sand", 50, "kg", 25, 5],
			["Pozzolan", 8, "kg", 20, 22],
			["Fiber, long", 2, "kg", 5, 58],
			["Umber", 400, "g", 1000, 24],
			["Black", 900, "g", 1000, 21],
			["Sealer", 0, "L", 1, 48],
			["Mold sheet", 2, "sheet", 1, 38],
			["Strips", 10, "strip", 1, 3],
			["Sealant", 3, "tube", 1, 7],
			["Release", 1, "can", 1, 19],
			["Knockouts", 0, "piece", 1, 12],
			["Cover sheet", 1, "roll", 1, 24],
		]),
	},
	us: {
		...ANY_UNITS,
		units: "us",
		currency: "$",
		labor_rate: 45,
		tax: 0.0825,
		mixer_capacity: 330,
		least_blend: 33,
		mix_division: 0.05,
		sticks: 0.6,
		one_person: 51,
		equipment: 550,
		flexural: 700,
		warmest_mix: 68,
		working_temp: 68,
		void_depth: 0.06,
		skim: 0.008,
		sealer_coverage: 490,
		sealer_price: 190,
		mixes: packed({
			"Portland cement": [94, 16],
			"White cement": [94, 34],
			"Fly ash": [50, 14],
			Pozzolan: [50, 45],
			"Fine silica sand": [50, 9],
			"Fine sand": [50, 8],
			"Dry blend": [50, 32],
			"PVA fiber, 8 mm": [10, 120],
			"Fiber, long": [10, 115],
			"Fiber, short": [10, 110],
			Fiber: [10, 115],
			"Water reducer": [40, 220],
		}),
		stock: shelf([
			["White cement", 188, "lb", 94, 34],
			["Fine sand", 100, "lb", 50, 8],
			["Pozzolan", 20, "lb", 50, 45],
			["Fiber, long", 4, "lb", 10, 115],
			["Umber", 400, "g", 1000, 24],
			["Black", 900, "g", 1000, 21],
			["Sealer", 0, "US gal", 1, 190],
			["Mold sheet", 2, "sheet", 1, 42],
			["Strips", 10, "strip", 1, 3],
			["Sealant", 3, "tube", 1, 8],
			["Release", 1, "can", 1, 22],
			["Knockouts", 0, "piece", 1, 14],
			["Cover sheet", 1, "roll", 1, 27],
		]),
	},
};
