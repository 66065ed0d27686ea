/** The drawings of a job's pieces: each finished, from above, and as it lies in the mold. */
import { moldPlan } from "../../calc/mold";
import type { Basis } from "../answers/basis";
import { from, isKnown, type Known, missing, saying } from "../answers/known";
import type { PieceAnswer } from "../answers/pieces";
import { onTape } from "../reading/tape";
import { type UnitSystem, unitName } from "../reading/units";
import { type Drawn, drawingSvg } from "./drawingsvg";
import { mirrored, planView, type Seen } from "./planview";

/** Both views of one piece, or why there is none. */
export function pieceDrawings(basis: Basis, index: number): Known<Drawn[]> {
	const answer = basis.pieces[index];
	if (!answer) return missing("type the pieces");
	const { units } = basis.given;
	const { face, dropOn } = basis.given.job.pieces[index] ?? {};
	return from(answer.piece, (piece) => {
		const finished: Seen = {
			piece,
			holes: isKnown(answer.holes) ? answer.holes.is : [],
			notch: isKnown(answer.notch) ? answer.notch.is : undefined,
			dropOn:
				moldPlan(piece, { dropOn: String(dropOn ?? ""), cut: false }).drop
					?.finished ?? "",
		};
		const isDown =
			String(face ?? "")
				.trim()
				.toLowerCase() === "face down";
		const inMold = isDown ? mirrored(finished) : finished;
		const lies = isDown
			? "in the mold, face down: MIRRORED"
			: face
				? "in the mold, face up: as finished"
				: "in the mold: not known yet, type face up or face down under Cast";
		return [
			drawn(
				`${answer.name}: finished, from above`,
				finished,
				notesOf(answer, units),
			),
			drawn(`${answer.name}: ${lies}`, inMold, [
				isDown
					? "Front toward you; dimensions from the mold's own left side."
					: "Front toward you.",
			]),
		].flatMap((one) => one ?? []);
	});
}

function drawn(
	title: string,
	seen: Seen,
	notes: readonly string[],
): Drawn | undefined {
	const view = planView(seen);
	return view && { title, view, notes };
}

/** What the plan does not show. */
function notesOf(
	{ piece, holes, notch, cutouts }: PieceAnswer,
	units: UnitSystem,
): string[] {
	if (!isKnown(piece)) return [];
	const tape = (lengthM: number) => onTape(lengthM, units);
	const { shape, thicknessM, cM = 0, dropHeightM, radiusM } = piece.is;
	const isHigh = shape === "basin" || shape === "tube";
	const rounded = isKnown(cutouts)
		? cutouts.is.filter(({ radiusM: r = 0 }) => r > 0)
		: [];
	return [
		`Lengths in ${unitName("length", units)}. ${tape(thicknessM)} thick${isHigh ? `, ${tape(cM)} high` : ""}${radiusM ? `, outside corners rounded ${tape(radiusM)}` : ""}.`,
		...(dropHeightM === undefined
			? []
			: [
					`Drop edge ${tape(dropHeightM)} below the slab, ${tape(piece.is.dropThicknessM ?? thicknessM)} thick, where it is gray.`,
				]),
		...rounded.map(
			({ row, radiusM: r = 0 }) =>
				`Corners of cutout ${row} rounded ${tape(r)}.`,
		),
		...[saying(holes), saying(notch)].filter(Boolean),
	];
}

/** Both views as one SVG, one below the other, or beside each other. */
export const svgOf = (
	drawings: readonly Drawn[],
	units: UnitSystem,
	isRow = false,
): string => drawingSvg(drawings, (lengthM) => onTape(lengthM, units), isRow);
