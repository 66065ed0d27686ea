/** What a person can correct: one sentence naming the argument, what is allowed and what came. */
export class InputError extends Error {}

/** The answer of `work`; what a person can correct in it is told with the place it happened, e.g. `row 3: …`. */
export function at<T>(place: string, work: () => T): T {
	try {
		return work();
	} catch (error) {
		if (error instanceof InputError)
			throw new InputError(`${place}: ${error.message}`);
		throw error;
	}
}

/** A name or another typed text as an error shows it: on one line, cut where it would fill the sentence. */
export const quoted = (name: string): string =>
	`"${(name.length > 60 ? `${name.slice(0, 60)}…` : name).replace(/\s+/g, " ")}"`;

/** A share as an error shows it, e.g. `4.5%`. */
export const percent = (share: number, digits = 6): string =>
	`${Number((share * 100).toPrecision(digits))}%`;
