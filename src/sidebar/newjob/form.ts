/** The New job form as it is typed: every field a text, so that nothing a person wrote is changed. */
import type { PanelCalls, PanelStart } from "../../sheets/messages";

export const FACES = ["face up", "face down"] as const;

export type JobInput = Parameters<PanelCalls["createJob"]>[0];
export type Units = PanelStart["units"];

/** Fields of a piece, in the order of PIECE_TAKEOFF's columns, by the words its sentences use. */
export const PIECE_FIELDS = {
	name: "name",
	quantity: "quantity",
	shape: "shape",
	a: "A",
	b: "B",
	c: "C",
	d: "D",
	thickness: "thickness",
	dropHeight: "drop height",
	dropRun: "drop run",
	dropThickness: "drop thickness",
} as const;
export type PieceField = keyof typeof PIECE_FIELDS;

/** Fields of a cutout, in the order of PIECE_TAKEOFF's columns. */
export const CUTOUT_FIELDS = {
	piece: "piece",
	count: "count",
	shape: "shape",
	a: "A",
	b: "B",
} as const;
export type CutoutField = keyof typeof CUTOUT_FIELDS;

/** A row of the form; `key` is its own for as long as it is there. */
export type PieceRow = Record<PieceField, string> & {
	key: number;
	/** How it lies in the mold; blank where nobody has decided. */
	face: string;
};
export type CutoutRow = Record<CutoutField, string> & { key: number };
export interface ToneRow {
	key: number;
	name: string;
	share: string;
	/** Percent of binder as typed, by pigment. */
	doses: Readonly<Record<string, string>>;
}

export interface JobForm {
	units: Units;
	client: string;
	title: string;
	pourDate: string;
	mix: string;
	pieces: readonly PieceRow[];
	cutouts: readonly CutoutRow[];
	/** Pigments that the tones show a field for. */
	pigments: readonly string[];
	tones: readonly ToneRow[];
}

let lastKey = 0;
const newKey = (): number => {
	lastKey += 1;
	return lastKey;
};

export const blankPiece = (): PieceRow => ({
	key: newKey(),
	name: "",
	quantity: "1",
	shape: "rectangle",
	a: "",
	b: "",
	c: "",
	d: "",
	thickness: "",
	dropHeight: "",
	dropRun: "",
	dropThickness: "",
	face: "",
});

export const blankCutout = (piece = ""): CutoutRow => ({
	key: newKey(),
	piece,
	count: "1",
	shape: "rectangle",
	a: "",
	b: "",
});

export const blankTone = (share = ""): ToneRow => ({
	key: newKey(),
	name: "",
	share,
	doses: {},
});

export const blankForm = (start: PanelStart, units: Units): JobForm => ({
	units,
	client: "",
	title: "",
	pourDate: "",
	mix: start.mixes[0]?.name ?? "",
	pieces: [blankPiece()],
	cutouts: [],
	pigments: [],
	tones: [blankTone("100")],
});

const MEASURES: readonly PieceField[] = [
	"a",
	"b",
	"c",
	"d",
	"thickness",
	"dropHeight",
	"dropRun",
	"dropThickness",
];

/** True for a piece that nobody has begun to type. */
export const pieceIsBlank = (row: PieceRow): boolean =>
	row.name.trim() === "" && MEASURES.every((field) => row[field].trim() === "");

export const filledPieces = (form: JobForm): readonly PieceRow[] =>
	form.pieces.filter((row) => !pieceIsBlank(row));
