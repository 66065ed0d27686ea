/** The line under the grid: what is wrong in the selected cell, or whether anything is. */
import type { CellError, Desk } from "../contract";
import { button, element } from "./elements";

const AT_REST =
	"No cell shows an error. This workbook lasts as long as this page is open.";

function at({ tab, cell }: CellError): string {
	return `${tab}, ${cell}`;
}

function described(error: CellError): string {
	return `${at(error)}: ${error.message || error.shown}`;
}

/** The address of the active cell, as `errorAt` takes it. */
function activeCell(desk: Desk): { tab: string; cell: string } | undefined {
	const workbook = desk.engine.api.getActiveWorkbook();
	const cell = workbook?.getActiveCell();
	if (!workbook || !cell) return undefined;
	return {
		tab: workbook.getActiveSheet().getSheetName(),
		cell: cell.getA1Notation(),
	};
}

/** What to say of the whole workbook, with a way to the first error. */
function summary(desk: Desk): (string | Node)[] {
	const errors = desk.errors();
	const [first] = errors;
	if (!first) return [AT_REST];
	const count =
		errors.length === 1
			? "One cell shows an error. "
			: `${errors.length} cells show an error. `;
	const go = button(`Go to ${at(first)}`, () =>
		desk.select(first.tab, first.cell),
	);
	go.classList.add("small");
	return [count, go];
}

function show(desk: Desk): void {
	const active = activeCell(desk);
	const here = active && desk.errorAt(active.tab, active.cell);
	const line = element("below");
	line.classList.toggle("wrong", here !== undefined);
	line.replaceChildren(...(here ? [described(here)] : summary(desk)));
}

/** Keeps the line true while cells are selected and calculated. */
export function keepLineBelow(desk: Desk): void {
	const { api } = desk.engine;
	let due: ReturnType<typeof setTimeout> | undefined;
	const soon = () => {
		clearTimeout(due);
		due = setTimeout(() => show(desk), 50);
	};
	api.addEvent(api.Event.SelectionChanged, soon);
	api.addEvent(api.Event.ActiveSheetChanged, soon);
	api.getFormula().calculationResultApplied(soon);
	soon();
}
