/** Notes of cells. */
import type { Worksheet } from "@univerjs/core";
import {
	RemoveNoteMutation,
	SheetsNoteModel,
	UpdateNoteMutation,
} from "@univerjs/sheets-note";
import { partOf } from "../engine-private";
import type { Call } from "./call";
import { change } from "./change";

export function writeNote(
	call: Call,
	sheet: Worksheet,
	row: number,
	column: number,
	note: unknown,
): void {
	const sheetId = sheet.getSheetId();
	const cell = { sheetId, row, col: column };
	const notes = partOf(call.host.book.engine, SheetsNoteModel);
	const old = notes.getNote(call.host.book.workbook.getId(), sheetId, {
		row,
		col: column,
	});
	if (note === null || note === "") {
		if (old) change(call, sheet, RemoveNoteMutation.id, cell);
		return;
	}
	change(call, sheet, UpdateNoteMutation.id, {
		...cell,
		note: {
			id: `note_${sheetId}_${row}_${column}`,
			row,
			col: column,
			width: 220,
			height: 90,
			note: String(note),
			show: false,
		},
	});
}

export function noteAt(
	call: Call,
	sheet: Worksheet,
	row: number,
	column: number,
) {
	const { book } = call.host;
	const notes = partOf(book.engine, SheetsNoteModel);
	const found = notes.getNote(book.workbook.getId(), sheet.getSheetId(), {
		row,
		col: column,
	});
	return found?.note ?? "";
}
