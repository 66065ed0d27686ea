/**
 * What a new tab takes over from a tab that is its template: contents, formats, sizes, what is frozen or out of sight,
 * color, choices, rules, notes and pictures.
 *
 * By experience, not by the platform's page: the template's names too, as names of the new tab, and its protections.
 *
 * @source developers.google.com/apps-script/reference/spreadsheet/spreadsheet, insertSheet(sheetName, sheetIndex, options)
 */
import { BooleanNumber, type Worksheet } from "@univerjs/core";
import {
	AddConditionalRuleMutation,
	ConditionalFormattingRuleModel,
} from "@univerjs/sheets-conditional-formatting";
import {
	AddSheetDataValidationCommand,
	SheetDataValidationModel,
} from "@univerjs/sheets-data-validation";
import { SheetsNoteModel, UpdateNoteMutation } from "@univerjs/sheets-note";
import type { Cell, Cells } from "../book";
import { partOf } from "../engine-private";
import { copyNames } from "../names";
import type { Call } from "./call";
import { change } from "./change";
import { copyPictures } from "./pictures";

const plainCopy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** Most cells have a format's name alone, and are copied in a small part of the time. */
const copiedCell = (cell: Cell): Cell =>
	Object.values(cell ?? {}).some((part) => typeof part === "object")
		? plainCopy(cell)
		: { ...cell };

function copiedCells(cells: Cells): Cells {
	const copied: Cells = {};
	for (const [row, columns] of Object.entries(cells)) {
		const line: Record<string, Cell> = {};
		for (const column in columns) line[column] = copiedCell(columns[column]);
		copied[Number(row)] = line;
	}
	return copied;
}

/** The template's own data, for a tab of another id and name. */
export function copiedData(template: Worksheet, id: string, name: string) {
	const { cellData, ...rest } = template.getConfig();
	return {
		...plainCopy(rest),
		cellData: copiedCells(cellData),
		id,
		name,
		hidden: BooleanNumber.FALSE,
	};
}

function copyChoices(call: Call, from: Worksheet, to: Worksheet): void {
	const { engine, workbook } = call.host.book;
	const rules = partOf(engine, SheetDataValidationModel).getRules(
		workbook.getId(),
		from.getSheetId(),
	);
	rules.forEach((rule, index) => {
		const uid = `choice_${to.getSheetId()}_copy_${index}`;
		change(call, to, AddSheetDataValidationCommand.id, {
			rule: { ...plainCopy(rule), uid },
		});
	});
}

function copyRules(call: Call, from: Worksheet, to: Worksheet): void {
	const { engine, workbook } = call.host.book;
	const rules =
		partOf(engine, ConditionalFormattingRuleModel).getSubunitRules(
			workbook.getId(),
			from.getSheetId(),
		) ?? [];
	// the engine ranks a later one first
	[...rules].reverse().forEach((rule, index) => {
		const cfId = `rule_${to.getSheetId()}_${index}`;
		change(call, to, AddConditionalRuleMutation.id, {
			rule: { ...plainCopy(rule), cfId },
		});
	});
}

function copyNotes(call: Call, from: Worksheet, to: Worksheet): void {
	const { engine, workbook } = call.host.book;
	const notes = partOf(engine, SheetsNoteModel).getSheetNotes(
		workbook.getId(),
		from.getSheetId(),
	);
	const sheetId = to.getSheetId();
	for (const note of [...(notes?.values() ?? [])]) {
		const { row, col } = note;
		change(call, to, UpdateNoteMutation.id, {
			sheetId,
			row,
			col,
			note: { ...note, id: `note_${sheetId}_${row}_${col}` },
		});
	}
}

function copyProtections(call: Call, from: string, to: string): void {
	const { protections } = call.host;
	const own = protections.filter(({ sheetId }) => sheetId === from);
	protections.push(...own.map((note) => ({ ...note, sheetId: to })));
}

/** Everything beside the cells that belongs to a tab. */
export function copyBesideCells(
	call: Call,
	from: Worksheet,
	to: Worksheet,
): void {
	copyChoices(call, from, to);
	copyRules(call, from, to);
	copyNotes(call, from, to);
	copyPictures(call, from.getSheetId(), to.getSheetId());
	copyNames(call.host.book, from, to);
	copyProtections(call, from.getSheetId(), to.getSheetId());
}
