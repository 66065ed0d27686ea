import {
	blankCutout,
	blankForm,
	blankPiece,
	blankTone,
	type CutoutRow,
	type JobForm,
	type PieceRow,
	type ToneRow,
} from "../../../src/sidebar/newjob/form";
import { STUDIO } from "../studio";

export const piece = (fields: Partial<PieceRow>): PieceRow => ({
	...blankPiece(),
	...fields,
});
export const cutout = (fields: Partial<CutoutRow>): CutoutRow => ({
	...blankCutout(),
	...fields,
});
export const tone = (
	name: string,
	share: string,
	doses: ToneRow["doses"] = {},
): ToneRow => ({ ...blankTone(share), name, doses });

/** Two bars of 40 L, a base and a vein. */
export const BARS: JobForm = {
	...blankForm(STUDIO.studio, "metric"),
	client: "Guesthouse",
	title: "Two bars",
	pieces: [
		piece({
			name: "Bar",
			quantity: "2",
			a: "2000",
			b: "500 mm",
			thickness: "40",
		}),
	],
	pigments: ["Umber", "Black"],
	tones: [
		tone("Base", "75", { Umber: "2" }),
		tone("Vein", "25%", { Umber: "2%", Black: "5" }),
	],
};
