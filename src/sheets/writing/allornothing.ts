/** Several changes of the workbook as one: all of them, or none. */
import { reason } from "./undo";

export interface Step {
	act(): unknown;
	/** Puts back what was before, also where the change was not made or only begun. */
	undo(): unknown;
}

/** A service that fails once mostly answers the next time. */
export function insistently(act: () => unknown): string | undefined {
	try {
		act();
	} catch {
		try {
			act();
		} catch (error) {
			return reason(error);
		}
	}
	return undefined;
}

/** Does all steps, or undoes what was begun, the last first. @throws Error that says whether the workbook is as it was. */
export function wholly(failed: string, steps: readonly Step[]): void {
	const begun: Step[] = [];
	try {
		for (const step of steps) {
			begun.unshift(step);
			step.act();
		}
		SpreadsheetApp.flush();
	} catch (error) {
		const left = begun.flatMap(({ undo }) => insistently(undo) ?? []);
		throw new Error(
			left.length === 0
				? `${failed}, and the workbook is as it was. Try again. (${reason(error)})`
				: `${failed} (${reason(error)}), and part of it could not be taken back (${left.join("; ")}): use Undo, or File, Version history`,
		);
	}
}

/**
 * Does each step, a second time when it fails, and no more after one that failed twice: for what cannot be undone, such
 * as a tab taken away.
 *
 * @throws Error that says what is `left` and what a person does about it.
 */
export function throughout(
	left: string,
	steps: readonly (() => unknown)[],
): void {
	for (const step of steps) {
		const why = insistently(step);
		if (why !== undefined) throw new Error(`${left}. (${why})`);
	}
}
