/** One tab on one sheet of paper, A4 or Letter, upright or across. */
import type { Desk } from "../contract";
import { printedDrawing } from "./drawings";
import { element } from "./elements";
import { imageOf } from "./pictures";
import { type PrintCell, type PrintedTab, printedTab } from "./printed";

/** What both papers leave between margins of 10 mm, in CSS pixels. */
const UPRIGHT = { width: 710, height: 970 };
const ACROSS = { width: 970, height: 700 };

const SIDES = ["top", "right", "bottom", "left"] as const;

function tableCell(cell: PrintCell): HTMLTableCellElement {
	const box = document.createElement("td");
	box.textContent = cell.text;
	if (cell.drawing) {
		const { of, width, height } = cell.drawing;
		box.append(printedDrawing(of, width, height));
	}
	box.colSpan = cell.columns;
	box.rowSpan = cell.rows;
	Object.assign(box.style, cell.style);
	for (const side of SIDES)
		if (cell.borders[side])
			box.style.setProperty(
				`border-${side}`,
				`1px solid ${cell.borders[side]}`,
			);
	return box;
}

/** The tab as a table with the widths it has on the screen. */
function tableOf({ widths, rows }: PrintedTab): HTMLTableElement {
	const table = document.createElement("table");
	table.style.width = `${widths.reduce((sum, width) => sum + width, 0)}px`;
	const columns = document.createElement("colgroup");
	for (const width of widths) {
		const column = document.createElement("col");
		column.style.width = `${width}px`;
		columns.append(column);
	}
	table.append(columns);
	for (const { height, cells } of rows) {
		const row = table.insertRow();
		row.style.height = `${height}px`;
		row.append(...cells.map(tableCell));
	}
	return table;
}

/** The pictures over the table, which is laid out already: a row may have grown with its text. */
function picturesOver(
	{ widths, pictures }: PrintedTab,
	table: HTMLTableElement,
): HTMLImageElement[] {
	return pictures.map(({ note, row, column }) => {
		const image = imageOf(note);
		const left = widths.slice(0, column).reduce((sum, width) => sum + width, 0);
		const top = table.rows[row]?.offsetTop ?? 0;
		Object.assign(image.style, {
			left: `${left + note.x}px`,
			top: `${top + note.y}px`,
			width: `${note.width}px`,
			height: `${note.height}px`,
		});
		return image;
	});
}

/** Shrinks the whole until it fits; borders do not shrink with it, so it is measured again. */
function shrink(whole: HTMLElement, paper: typeof UPRIGHT): void {
	let scale = 1;
	for (let pass = 0; pass < 4; pass++) {
		const { width, height } = whole.getBoundingClientRect();
		scale *= Math.min(1, paper.width / width, paper.height / height);
		whole.style.zoom = String(scale);
	}
}

/** Lays the tab out for paper, turned whichever way leaves it larger. */
export function layOutTab(desk: Desk): void {
	const place = element("print");
	const tab = printedTab(desk);
	const table = tableOf(tab);
	const whole = document.createElement("div");
	whole.className = "paper";
	whole.append(table);
	place.replaceChildren(whole);
	place.className = "measured";
	whole.append(...picturesOver(tab, table));
	const { width, height } = whole.getBoundingClientRect();
	const scaleOn = (paper: typeof UPRIGHT) =>
		Math.min(1, paper.width / width, paper.height / height);
	const across = scaleOn(ACROSS) > scaleOn(UPRIGHT);
	shrink(whole, across ? ACROSS : UPRIGHT);
	place.className = "";
	const turn = document.createElement("style");
	turn.textContent = `@page { size: ${across ? "landscape" : "portrait"}; margin: 10mm; }`;
	place.append(turn);
}

/** Prints the open tab on one sheet. */
export function printTab(desk: Desk): void {
	layOutTab(desk);
	window.print();
}
