/** Packs, prices and the shelf that a new studio begins with; all invented. */
import type { StockRow } from "../../src/job/fields/stock";
import type { UnitSystem } from "../../src/job/reading/units";
import type { Packs } from "./recipes";

export const PACKS: Readonly<Record<UnitSystem, Packs>> = {
	metric: {
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
	},
	us: {
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
	},
};

type OnShelf = readonly [
	material: string,
	onHand: number,
	unit: string,
	pack: number,
	packPrice: number,
];

const SHELF: Readonly<Record<UnitSystem, readonly OnShelf[]>> = {
	metric: [
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
		["Screws", 400, "screw", 200, 9],
		["Knockouts", 0, "piece", 1, 12],
		["Cover sheet", 1, "roll", 1, 24],
	],
	us: [
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
		["Screws", 400, "screw", 200, 10],
		["Knockouts", 0, "piece", 1, 14],
		["Cover sheet", 1, "roll", 1, 27],
	],
};

export const stockOf = (units: UnitSystem): StockRow[] =>
	SHELF[units].map(([material, onHand, unit, pack, packPrice]) => ({
		material,
		onHand,
		unit,
		pack,
		packPrice,
		remark: "invented for the demo",
	}));
