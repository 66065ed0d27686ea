/** What the mold of a piece is built of: boards and bent strips by their names, corners to seal, faces to oil, screws. */
import { type PieceCutout, sides } from "./cutouts";
import { InputError } from "./errors";
import { convexCorners, type StraightSide, straightSides } from "./moldsides";
import { ovalEdgeM } from "./oval";
import { sum } from "./sum";
import type { Piece, PieceSizes } from "./takeoff";

/** How the studio builds its molds. */
export interface Building {
	boardM: number;
	/** Thickness of what is bent around curves. */
	stripM: number;
	/** Whether sides stand beside the base, which then has the size of the piece. */
	beside: boolean;
	screwSpacingM: number;
	/** From the end of a side to its first screw. */
	screwEndM: number;
}

export const MADE_OF = ["board", "bent strip", "plug"] as const;

export interface MoldPart {
	name: string;
	madeOf: (typeof MADE_OF)[number];
	lengthM: number;
	/** Its height where it stands, else its width. */
	widthM: number;
	/** Whether it stands in the mold. */
	stands: boolean;
}

export interface MoldTakes {
	parts: MoldPart[];
	/** Corners in which the form is hollow. */
	sealantM: number;
	releaseM2: number;
	screws: number;
}

/** How the piece lies in its mold, in which left and right may have changed sides. */
export interface InMold {
	face?: "face up" | "face down";
	notchAt?: string;
	/** Sides with a drop edge, or `all around`. */
	dropOn?: string;
}

/** Round formers below this are turned or cut from a pipe: nothing bends so tightly. Common practice, no source. */
const SMALLEST_BENT_M = 0.1;

/**
 * The mold of one piece.
 *
 * Straight sides: outline + 4 board thicknesses in all, as each corner is butted once. A bent strip has the length of its middle: the
 * outline with π × its thickness more around a piece, less around a knockout.
 *
 * @throws InputError for a piece given by its area, and for a drop edge of which side or face are not known.
 */
export function moldTakes(
	piece: Piece,
	cutouts: readonly PieceCutout[],
	sizes: PieceSizes,
	lie: InMold,
	build: Building,
): MoldTakes {
	if (piece.shape === "area")
		throw new InputError(
			"a piece given by its area has no sides that are known: build its mold by the template",
		);
	const around = straightSides(piece, lie.notchAt);
	const walls = [
		...straightWalls(piece, around, lie, build),
		...bentWalls(piece, build),
		...roundedCorners(piece, around, build),
	];
	const { dropHeightM = 0, dropRunM = 0 } = piece;
	return {
		parts: [
			...baseParts(piece, lie, build),
			...walls,
			...coreParts(piece, build),
			...cutouts.flatMap((cutout) => knockoutParts(piece, cutout, build)),
		],
		sealantM: sealantM(piece, around, sizes),
		// The drop edge has an inner wall, too, which is not finished; the open rim of a tube touches nothing.
		releaseM2:
			sizes.finishM2 +
			dropHeightM * dropRunM -
			(piece.shape === "tube" ? openRimM2(piece) : 0),
		screws: sum(
			walls
				.filter(({ madeOf }) => madeOf === "board")
				.map(({ lengthM }) => screwsOf(lengthM, build)),
		),
	};
}

const board = (
	name: string,
	lengthM: number,
	widthM: number,
	stands = true,
): MoldPart => ({ name, madeOf: "board", lengthM, widthM, stands });

const bent = (name: string, lengthM: number, widthM: number): MoldPart => ({
	name,
	madeOf: "bent strip",
	lengthM,
	widthM,
	stands: true,
});

/** How far what stands outside of the piece reaches: beyond it on all sides, and below where it stands beside the base. */
const standing = ({ shape }: Piece, { boardM, stripM, beside }: Building) => ({
	outM: isCurved(shape) ? stripM : boardM,
	belowM: beside ? boardM : 0,
});

const isCurved = (shape: Piece["shape"]): boolean =>
	shape === "round" || shape === "oval" || shape === "tube";

const sidesOver = (piece: Piece): [number, number] => [
	piece.aM ?? 0,
	piece.bM ?? piece.aM ?? 0,
];

