/** What all other answers stand on: the mix, the pieces, the loads and the tones. */
import type { JobFile } from "../jobfile";
import type { StudioFile } from "../studiofile";
import type { Given } from "./given";
import { type KnockoutAnswer, knockoutAnswers } from "./knockouts";
import { type LoadsAnswer, loadsAnswer } from "./loads";
import { type MixAnswers, mixAnswers } from "./mix";
import { type PieceAnswer, pieceAnswers } from "./pieces";
import { type PigmentAnswer, pigmentAnswers } from "./pigments";
import { type TonesAnswer, tonesAnswer } from "./tones";

export interface Basis {
	given: Given;
	mix: MixAnswers;
	pieces: readonly PieceAnswer[];
	knockouts: readonly KnockoutAnswer[];
	loads: LoadsAnswer;
	pigments: readonly PigmentAnswer[];
	tones: TonesAnswer;
}

export function basisOf(studio: StudioFile, job: JobFile): Basis {
	const given: Given = { studio, job, units: job.units };
	const mix = mixAnswers(given);
	const pieces = pieceAnswers(given, mix);
	const loads = loadsAnswer(given, pieces);
	const pigments = pigmentAnswers(given, mix);
	return {
		given,
		mix,
		pieces,
		knockouts: knockoutAnswers(given, mix),
		loads,
		pigments,
		tones: tonesAnswer({ given, mix, pieces, loads, pigments }),
	};
}
