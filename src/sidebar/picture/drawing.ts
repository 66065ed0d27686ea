/** A piece as pixels, from the cells of its job. */
import { InputError } from "../../calc/errors";
import { type Veins, veins } from "../../calc/veins";
import type { JobView } from "../../sheets/messages";
import { type SeenPiece, seenPiece } from "./seen";

/** Two pixels of the picture a pixel of the panel: fine on sharp screens and in print. */
const WIDTH_PX = 560;

export interface Drawn {
	piece: SeenPiece;
	seen: Veins;
}

/** The piece and its pixels, or what a person must correct first. */
export function drawing(
	job: JobView,
	name: string,
	how: { folds: number; seed: number; mirrored: boolean },
): Drawn | { problem: string } {
	try {
		const piece = seenPiece(job, name);
		const shares = job.tones.map(({ share }) => share);
		return {
			piece,
			seen: veins({ ...piece, ...how, shares, widthPx: WIDTH_PX }),
		};
	} catch (error) {
		if (error instanceof InputError) return { problem: error.message };
		throw error;
	}
}
