/** A job with the doses that its tones reached, to be made again in that color. */
import { InputError } from "../calc/errors";
import { sameName } from "../calc/names";
import { sum } from "../calc/sum";
import type { CardTone } from "./answers/card/cardsteps";
import { isWeighed, pourOf } from "./answers/card/loadpour";
import { all, isKnown, orNull, saying } from "./answers/known";
import { type Whole, wholeOf } from "./answers/whole";
import type { JobFile, ToneInput } from "./jobfile";
import type { StudioFile } from "./studiofile";

/** Its tones dosed as its weighed loads came out, the larger counting more. @throws InputError where none was weighed. */
export function asReached(studio: StudioFile, job: JobFile): JobFile {
	const whole = wholeOf(studio, job);
	const loads = all(
		whole
			.cards()
			.filter(({ load }) => isWeighed(pourOf({ job }, load)))
			.map(({ tones }) => tones),
	);
	if (!isKnown(loads))
		throw new InputError(`The doses reached: ${saying(loads)}`);
	const came = loads.is.flat();
	if (came.length === 0)
		throw new InputError(
			"No load of this job was weighed: copy it as it was planned",
		);
	return {
		...job,
		tones: job.tones.map((tone) => toneReached(whole, tone, came)),
	};
}

function toneReached(
	{ basis: { pigments } }: Whole,
	tone: ToneInput,
	came: readonly CardTone[],
): ToneInput {
	const own = came.filter(({ name }) =>
		sameName(name, String(tone.name ?? "")),
	);
	const mass = sum(own.map(({ undosed }) => undosed));
	if (!(mass > 0)) return tone;
	const doses = pigments.flatMap(({ name, toBinder }) => {
		const dose =
			sum(own.map(({ undosed, reached }) => undosed * (reached[name] ?? 0))) /
			mass;
		// In what the studio states doses of this pigment in.
		const stated = dose / (orNull(toBinder) ?? 1);
		return stated > 0 ? [[name, Number(stated.toPrecision(6))] as const] : [];
	});
	return { ...tone, doses: Object.fromEntries(doses) };
}
