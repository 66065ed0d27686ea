/** One tab on one sheet of paper, A4 or Letter, upright or across. */
import type { Desk } from "../contract";
import { element } from "./elements";
import { type PrintCell, printedTab } from "./printed";

/** What both papers leave between margins of 10 mm, in CSS pixels. */
const UPRIGHT = { width: 710, height: 970 };
const ACROSS = { width: 970, height: 700 };

const SIDES = ["top", "right", "bottom", "left"] as const;

function tableCell(cell: PrintCell): HTMLTableCellElement {
	const box = document.createElement("td");
	box.textContent = cell.text;
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
function tableOf(desk: Desk): HTMLTableElement {
	const { widths, rows } = printedTab(desk);
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

/** Shrinks the table until it fits; borders do not shrink with it, so it is measured again. */
function shrink(table: HTMLTableElement, paper: typeof UPRIGHT): void {
	let scale = 1;
	for (let pass = 0; pass < 4; pass++) {
		const { width, height } = table.getBoundingClientRect();
		scale *= Math.min(1, paper.width / width, paper.height / height);
		table.style.zoom = String(scale);
	}
}

/** Lays the tab out for paper, turned whichever way leaves it larger. */
export function layOutTab(desk: Desk): void {
	const place = element("print");
	const table = tableOf(desk);
	place.replaceChildren(table);
	place.className = "measured";
	const { width, height } = table.getBoundingClientRect();
	const scaleOn = (paper: typeof UPRIGHT) =>
		Math.min(1, paper.width / width, paper.height / height);
	const across = scaleOn(ACROSS) > scaleOn(UPRIGHT);
	shrink(table, across ? ACROSS : UPRIGHT);
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
