import type { Desk } from "../contract";

/** Runs the work a little later, once for several askings in a row. */
export function soonOnce(work: () => void, afterMs: number): () => void {
	let due: ReturnType<typeof setTimeout> | undefined;
	return () => {
		clearTimeout(due);
		due = setTimeout(work, afterMs);
	};
}

/** After every calculation. */
export function onCalculated(desk: Desk, then: () => void): void {
	desk.engine.api.getFormula().calculationResultApplied(then);
}

export function onTabOpened(desk: Desk, then: () => void): void {
	const { api } = desk.engine;
	api.addEvent(api.Event.ActiveSheetChanged, then);
}

/** When another cell is chosen, in this tab or by opening another. */
export function onSelected(desk: Desk, then: () => void): void {
	const { api } = desk.engine;
	api.addEvent(api.Event.SelectionChanged, then);
	onTabOpened(desk, then);
}
