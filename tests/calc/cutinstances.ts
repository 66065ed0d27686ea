/**
 * Cutting instances that others published, and others whose least number of sheets follows from arithmetic.
 *
 * The items stand as kept in github.com/fontanf/packingsolver (MIT): `locator` is the file under data/rectangle. The optimum was proven
 * outside of this project: a lower bound equals a packing that was checked to be cuttable edge to edge. Where none is proven, none stands.
 */

export interface CutInstance {
	id: string;
	source: string;
	locator: string;
	sheet: readonly [number, number];
	kerf: number;
	/** Length × width of each, such as `8x4 3x7`. */
	items: string;
	/** Fewest sheets where parts keep their direction, and a bound below which none can be. */
	oriented?: { optimum?: number; bound: number };
	/** The same where they may be turned. */
	turned?: { optimum?: number; bound: number };
}

export const CUT_INSTANCES: readonly CutInstance[] = [
	{
		id: "cgcut1",
		source: "Christofides & Whitlock 1977",
		locator: "christofides1977/cgcut1.txt_items.csv, _bins.csv",
		sheet: [15, 10],
		kerf: 0,
		items: "8x4 8x4 3x7 8x2 8x2 8x2 3x4 3x4 3x4 3x4 3x4 3x3 3x3 3x2 3x2 2x1",
		oriented: { optimum: 2, bound: 2 },
		turned: { optimum: 2, bound: 2 },
	},
	{
		id: "gcut2",
		source: "Beasley 1985",
		locator: "beasley1985/gcut2.txt_items.csv, _bins.csv",
		sheet: [250, 250],
		kerf: 0,
		items:
			"120x133 135x186 86x75 103x73 66x85 135x97 91x175 131x176 71x176 153x72 87x148 168x107 118x90 140x109 132x159 152x93 135x68 121x158 68x94 155x76",
		oriented: { optimum: 6, bound: 6 },
		turned: { bound: 5 },
	},
	{
		id: "gcut5",
		source: "Beasley 1985",
		locator: "beasley1985/gcut5.txt_items.csv, _bins.csv",
		sheet: [500, 500],
		kerf: 0,
		items:
			"198x205 179x155 364x236 272x147 352x145 343x245 132x174 164x250 282x356 342x151",
		oriented: { optimum: 3, bound: 3 },
		turned: { optimum: 3, bound: 3 },
	},
	{
		id: "gcut13",
		source: "Beasley 1985",
		locator: "beasley1985/gcut13.txt_items.csv, _bins.csv",
		sheet: [3000, 3000],
		kerf: 0,
		items:
			"365x185 378x200 410x165 425x148 425x296 439x116 464x1006 520x205 520x350 540x530 549x1413 549x1882 553x496 555x755 555x496 555x659 567x473 572x592 572x975 572x1175 572x1575 572x1390 572x1490 572x1590 572x1690 572x1890 610x625 660x490 690x447 949x445 949x478 970x463",
		oriented: { optimum: 2, bound: 2 },
		turned: { optimum: 2, bound: 2 },
	},
	{
		id: "beng1",
		source: "Bengtsson 1982",
		locator:
			"beng1982/BENG1_items.csv, _bins.csv; items turned by 90 degrees so that they fit the sheet",
		sheet: [25, 10],
		kerf: 0,
		items:
			"8x6 11x4 10x3 4x7 12x6 11x6 12x8 3x6 4x3 3x8 9x1 1x3 8x6 11x3 11x1 9x8 9x1 11x5 1x7 7x8",
		oriented: { optimum: 4, bound: 4 },
		turned: { bound: 3 },
	},
	{
		id: "beng3",
		source: "Bengtsson 1982",
		locator:
			"beng1982/BENG3_items.csv, _bins.csv; items turned by 90 degrees so that they fit the sheet",
		sheet: [25, 10],
		kerf: 0,
		items:
			"8x6 11x4 10x3 4x7 12x6 11x6 12x8 3x6 4x3 3x8 9x1 1x3 8x6 11x3 11x1 9x8 9x1 11x5 1x7 7x8 10x3 2x8 8x3 7x3 8x4 2x7 12x7 1x2 3x8 1x1 12x7 3x4 8x4 11x5 5x6 8x8 4x1 10x3 12x7 12x3 10x7 5x4 3x2 7x7 11x8 10x5 4x7 5x4 2x3 3x3 8x3 11x4 8x1 8x7 6x5 8x5 4x8 8x8 7x2 6x2",
		oriented: { optimum: 9, bound: 9 },
		turned: { optimum: 9, bound: 9 },
	},
	{
		id: "beng6",
		source: "Bengtsson 1982",
		locator:
			"beng1982/BENG6_items.csv, _bins.csv; items turned by 90 degrees so that they fit the sheet",
		sheet: [40, 25],
		kerf: 0,
		items:
			"6x8 4x11 3x10 7x4 6x12 6x11 8x12 6x3 3x4 8x3 1x9 3x1 6x8 3x11 1x11 8x9 1x9 5x11 7x1 8x7 3x10 8x2 3x8 3x7 4x8 7x2 7x12 2x1 8x3 1x1 7x12 4x3 4x8 5x11 6x5 8x8 1x4 3x10 7x12 3x12",
		oriented: { optimum: 2, bound: 2 },
		turned: { optimum: 2, bound: 2 },
	},
	{
		id: "class-01-20-1",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_1_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"5x9 4x2 10x6 5x7 6x3 10x7 1x5 3x5 6x9 2x4 6x7 7x2 8x3 4x10 4x5 10x3 8x3 7x8 8x3 8x7",
		oriented: { optimum: 8, bound: 8 },
		turned: { optimum: 7, bound: 7 },
	},
	{
		id: "class-01-20-2",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_2_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"2x2 6x8 10x2 1x3 8x4 3x10 1x9 1x5 6x3 1x1 4x2 9x2 1x9 9x5 4x7 2x2 3x4 9x7 4x1 9x8",
		oriented: { optimum: 5, bound: 5 },
		turned: { optimum: 5, bound: 5 },
	},
	{
		id: "class-01-20-5",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_5_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"10x4 2x10 2x4 10x10 7x2 9x10 5x6 7x5 1x7 5x3 3x9 9x4 2x10 4x3 2x2 4x9 2x8 1x1 1x7 4x4",
		oriented: { optimum: 6, bound: 6 },
		turned: { optimum: 6, bound: 6 },
	},
	{
		id: "class-01-20-7",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_7_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"10x5 10x1 3x7 4x3 2x9 10x2 3x1 10x8 3x8 7x1 3x7 1x4 8x10 2x7 5x1 4x1 6x8 5x9 5x2 6x9",
		oriented: { optimum: 6, bound: 6 },
		turned: { optimum: 6, bound: 6 },
	},
	{
		id: "class-01-20-9",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_9_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"6x4 3x4 10x5 6x8 4x10 8x9 7x8 5x2 6x9 9x3 7x9 5x5 1x4 9x2 4x7 4x1 2x10 4x3 8x3 6x4",
		oriented: { optimum: 8, bound: 8 },
		turned: { optimum: 7, bound: 7 },
	},
	{
		id: "class-01-20-10",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_01.2bp_20_10_items.csv, _bins.csv",
		sheet: [10, 10],
		kerf: 0,
		items:
			"8x10 6x5 3x2 10x10 8x8 2x2 2x6 10x6 2x9 5x8 3x9 2x1 9x5 7x8 2x8 3x8 2x3 4x2 8x6 6x3",
		oriented: { optimum: 8, bound: 8 },
		turned: { bound: 7 },
	},
	{
		id: "class-03-20-1",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_03.2bp_20_1_items.csv, _bins.csv",
		sheet: [40, 40],
		kerf: 0,
		items:
			"18x30 13x5 33x19 17x22 18x9 34x24 1x16 9x15 19x31 4x11 19x23 24x4 27x9 13x33 13x15 34x9 27x10 22x28 26x11 25x25",
		oriented: { bound: 5 },
		turned: { optimum: 5, bound: 5 },
	},
	{
		id: "class-03-20-4",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_03.2bp_20_4_items.csv, _bins.csv",
		sheet: [40, 40],
		kerf: 0,
		items:
			"14x25 2x8 19x22 26x5 32x12 20x4 22x23 11x19 6x23 3x8 10x28 11x9 3x30 28x4 1x33 23x19 31x17 11x23 27x10 19x32",
		oriented: { optimum: 4, bound: 4 },
		turned: { optimum: 4, bound: 4 },
	},
	{
		id: "class-05-20-1",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_05.2bp_20_1_items.csv, _bins.csv",
		sheet: [100, 100],
		kerf: 0,
		items:
			"50x85 35x14 94x54 47x62 52x25 96x67 1x43 24x42 53x86 11x31 52x65 66x11 76x25 36x94 36x42 97x24 76x29 61x79 74x29 71x69",
		oriented: { bound: 7 },
		turned: { optimum: 7, bound: 7 },
	},
	{
		id: "class-05-20-4",
		source: "Berkey & Wang 1987",
		locator: "berkey1987/Class_05.2bp_20_4_items.csv, _bins.csv",
		sheet: [100, 100],
		kerf: 0,
		items:
			"40x70 4x21 52x62 73x15 89x35 56x11 62x65 30x54 16x65 7x22 27x79 31x26 8x84 80x10 3x92 65x53 89x47 30x64 78x27 53x90",
		oriented: { optimum: 5, bound: 5 },
		turned: { bound: 4 },
	},
	{
		id: "kerf-four-lie",
		source: "packingsolver, tests of its guillotine solver",
		locator: "rectangleguillotine/tests/knapsack_2hvr_cut_thickness",
		sheet: [34, 29],
		kerf: 1,
		items: "9x24 9x24 9x24 9x24",
		turned: { optimum: 1, bound: 0 },
	},
	{
		id: "kerf-seven-fit",
		source: "packingsolver, tests of its guillotine solver",
		locator: "rectangleguillotine/tests/knapsack_1rvr_cut_thickness",
		sheet: [39, 29],
		kerf: 1,
		items: "4x19 4x9 4x27 9x24 9x4 19x9 19x19",
		turned: { optimum: 1, bound: 0 },
	},
	{
		id: "kerf-four-too-wide",
		source: "closed form",
		locator: "(w+k)(h+k) against (W+k)(H+k)",
		sheet: [34, 29],
		kerf: 2,
		items: "9x24 9x24 9x24 9x24",
		turned: { optimum: 2, bound: 0 },
	},
	{
		id: "kerf-exact",
		source: "closed form",
		locator: "w1 + k + w2 = W",
		sheet: [100, 100],
		kerf: 3,
		items: "48.5x100 48.5x100",
		oriented: { optimum: 1, bound: 0 },
	},
	{
		id: "kerf-exact-over",
		source: "closed form",
		locator: "w1 + k + w2 > W",
		sheet: [100, 100],
		kerf: 3,
		items: "48.6x100 48.6x100",
		oriented: { optimum: 2, bound: 0 },
	},
	{
		id: "kerf-no-cut",
		source: "closed form",
		locator:
			"a part as large as the sheet needs no cut; a rest thinner than the blade is dust",
		sheet: [100, 100],
		kerf: 3,
		items: "100x100 98x98",
		oriented: { optimum: 2, bound: 0 },
	},
	{
		id: "kerf-five-boards",
		source: "closed form",
		locator: "5 x 411 + 4 x 3.2 = 2067.8 <= 2070; 5 x 412 + 4 x 3.2 = 2072.8",
		sheet: [2800, 2070],
		kerf: 3.2,
		items: "2800x411 2800x411 2800x411 2800x411 2800x411",
		oriented: { optimum: 1, bound: 0 },
	},
	{
		id: "kerf-five-boards-412",
		source: "closed form",
		locator: "5 x 412 + 4 x 3.2 = 2072.8 > 2070",
		sheet: [2800, 2070],
		kerf: 3.2,
		items: "2800x412 2800x412 2800x412 2800x412 2800x412",
		oriented: { optimum: 2, bound: 0 },
	},
];

/**
 * Rolls of 5600 mm cut to lengths, as length x count. The optimum is 73; filling with the longest first takes 82.
 *
 * @source Encyclopedia article "Cutting stock problem"; its optimum was recomputed by an integer program.
 */
export const ROLLS =
	"1380x22 1520x25 1560x12 1710x14 1820x18 1880x18 1930x20 2000x10 2050x12 2100x14 2140x16 2150x18 2200x20";

/** `8x4 3x7` as pairs of numbers. */
export const pairsOf = (items: string): [number, number][] =>
	items.split(" ").map((item) => {
		const [one = 0, other = 0] = item.split("x").map(Number);
		return [one, other];
	});
