/** The line under the grid: what is wrong in the selected cell, or whether anything is. */
import type { CellError, Desk } from "../contract";
import { drawingText } from "../sparkline/drawing";
import { button, element } from "./elements";
import { onCalculated, onSelected, soonOnce } from "./events";

const AT_REST =
	"No cell shows an error. This workbook lasts as long as this page is open.";

function at({ tab, cell }: CellError): string {
	return `${tab}, ${cell}`;
}

/** What an error means that no function has explained. */
const MEANINGS: Readonly<Record<string, string>> = {
	"#ERROR!": "it reads a cell that shows an error",
	"#REF!":
		"the cells it reads are gone, or its result has no room: clear the cells below and to the right",
	"#N/A": "what it looks for is not there",
	"#NAME?":
		"a function or name in it is not known here; choose Use in this workbook from the add-on's menu",
	"#VALUE!": "it needs a number and finds something else",
	"#NUM!": "it has no result for these numbers",
	"#DIV/0!": "it divides by nothing",
};

function described(error: CellError): string {
	const sentence = error.message || MEANINGS[error.shown] || "an error";
	return `${at(error)} shows ${error.shown}: ${sentence}.`;
}

interface Here {
	tab: string;
	cell: string;
}

/** The active cell. */
function activeCell(desk: Desk): Here | undefined {
	const workbook = desk.engine.api.getActiveWorkbook();
	const tab = workbook?.getActiveSheet().getSheetName();
	const cell = workbook?.getActiveCell()?.getA1Notation();
	return tab && cell ? { tab, cell } : undefined;
}

/** A button that goes to cells. */
function goTo(desk: Desk, { tab, cell }: Here): HTMLButtonElement {
	const go = button(`Go to ${tab}, ${cell}`, () => desk.select(tab, cell));
	go.classList.add("small");
	return go;
}

/** The way that a link in the active cell leads; addresses outside the file are told, not followed. */
function linkHere(desk: Desk, here: Here): (string | Node)[] | undefined {
	const link = desk.linkAt(here.tab, here.cell);
	if (!link) return undefined;
	const { tab, range } = link;
	return tab && range
		? [goTo(desk, { tab, cell: range })]
		: [`A link to ${link.address}`];
}

/** What the active cell draws, for whoever does not see the grid. */
function drawingHere(desk: Desk, here: Here): string[] | undefined {
	const drawing = desk.drawing(here.tab, here.cell);
	return (
		drawing && [`${here.tab}, ${here.cell} draws ${drawingText(drawing)}.`]
	);
}

/** What to say of the whole workbook, with a way to the first error. */
function summary(desk: Desk, errors: readonly CellError[]): (string | Node)[] {
	// one with a sentence of its own is nearer to the cause
	const first = errors.find(({ message }) => message) ?? errors[0];
	if (!first) return [AT_REST];
	const count =
		errors.length === 1
			? "One cell shows an error. "
			: `${errors.length} cells show an error. `;
	return [count, goTo(desk, first)];
}

/** Keeps the line true while cells are chosen and calculated. */
export function keepLineBelow(desk: Desk): void {
	let errors: CellError[] = [];
	const show = () => {
		const here = activeCell(desk);
		const wrong = errors.find(
			({ tab, cell }) => tab === here?.tab && cell === here.cell,
		);
		const line = element("below");
		line.classList.toggle("wrong", wrong !== undefined);
		const says = here && (linkHere(desk, here) ?? drawingHere(desk, here));
		line.replaceChildren(
			...(wrong ? [described(wrong)] : (says ?? summary(desk, errors))),
		);
	};
	const look = () => {
		errors = desk.errors();
		show();
	};
	onSelected(desk, soonOnce(show, 50));
	onCalculated(desk, soonOnce(look, 100));
	look();
}
