import { foldedPiece } from "../../src/calc/stone/fold";
import { paintPlain, paintStone } from "../../src/calc/stone/paint";
import { milliseconds, ms, type Row, times } from "./row";

const PAINT = {
	colors: ["#e2ddd3", "#ac947e", "#86705c", "#898987"],
	mirrored: false,
};

/** The picture of a piece of 2.4 × 1.6 m, beside a loop of ten million sines: at most three times that at 600 × 400. */
export function stoneRows(): Row[] {
	let total = 0;
	const sines = milliseconds(() => {
		for (let i = 0; i < 1e7; i++) total += Math.sin(i / 1000);
	}, 5);
	if (Number.isNaN(total)) throw new Error("sines are numbers");
	const row = (what: string, took: number): Row => ({
		what,
		figure: ms(took),
		beside: `${times(took, sines)} ten million sines`,
	});
	return (["bucket fold", "mold lay-up"] as const).flatMap((placing) => {
		const piece = {
			outline: { shape: "rectangle", aM: 2.4, bM: 1.6, thicknessM: 0.03 },
			...{ cutouts: [], shares: [40, 25, 15, 20], seed: 1, placing },
		} as const;
		const fine = [1, 3, 5].map((folds) =>
			row(
				`Picture, ${placing}, ${folds} folds, 600 × 400`,
				milliseconds(() => {
					const folded = foldedPiece({ ...piece, folds, widthPx: 600 });
					paintStone(folded, PAINT);
				}, 5),
			),
		);
		const coarse = milliseconds(() => {
			const folded = foldedPiece({ ...piece, folds: 3, widthPx: 200 });
			paintPlain(folded, PAINT);
		}, 5);
		return [...fine, row(`Picture, ${placing}, while a control moves`, coarse)];
	});
}