/** How high the mix stands in the mold beside its outer walls. */
const depthM = ({ shape, cM = 0, thicknessM }: Piece): number =>
	shape === "basin" || shape === "tube" ? cM : thicknessM;

const dropM = ({ dropThicknessM, thicknessM }: Piece): number =>
	dropThicknessM ?? thicknessM;

/** The base; under a drop edge that is cast face up a second one, raised by its height and smaller by its thickness. */
function baseParts(piece: Piece, lie: InMold, build: Building): MoldPart[] {
	const [aM, bM] = sidesOver(piece);
	const { outM } = standing(piece, build);
	const overM = build.beside ? 0 : 2 * outM;
	const base = board("base", aM + overM, bM + overM, false);
	if (piece.dropHeightM === undefined || faceOf(lie) === "face down")
		return [base];
	const dropped = (side: string) =>
		isDropped(piece, side, lie) ? dropM(piece) : 0;
	return [
		base,
		board(
			"raised base",
			aM - dropped("left") - dropped("right"),
			bM - dropped("front") - dropped("back"),
			false,
		),
	];
}

/** @throws InputError where nobody said how the piece lies, which says where the drop edge's inner wall goes. */
function faceOf({ face }: InMold): "face up" | "face down" {
	if (face) return face;
	throw new InputError(
		"type face up or face down under Cast: the drop edge's walls follow from it",
	);
}

/** @throws InputError where nobody said which sides drop. */
function isDropped(
	{ dropHeightM }: Piece,
	side: string,
	{ dropOn }: InMold,
): boolean {
	if (dropHeightM === undefined) return false;
	if (dropOn === undefined)
		throw new InputError("type the sides under Drop edge on");
	const said = dropOn.toLowerCase();
	return said === "all around" || said.includes(side);
}

function straightWalls(
	piece: Piece,
	sides: readonly StraightSide[],
	lie: InMold,
	build: Building,
): MoldPart[] {
	const { dropHeightM = 0 } = piece;
	const { belowM } = standing(piece, build);
	return sides.flatMap((side, index) => {
		const before = sides[(index + sides.length - 1) % sides.length] ?? side;
		const after = sides[(index + 1) % sides.length] ?? side;
		const ends = [
			{ corner: before.corner, next: before },
			{ corner: side.corner, next: after },
		];
		const drops = isDropped(piece, side.side, lie);
		const wall = board(
			side.name,
			side.lengthM +
				(side.alongA
					? sum(ends.map(({ corner }) => corner * build.boardM))
					: 0),
			depthM(piece) + belowM + (drops ? dropHeightM : 0),
		);
		if (!drops) return [wall];
		const innerM =
			side.lengthM -
			sum(
				ends.map(({ corner, next }) =>
					isDropped(piece, next.side, lie) ? corner * dropM(piece) : 0,
				),
			);
		return [wall, ...innerWall(side.name, innerM, dropHeightM, lie, build)];
	});
}

/** Face down it hangs with its foot at the slab's level; face up it carries the edge of the raised base. */
function innerWall(
	side: string,
	lengthM: number,
	dropHeightM: number,
	lie: InMold,
	{ boardM }: Building,
): MoldPart[] {
	const heightM =
		faceOf(lie) === "face down" ? dropHeightM : dropHeightM - boardM;
	return heightM > 0 && lengthM > 0
		? [board(`${side}, inner wall of the drop edge`, lengthM, heightM)]
		: [];
}

function bentWalls(piece: Piece, build: Building): MoldPart[] {
	const { shape, dropHeightM } = piece;
	if (!isCurved(shape)) return [];
	const { stripM } = build;
	const { belowM } = standing(piece, build);
	const [aM, bM] = sidesOver(piece);
	const edgeM = ovalEdgeM(aM, bM);
	const heightM = depthM(piece) + belowM + (dropHeightM ?? 0);
	const outside = bent("outside", edgeM + Math.PI * stripM, heightM);
	if (shape === "tube")
		return [
			outside,
			bent(
				"core",
				Math.PI * (aM - 2 * piece.thicknessM - stripM),
				depthM(piece),
			),
		];
	return dropHeightM === undefined
		? [outside]
		: [
				outside,
				bent(
					"inner wall of the drop edge",
					edgeM - Math.PI * (2 * dropM(piece) + stripM),
					dropHeightM,
				),
			];
}

