import { coatingM3, voidFillM3 } from "../calc/finish";
import { area, coverage, length, number, share, units } from "./arguments";
import { sheetFunction } from "./declare";

const group = "Finish";

const waste = (help: string) => share(help, { blank: 0 });

export const VOID_FILL = sheetFunction({
	name: "VOID_FILL",
	group,
	summary: "Paste that fills the voids of a face and skims it.",
	params: {
		area: area("Finish area, e.g. 2"),
		void_share: share("Share of the face that is voids, e.g. 5%"),
		depth: length("Mean depth of the voids, e.g. 4"),
		skim: length("Thickness of the skim over the whole face, e.g. 1", {
			min: 0,
			blank: 0,
		}),
		waste: waste("What is wiped off and left over, e.g. 30%"),
		units: units(),
	},
	answer: { text: "the paste", unit: "volume" },
	example: {
		shown: ["2", "5%", "4", "1", "50%"],
		values: [2, 0.05, 4, 1, 0.5],
		answer: 3.6,
		working: "2 m² × (0.05 × 4 mm + 1 mm) × 1.5 = 0.0036 m³",
	},
	source: "Volume = area × thickness",
	compute: ({ area, void_share, depth, skim, waste }) =>
		voidFillM3({
			areaM2: area,
			voidShare: void_share,
			depthM: depth,
			skimM: skim,
			waste,
		}),
});

export const COATING_AMOUNT = sheetFunction({
	name: "COATING_AMOUNT",
	group,
	summary: "Sealer for all coats of a finish area.",
	limits:
		"The first coat on an open surface takes more: use the coverage your own samples gave.",
	params: {
		area: area("Finish area, e.g. 6"),
		coverage: coverage("What one coat covers, as its maker states, e.g. 10"),
		coats: number("How many coats, e.g. 2", { min: 1, whole: true, blank: 1 }),
		waste: waste("What stays in tools and pots, e.g. 10%"),
		units: units(),
	},
	answer: { text: "the sealer", unit: "coating" },
	example: {
		shown: ["6", "10", "2", "10%"],
		values: [6, 10, 2, 0.1],
		answer: 1.32,
		working: "6 m² / 10 m²/L × 2 × 1.1 = 1.32 L",
	},
	source: "Area over coverage",
	compute: ({ area, coverage, coats, waste }) =>
		coatingM3({ areaM2: area, coverageM2PerM3: coverage, coats, waste }),
});
