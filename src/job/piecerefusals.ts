/** Pieces and cutouts that cannot be, although each of their fields can. */
import { quoted } from "../calc/errors";
import { moldPlan } from "../calc/mold";
import { dimensionMistakes, outlineOf } from "../calc/shapes";
import { dropEdge, type Piece, pieceSizes } from "../calc/takeoff";
import type { Basis } from "./answers/basis";
import { isKnown } from "./answers/known";
import { cutoutOf, isIn } from "./answers/pieces";
import { type Fields, wordOf } from "./fields/field";
import { CUTOUT, type CutoutRow } from "./fields/openings";
import { PIECE } from "./fields/piece";
import { type Mistake, sentenceOf } from "./mistakes";
import { lengthText } from "./reading/cells";

export const pieceMistakes = (basis: Basis): Mistake[] =>
	basis.pieces.flatMap(({ piece }, index) => {
		const sentences = isKnown(piece)
			? refusedOf(basis, piece.is, index)
			: "look" in piece
				? [piece.look]
				: [];
		return sentences.map((say) => placed(`pieces[${index}]`, PIECE, say));
	});

/** What is wrong with a piece whose fields are read. */
function refusedOf(
	{ given }: Pick<Basis, "given">,
	piece: Piece,
	index: number,
): string[] {
	const { notch, dropOn } = given.job.pieces[index] ?? {};
	const dimensions = dimensionMistakes(piece);
	return [
		...dimensions,
		...[
			dimensions.length === 0
				? sentenceOf(() => outlineOf(piece, lengthText(given.units)))
				: undefined,
			sentenceOf(() => dropEdge(piece)),
			sentenceOf(() =>
				moldPlan(piece, { cut: false, notchAt: String(notch ?? "") }),
			),
			sentenceOf(() =>
				moldPlan(piece, { cut: false, dropOn: String(dropOn ?? "") }),
			),
		].filter((sentence) => sentence !== undefined),
	];
}

export function cutoutMistakes(basis: Basis): Mistake[] {
	const { job } = basis.given;
	const rows = job.cutouts ?? [];
	const each = rows.flatMap((row, index) => {
		const sentence = cutoutRefused(basis, row, index);
		return sentence ? [placed(`cutouts[${index}]`, CUTOUT, sentence)] : [];
	});
	return each.length > 0 ? each : tooManyCut(basis);
}

function cutoutRefused(
	basis: Basis,
	row: CutoutRow,
	index: number,
): string | undefined {
	const { given, pieces } = basis;
	const at = pieces.findIndex(({ name }) => isIn(row, name));
	const piece = pieces[at]?.piece;
	if (piece === undefined)
		return `piece ${quoted(String(row.piece ?? ""))} is not among the pieces`;
	const cutout = cutoutOf(row, index, given.units);
	if (!isKnown(piece) || !isKnown(cutout)) return undefined;
	if (refusedOf(basis, piece.is, at).length > 0) return undefined;
	return sentenceOf(() =>
		pieceSizes([piece.is], [cutout.is], lengthText(given.units)),
	);
}

/** Cutouts of one piece that each fit in it, and together do not. */
const tooManyCut = (basis: Basis): Mistake[] =>
	basis.pieces.flatMap(({ piece, cutouts, sizes }, index) =>
		isKnown(piece) &&
		isKnown(cutouts) &&
		"look" in sizes &&
		refusedOf(basis, piece.is, index).length === 0
			? [placed(`pieces[${index}]`, {}, sizes.look)]
			: [],
	);

/** A sentence at the field of a row that it begins with, or at the row. */
function placed(row: string, fields: Fields, sentence: string): Mistake {
	const say = sentence.replace(/^(?:cutouts )?row \d+: /, "");
	const begins = (word: string) =>
		say.startsWith(`${word} `) || say.startsWith(`${word}:`);
	const key = Object.keys(fields).find(
		(name) =>
			begins(wordOf(name)) || begins(lowered(fields[name]?.label ?? "")),
	);
	return { path: key ? `${row}.${key}` : row, say };
}

const lowered = (label: string): string =>
	label.replace(/^.(?=[a-z])/, (letter) => letter.toLowerCase());