/** A strip in each rounded corner, inside of the walls that meet there. */
function roundedCorners(
	piece: Piece,
	sides: readonly StraightSide[],
	build: Building,
): MoldPart[] {
	const { radiusM = 0 } = piece;
	return radiusM === 0
		? []
		: Array.from({ length: convexCorners(sides) }, () =>
				bent(
					"rounded corner",
					(Math.PI / 2) * (radiusM + build.stripM / 2),
					depthM(piece),
				),
			);
}

/** The box that keeps a basin open: its walls under its lid. */
function coreParts(piece: Piece, { boardM }: Building): MoldPart[] {
	if (piece.shape !== "basin") return [];
	const { thicknessM: t, cM = 0 } = piece;
	const [aM, bM] = sidesOver(piece);
	const lid = board("core, lid", aM - 2 * t, bM - 2 * t, false);
	const heightM = cM - t - boardM;
	const depthM = bM - 2 * t - 2 * boardM;
	return heightM > 0 && depthM > 0
		? [
				lid,
				...["front", "back"].map((side) =>
					board(`core, ${side}`, aM - 2 * t, heightM),
				),
				...["left", "right"].map((side) =>
					board(`core, ${side}`, depthM, heightM),
				),
			]
		: [lid];
}

function knockoutParts(
	{ thicknessM: t }: Piece,
	cutout: PieceCutout,
	build: Building,
): MoldPart[] {
	const { aM, bM } = sides(cutout);
	const name = `knockout ${cutout.row}`;
	const each = formerParts(name, cutout, [aM, bM], t, build);
	return Array.from({ length: cutout.count }, () => each).flat();
}

/** A ring of boards or a bent strip as high as the slab; what is too small for either is one plug. */
function formerParts(
	name: string,
	{ shape, radiusM = 0 }: PieceCutout,
	[aM, bM]: readonly [number, number],
	t: number,
	{ boardM, stripM }: Building,
): MoldPart[] {
	const straight = shape === "rectangle";
	const rimM = straight
		? 2 * (aM + bM) - (8 - 2 * Math.PI) * radiusM
		: ovalEdgeM(aM, bM);
	if (straight && radiusM === 0 && bM > 2 * boardM)
		return [
			...["front", "back"].map((side) => board(`${name}, ${side}`, aM, t)),
			...["left", "right"].map((side) =>
				board(`${name}, ${side}`, bM - 2 * boardM, t),
			),
		];
	if ((!straight || radiusM > 0) && Math.min(aM, bM) >= SMALLEST_BENT_M)
		return [bent(`${name}, ring`, rimM - Math.PI * stripM, t)];
	return [
		{
			name,
			madeOf: "plug",
			lengthM: aM,
			widthM: bM,
			stands: false,
		},
	];
}

/** Outline and rims, and the height of every corner that is hollow in the form. */
function sealantM(
	{ shape, aM = 0, bM = 0, cM = 0, radiusM = 0, thicknessM: t }: Piece,
	sides: readonly StraightSide[],
	{ edgeM }: PieceSizes,
): number {
	// A tube's edge has both ends; its mold has a base at one.
	if (shape === "tube") return edgeM / 2;
	const uprightM = shape === "basin" ? cM : t;
	const coreM = shape === "basin" ? 2 * (aM + bM - 4 * t) : 0;
	return edgeM + coreM + (radiusM > 0 ? 0 : convexCorners(sides) * uprightM);
}

const openRimM2 = ({ aM = 0, thicknessM: t }: Piece): number =>
	Math.PI * (aM - t) * t;

const screwsOf = (
	lengthM: number,
	{ screwSpacingM, screwEndM }: Building,
): number =>
	Math.max(2, Math.ceil((lengthM - 2 * screwEndM) / screwSpacingM - 1e-9) + 1);
