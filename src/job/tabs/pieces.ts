/** What the Job tab answers of pieces and loads. */
import type { LoadRow } from "../../calc/loads";
import { sum } from "../../calc/sum";
import { WHENS, type When } from "../answers/cure/ages";
import { from, isKnown, type Known } from "../answers/known";
import { overPieces } from "../answers/loads";
import type { MoldWords } from "../answers/moldwords";
import type { PieceAnswer } from "../answers/pieces";
import { filledPlaces, pieceRows } from "../cells/jobcells";
import {
	besideTyped,
	measured,
	type Shown,
	type ShownOf,
	type TabAnswer,
	type TabInput,
	valuesOf,
	wrapped,
} from "./tab";

const NEEDS = ["head", "pieces", "tones", "mixes"] as const;
/** The days and the log say how old a piece is when it is carried. */
const PIECE_NEEDS = [...NEEDS, "cure"] as const;

const size =
	(key: "faceM2" | "edgeM" | "volumeM3" | "finishM2" | "volumeAllM3") =>
	({ sizes }: PieceAnswer) =>
		from(sizes, (known) => known[key]);

const inMold = (label: string, key: keyof MoldWords) => ({
	...wrapped(label, "MOLD_PLAN"),
	of: ({ mold }: PieceAnswer) => from(mold, (words) => words[key]),
});

const WORDS: Record<When, string> = {
	demold: "demolding",
	delivery: "delivery",
};

const stress = (label: string, by?: string): Shown => ({
	label: `${label}, {stress}`,
	format: "number",
	unit: "stress",
	...(by && { by }),
});

const PIECE_COLUMNS: readonly ShownOf<PieceAnswer>[] = [
	{ ...measured("Weight of one", "mass"), of: ({ massKg }) => massKg },
	{
		label: "People, or equipment",
		format: "text",
		by: "PEOPLE_TO_LIFT",
		of: ({ lift }) => lift.people,
	},
	{
		...wrapped("How to carry it (wet or green: more care still)"),
		of: ({ carry }) => carry(),
	},
	{
		...wrapped("As it leaves the mold"),
		of: ({ handling }) => handling().moments[0]?.said,
	},
	{
		...wrapped("At delivery"),
		of: ({ handling }) => handling().moments[1]?.said,
	},
	{ ...measured("Face", "area", "PIECE_TAKEOFF"), of: size("faceM2") },
	{ ...measured("Edge", "length", "PIECE_TAKEOFF"), of: size("edgeM") },
	{ ...measured("Volume", "volume", "PIECE_TAKEOFF"), of: size("volumeM3") },
	{ ...measured("To finish", "area", "PIECE_TAKEOFF"), of: size("finishM2") },
	{
		...measured("Volume for all", "volume", "PIECE_TAKEOFF"),
		of: size("volumeAllM3"),
	},
	{
		...measured("Mix for all", "mass", "BATCH_MASS"),
		of: ({ batchKg }) => batchKg,
	},
	{
		...measured("Longest side", "length", "PIECE_SIZE"),
		of: ({ longestSideM }) => longestSideM,
	},
	{
		...measured("Drop edge, seen height", "length", "PIECE_SIZE"),
		of: ({ visibleDropM }) => visibleDropM,
	},
	{
		...wrapped("Weakest section, from the side"),
		of: ({ handling }) => from(handling().section, ({ at }) => at),
	},
	{
		...measured("Concrete left there", "length", "CARRY_STRESS"),
		of: ({ handling }) => from(handling().section, ({ netM }) => netM),
	},
	{
		...stress("Carried flat", "CARRY_STRESS"),
		note: "By the ends of A or of B, whichever is worse; a cutout without a place where it weakens it most.",
		of: ({ handling }) => handling().flatPa,
	},
	{
		...stress("Carried on edge", "CARRY_STRESS"),
		of: ({ handling }) => handling().edgePa,
	},
	...WHENS.flatMap((when, at): ShownOf<PieceAnswer>[] => [
		{
			...stress(`Strength at ${WORDS[when]}`),
			of: ({ handling }) => handling().moments[at]?.strengthPa,
		},
		{
			label: `Flat takes of it, at ${WORDS[when]}`,
			note: "With the factor for handling on the Studio tab.",
			format: "percent",
			of: ({ handling }) => handling().moments[at]?.flatUse,
		},
		{
			label: `On edge takes, at ${WORDS[when]}`,
			format: "percent",
			of: ({ handling }) => handling().moments[at]?.edgeUse,
		},
	]),
	{
		...measured("Turned with its mold", "mass"),
		of: ({ turnedKg }) => turnedKg,
	},
	inMold("In the mold, seen from above", "hand"),
	inMold("Notch in the mold, {length}", "notch"),
	inMold("Sides in the mold, {length}", "sides"),
	inMold("Drop edge in the mold", "drop"),
	inMold("Cutouts in the mold", "cutouts"),
];

