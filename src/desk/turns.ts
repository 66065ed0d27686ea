import type { Settler } from "./settle";

export interface Turns {
	/** Does the work once all before it is done and the workbook at rest, and lets it come to rest again. */
	take<T>(work: () => T): Promise<T>;
	/** Formulas would answer something else than they did, though nothing was edited: the next turn recalculates. */
	outdate(): void;
}

/** Calls wait for each other, and for the calculation in between. */
export function takeTurns(settler: Settler): Turns {
	let outdated = false;
	let last: Promise<unknown> = Promise.resolve();
	return {
		take(work) {
			const turn = last.then(async () => {
				await settler.settle();
				try {
					return work();
				} finally {
					await settler.settle(outdated);
					outdated = false;
				}
			});
			last = turn.catch(() => undefined);
			return turn;
		},
		outdate() {
			outdated = true;
		},
	};
}
