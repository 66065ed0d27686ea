/**
 * How long a call may take, in milliseconds. What never ends is not interrupted, only what ends too late refused.
 *
 * @source developers.google.com/apps-script/guides/services/quotas: 30 s a custom function, 30 s a simple trigger,
 * 6 minutes a script; the cell's words: developers.google.com/apps-script/guides/sheets/functions
 */
export interface Limits {
	cellMs: number;
	triggerMs: number;
	callMs: number;
}

export const LIMITS: Limits = {
	cellMs: 30_000,
	triggerMs: 30_000,
	callMs: 360_000,
};

/** The answer of the work. @throws Error when it took longer than it may. */
export function within<T>(limitMs: number, work: () => T): T {
	const started = performance.now();
	const answer = work();
	if (performance.now() - started > limitMs)
		throw new Error("Exceeded maximum execution time (line 0).");
	return answer;
}
