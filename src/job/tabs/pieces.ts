/** What the Job tab answers of pieces, knockouts and loads. */
import { sum } from "../../calc/sum";
import { from, isKnown, type Known } from "../answers/known";
import { overPieces } from "../answers/loads";
import { filledPlaces, knockoutRows, pieceRows } from "../cells/jobcells";
import { besideTyped, type TabAnswer, type TabInput } from "./tab";

const NEEDS = ["head", "pieces", "tones", "mixes"] as const;

export const JOB_PIECES: TabAnswer = {
	name: "JOB_PIECES",
	summary:
		"Of each piece: its weight, who carries it and how, its sizes, and which hand its mold is.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Weight of one, {mass}", format: "mass", unit: "mass" },
		{ label: "People, or equipment", format: "text", by: "PEOPLE_TO_LIFT" },
		{
			label: "How to carry it (wet or green: more care still)",
			format: "text",
			wrap: true,
		},
		{
			label: "Face, {area}",
			format: "area",
			unit: "area",
			by: "PIECE_TAKEOFF",
		},
		{
			label: "Edge, {length}",
			format: "length",
			unit: "length",
			by: "PIECE_TAKEOFF",
		},
		{
			label: "Volume, {volume}",
			format: "volume",
			unit: "volume",
			by: "PIECE_TAKEOFF",
		},
		{
			label: "To finish, {area}",
			format: "area",
			unit: "area",
			by: "PIECE_TAKEOFF",
		},
		{
			label: "Volume for all, {volume}",
			format: "volume",
			unit: "volume",
			by: "PIECE_TAKEOFF",
		},
		{
			label: "Mix for all, {mass}",
			format: "mass",
			unit: "mass",
			by: "BATCH_MASS",
		},
		{
			label: "Longest side, {length}",
			format: "length",
			unit: "length",
			by: "PIECE_SIZE",
		},
		{
			label: "Drop as seen, {length}",
			format: "length",
			unit: "length",
			by: "PIECE_SIZE",
		},
		{
			label: "Carried flat, {stress}",
			format: "number",
			unit: "stress",
			by: "SELF_WEIGHT_STRESS",
		},
		{ label: "Share of its strength", format: "percent" },
		{
			label: "In the mold, seen from above",
			format: "text",
			by: "MOLD_PLAN",
			wrap: true,
		},
		{
			label: "Notch in the mold, {length}",
			format: "text",
			by: "MOLD_PLAN",
			wrap: true,
		},
		{
			label: "Sides in the mold, {length}",
			format: "text",
			by: "MOLD_PLAN",
			wrap: true,
		},
		{
			label: "Drop edge in the mold",
			format: "text",
			by: "MOLD_PLAN",
			wrap: true,
		},
		{
			label: "Cutouts in the mold",
			format: "text",
			by: "MOLD_PLAN",
			wrap: true,
		},
	],
	values: ({ pieces, regions, units }) =>
		besideTyped(
			filledPlaces(pieceRows(regions.pieces ?? [], units)),
			pieces.map((piece) => {
				const size = (key: "faceM2" | "edgeM" | "volumeM3" | "finishM2") =>
					from(piece.sizes, (sizes) => sizes[key]);
				return [
					piece.massKg,
					piece.lift.people,
					piece.carry,
					size("faceM2"),
					size("edgeM"),
					size("volumeM3"),
					size("finishM2"),
					from(piece.sizes, ({ volumeAllM3 }) => volumeAllM3),
					piece.batchKg,
					piece.longestSideM,
					piece.visibleDropM,
					piece.stressPa,
					piece.stressShare,
					from(piece.mold, ({ hand }) => hand),
					from(piece.mold, ({ notch }) => notch),
					from(piece.mold, ({ sides }) => sides),
					from(piece.mold, ({ drop }) => drop),
					from(piece.mold, ({ cutouts }) => cutouts),
				];
			}),
		),
};

/** A sum over the pieces, each as often as it is cast. */
const summed = (
	{ given, pieces }: TabInput,
	key: "faceM2" | "finishM2" | "volumeM3",
): Known<number> =>
	from(
		overPieces(given, pieces, ({ sizes, quantity }) =>
			from(sizes, (size) => (isKnown(quantity) ? size[key] * quantity.is : 0)),
		),
		sum,
	);

export const JOB_TOTALS: TabAnswer = {
	name: "JOB_TOTALS",
	summary: "What all pieces of a job come to.",
	needs: NEEDS,
	shape: "list",
	shown: [
		{ label: "Mix to make, {mass}", format: "mass", unit: "mass" },
		{ label: "Mixer loads", format: "whole" },
		{ label: "Heaviest piece, {mass}", format: "mass", unit: "mass" },
		{ label: "Face of all, {area}", format: "area", unit: "area" },
		{
			label: "To fill, polish and seal, {area}",
			format: "area",
			unit: "area",
		},
		{ label: "Volume to cast, {volume}", format: "volume", unit: "volume" },
	],
	values: (input) => [
		[
			input.loads.batchKg,
			input.loads.count,
			from(
				overPieces(input.given, input.pieces, ({ massKg }) => massKg),
				(masses) => Math.max(...masses),
			),
			summed(input, "faceM2"),
			summed(input, "finishM2"),
			summed(input, "volumeM3"),
		],
	],
};

export const JOB_KNOCKOUTS: TabAnswer = {
	name: "JOB_KNOCKOUTS",
	summary: "What keeps each knockout from floating in fluid mix.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Volume, {volume}", format: "volume", unit: "volume" },
		{ label: "Upward for all, {mass}", format: "mass", unit: "mass" },
		{
			label: "Hold each with, {mass}",
			format: "mass",
			unit: "mass",
			by: "UPLIFT",
		},
		{ label: "In the mix", format: "text" },
	],
	values: ({ knockouts, regions, units }) =>
		besideTyped(
			filledPlaces(knockoutRows(regions.pieces ?? [], units)),
			knockouts.map(({ volumeM3, upliftAllKg, upliftKg, verdict }) => [
				volumeM3,
				upliftAllKg,
				upliftKg,
				verdict,
			]),
		),
};

export const JOB_LOADS: TabAnswer = {
	name: "JOB_LOADS",
	summary: "Which castings share a load of the mixer.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Load", format: "whole", by: "MIXER_LOADS" },
		{ label: "Casting", format: "text", by: "MIXER_LOADS" },
		{ label: "Mix, {mass}", format: "mass", unit: "mass", by: "MIXER_LOADS" },
		{ label: "Load is full", format: "percent", by: "MIXER_LOADS" },
	],
	values: ({ loads }) =>
		isKnown(loads.castings)
			? loads.castings.is.map(({ load, name, massKg, capacityShare }) => [
					load,
					name,
					massKg,
					capacityShare,
				])
			: [[loads.castings]],
};
