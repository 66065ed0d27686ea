/** Everything that follows from a job and its studio, each part worked out when it is first asked for. */
import type { JobFile } from "../jobfile";
import type { StudioFile } from "../studiofile";
import { type Basis, basisOf } from "./basis";
import { type CardAnswer, cardAnswers } from "./card/cardanswers";
import { type ColorsAnswer, colorsAnswer } from "./colors";
import { type CureAnswer, cureAnswer } from "./cure/cure";
import { type MoldAnswer, moldAnswer } from "./mold/mold";
import { type BuyRow, buyAnswer } from "./money/buy";
import { type CostAnswer, costAnswer } from "./money/cost";
import { type JobLine, jobLine } from "./money/jobline";
import { type QuoteAnswer, quoteAnswer } from "./money/quote";
import { once } from "./once";

export interface Whole {
	basis: Basis;
	colors(): ColorsAnswer;
	cards(): readonly CardAnswer[];
	cure(): CureAnswer;
	mold(): MoldAnswer;
	cost(): CostAnswer;
	quote(): QuoteAnswer;
	buy(): readonly BuyRow[];
	line(): JobLine;
}

export const wholeOf = (studio: StudioFile, job: JobFile): Whole =>
	wholeFrom(basisOf(studio, job));

export function wholeFrom(basis: Basis): Whole {
	const cure = once(() => cureAnswer(basis));
	const mold = once(() => moldAnswer(basis));
	const cost = once(() => costAnswer(basis, cure(), mold()));
	const quote = once(() => quoteAnswer(basis, cost()));
	return {
		basis,
		colors: once(() => colorsAnswer(basis)),
		cards: once(() => cardAnswers(basis)),
		cure,
		mold,
		cost,
		quote,
		buy: once(() => buyAnswer(basis, cost())),
		line: once(() => jobLine(basis, cure(), cost(), quote())),
	};
}
