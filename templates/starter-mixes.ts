type Rows = readonly (readonly (string | number)[])[];

// Kilograms a cubic meter of the mix that Lepech and Li (ACI Materials Journal 105(4), 2008) call M45; from memory.
// Specific gravities: cement 3.15, fly ash 2.14, sand 2.62, reducer 1.26 (Materials 2020, 13, 1505, Table 2); fiber 1.30.
const PUBLISHED_M45: Rows = [
	["ECC M45, published", "Portland cement", 583, 3.15, 1, 1, 0],
	["ECC M45, published", "Fly ash", 700, 2.14, 1, 0, 0],
	["ECC M45, published", "Fine silica sand", 467, 2.62, 0, 0, 0],
	["ECC M45, published", "Water", 298, 1, 0, 0, 1],
	["ECC M45, published", "Water reducer", 19, 1.26, 0, 0, 0.6],
	["ECC M45, published", "PVA fiber, 8 mm", 26, 1.3, 0, 0, 0],
];

// Invented for the demo: a white mix with a glassy pozzolan and two fiber lengths.
const INVENTED_WHITE: Rows = [
	["White casting mix, invented", "White cement", 46, 3.1, 1, 1, 0],
	["White casting mix, invented", "Pozzolan", 8, 2.4, 1, 0, 0],
	["White casting mix, invented", "Fine sand", 46, 2.65, 0, 0, 0],
	["White casting mix, invented", "Water", 15.5, 1, 0, 0, 1],
	["White casting mix, invented", "Water reducer", 0.9, 1.07, 0, 0, 0.7],
	["White casting mix, invented", "Fiber, long", 1.4, 1.3, 0, 0, 0],
	["White casting mix, invented", "Fiber, short", 0.7, 1.3, 0, 0, 0],
];

// Invented: a bagged dry blend states its binder share on the data sheet.
const INVENTED_BAGGED: Rows = [
	["Bagged blend, invented", "Dry blend", 100, 2.85, 0.55, 0.45, 0],
	["Bagged blend, invented", "Water", 14, 1, 0, 0, 1],
	["Bagged blend, invented", "Water reducer", 0.5, 1.07, 0, 0, 0.7],
	["Bagged blend, invented", "Fiber", 1.8, 1.3, 0, 0, 0],
];

/** What counts as water when the mix temperature is worked out. */
const WATERY = ["Water", "Water reducer"];

/** The mixes with pack and price of the ingredients that come in packs; prices are invented. */
export const packed = (
	packs: Record<string, readonly [pack: number, price: number]>,
) =>
	[...PUBLISHED_M45, ...INVENTED_WHITE, ...INVENTED_BAGGED].map((row) => [
		...row,
		WATERY.includes(String(row[1])) ? "water" : "solid",
		"",
		"",
		...(packs[String(row[1])] ?? ["", ""]),
	]);