export const JOB_PIECES: TabAnswer = {
	name: "JOB_PIECES",
	summary:
		"Of each piece: its weight, who carries it and how, its sizes, and which hand its mold is.",
	needs: PIECE_NEEDS,
	shape: "table",
	shown: PIECE_COLUMNS,
	values: ({ pieces, regions, units }) =>
		besideTyped(
			filledPlaces(pieceRows(regions.pieces ?? [], units)),
			pieces.map((piece) => valuesOf(PIECE_COLUMNS, piece)),
		),
};

/** A sum over the pieces, each as often as it is cast. */
const summed =
	(key: "faceM2" | "finishM2" | "volumeM3") =>
	({ given, pieces }: TabInput): Known<number> =>
		from(
			overPieces(given, pieces, ({ sizes, quantity }) =>
				from(sizes, (size) =>
					isKnown(quantity) ? size[key] * quantity.is : 0,
				),
			),
			sum,
		);

const TOTALS: readonly ShownOf<TabInput>[] = [
	{ ...measured("Mix to make", "mass"), of: ({ loads }) => loads.batchKg },
	{ label: "Mixer loads", format: "whole", of: ({ loads }) => loads.count },
	{
		...measured("Heaviest piece", "mass"),
		of: ({ given, pieces }) =>
			from(
				overPieces(given, pieces, ({ massKg }) => massKg),
				(masses) => Math.max(...masses),
			),
	},
	{ ...measured("Face of all", "area"), of: summed("faceM2") },
	{ ...measured("To fill, polish and seal", "area"), of: summed("finishM2") },
	{ ...measured("Volume to cast", "volume"), of: summed("volumeM3") },
];

export const JOB_TOTALS: TabAnswer = {
	name: "JOB_TOTALS",
	summary: "What all pieces of a job come to.",
	needs: NEEDS,
	shape: "list",
	shown: TOTALS,
	values: (input) => [valuesOf(TOTALS, input)],
};

const LOAD_COLUMNS: readonly ShownOf<LoadRow>[] = [
	{
		label: "Load",
		format: "whole",
		by: "MIXER_LOADS",
		of: ({ load }) => load,
	},
	{
		label: "Casting",
		format: "text",
		by: "MIXER_LOADS",
		of: ({ name }) => name,
	},
	{ ...measured("Mix", "mass", "MIXER_LOADS"), of: ({ massKg }) => massKg },
	{
		label: "Load is full",
		format: "percent",
		by: "MIXER_LOADS",
		of: ({ capacityShare }) => capacityShare,
	},
];

export const JOB_LOADS: TabAnswer = {
	name: "JOB_LOADS",
	summary: "Which castings share a load of the mixer.",
	needs: NEEDS,
	shape: "table",
	shown: LOAD_COLUMNS,
	values: ({ loads }) =>
		isKnown(loads.castings)
			? loads.castings.is.map((casting) => valuesOf(LOAD_COLUMNS, casting))
			: [[loads.castings]],
};
