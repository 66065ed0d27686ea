import type { Settler } from "./settle";

export interface Turns {
	/**
	 * Does the work once all before it is done and the workbook at rest, and lets it come to rest again; unless nothing
	 * is to be calculated.
	 */
	take<T>(work: () => T, calculate?: boolean): Promise<T>;
	/** Formulas would answer something else than they did, though nothing was edited: the next turn recalculates. */
	outdate(): void;
}

/** Calls wait for each other, and for the calculation in between. */
export function takeTurns(settler: Settler): Turns {
	let outdated = false;
	let last: Promise<unknown> = Promise.resolve();
	const settled = async <T>(work: () => T): Promise<T> => {
		await settler.settle();
		try {
			return work();
		} finally {
			await settler.settle(outdated);
			outdated = false;
		}
	};
	const unsettled = <T>(work: () => T): T => {
		try {
			return work();
		} finally {
			settler.postpone();
		}
	};
	return {
		take(work, calculate = true) {
			const turn = last.then(() =>
				calculate ? settled(work) : unsettled(work),
			);
			last = turn.catch(() => undefined);
			return turn;
		},
		outdate() {
			outdated = true;
		},
	};
}
