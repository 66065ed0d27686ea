import { polygonAreaM2 } from "../calc/polygon";
import {
	longestSideM,
	type PieceSizes,
	pieceSizes,
	slabVolumeM3,
	visibleDropM,
} from "../calc/takeoff";
import { lengthText } from "../job/reading/cells";
import { coordinate, length, table, units } from "./arguments";
import { sheetFunction } from "./declare";
import { CUTOUT_COLUMNS, PIECES, pieceOf } from "./pieces";

export const SLAB_VOLUME = sheetFunction({
	name: "SLAB_VOLUME",
	group: "Takeoff",
	summary: "Volume of a flat rectangular slab.",
	params: {
		length: length("Length, e.g. 2400 or 8' 1/2\""),
		width: length("Width, e.g. 650"),
		thickness: length("Thickness, e.g. 38"),
		units: units(),
	},
	answer: { text: "the volume", unit: "volume" },
	example: {
		shown: ["2400", "650", "38"],
		values: [2400, 650, 38],
		answer: 59.28,
		working: "2.4 m × 0.65 m × 0.038 m = 0.05928 m³ = 59.28 L",
	},
	source: "Volume of a box",
	compute: ({ length, width, thickness }) =>
		slabVolumeM3({ lengthM: length, widthM: width, thicknessM: thickness }),
});

export const POLYGON_AREA = sheetFunction({
	name: "POLYGON_AREA",
	group: "Takeoff",
	summary: "Area inside a closed outline given by its corners.",
	limits:
		"Straight sides only. Corners in order, in either direction; the first may be repeated as the last. Sides must not cross or touch.",
	params: {
		points: table("One row per corner, e.g. A2:B7: across and up", {
			x: coordinate("Across, from any zero"),
			y: coordinate("Up, from the same zero"),
		}),
		units: units(),
	},
	answer: { text: "the area", unit: "area" },
	example: {
		shown: ["A2:B6"],
		values: [
			[
				[0, 0],
				[2000, 0],
				[2000, 600],
				[600, 600],
				[0, 1800],
			],
		],
		answer: 1.56,
		working:
			"shoelace: ½ [(0·0 − 2·0) + (2·0.6 − 2·0) + (2·0.6 − 0.6·0.6) + (0.6·1.8 − 0·0.6) + 0] = ½ (1.2 + 0.84 + 1.08) = 1.56 m²",
	},
	source: "Shoelace formula",
	compute: ({ points }) =>
		polygonAreaM2(points.map(({ row, x, y }) => ({ row, xM: x, yM: y }))),
});

const columns = (sizes: PieceSizes): number[] => [
	sizes.faceM2,
	sizes.edgeM,
	sizes.volumeM3,
	sizes.finishM2,
	sizes.volumeAllM3,
];

export const PIECE_TAKEOFF = sheetFunction({
	name: "PIECE_TAKEOFF",
	group: "Takeoff",
	summary:
		"Face area, edge length, volume and finish area of each piece, and volume times quantity.",
	limits:
		"Corners of drop edges are not deducted. A cutout is compared with the piece's A × B only (of a basin, with the floor between its walls), not with notches or curves, and cutouts are not compared with each other. Edge length counts the outline and the rims of cutouts, no drop edges.",
	params: {
		pieces: PIECES,
		cutouts: table(
			"One row per cutout, e.g. M2:Q9: piece name, count per piece, shape (rectangle, round, oval), A, B",
			CUTOUT_COLUMNS,
			{ alone: true, optional: true },
		),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per piece",
		beside: "pieces",
		columns: [
			{ text: "face area", unit: "area" },
			{ text: "edge length", unit: "length" },
			{ text: "volume", unit: "volume" },
			{ text: "finish area", unit: "area" },
			{ text: "volume of the quantity", unit: "volume" },
		],
	},
	example: {
		shown: ["A2:K2", "M2:Q2"],
		values: [
			[["Island", 2, "rectangle", 2000, 800, "", "", 40, "", "", ""]],
			[["Island", 1, "rectangle", 500, 400]],
		],
		answer: [1.4, 7400, 56, 1.696, 112],
		working:
			"face 2 × 0.8 − 0.5 × 0.4 = 1.4 m²; edge 2 (2 + 0.8) + 2 (0.5 + 0.4) = 7.4 m; volume 1.4 × 0.04 = 0.056 m³; finish 1.4 + 7.4 × 0.04 = 1.696 m²; two pieces 0.112 m³",
	},
	source:
		"Closed forms of areas and volumes; perimeter of an oval by Ramanujan's second formula (1914)",
	compute: ({ pieces, cutouts }, units) =>
		pieceSizes(
			pieces.map(pieceOf),
			cutouts.map(({ row, piece, count, shape, a, b }) => ({
				row,
				piece,
				count,
				shape,
				aM: a,
				bM: b,
			})),
			lengthText(units),
		).map(columns),
});

export const PIECE_SIZE = sheetFunction({
	name: "PIECE_SIZE",
	group: "Takeoff",
	summary:
		"Longest side of each piece, and its visible drop: drop height and slab together.",
	limits:
		"The longest of A, B and C, not the diagonal. A piece of shape area has no side that is known, and a piece without a drop edge no visible drop: both stay blank.",
	params: { pieces: PIECES, units: units() },
	answer: {
		shape: "table",
		text: "one row per piece",
		beside: "pieces",
		columns: [
			{ text: "longest side", unit: "length" },
			{ text: "visible drop", unit: "length" },
		],
	},
	example: {
		shown: ["A2:K2"],
		values: [[["Bar", 1, "rectangle", 2400, 600, "", "", 30, 60, 2400, 25]]],
		answer: [2400, 90],
		working: "the longer of 2400 and 600; 60 mm below the slab + 30 mm of slab",
	},
	source: "Largest of the given dimensions; a sum",
	compute: ({ pieces }) =>
		pieces
			.map(pieceOf)
			.map((piece) => [longestSideM(piece), visibleDropM(piece)]),
});
