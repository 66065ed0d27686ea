/** Rows as high as what is in them, as the platform makes every row whose height nobody has set. */
import { ICommandService, type Worksheet } from "@univerjs/core";
import { AutoHeightController } from "@univerjs/preset-sheets-core";
import {
	type ISetWorksheetRowAutoHeightMutationParams,
	SetWorksheetRowAutoHeightMutation,
} from "@univerjs/sheets";
import type { Desk } from "../contract";
import { partOf } from "../engine-private";
import { onCalculated, onTabOpened, soonOnce } from "./events";

/** Makes rows of a tab higher where their text needs it. Not a step that a person could undo. */
function fitRows(desk: Desk, sheet: Worksheet): void {
	const whole = {
		startRow: 0,
		endRow: sheet.getRowCount() - 1,
		startColumn: 0,
		endColumn: sheet.getColumnCount() - 1,
	};
	const { redos } = partOf(
		desk.engine,
		AutoHeightController,
	).getUndoRedoParamsOfAutoHeight([whole], sheet.getSheetId());
	for (const { id, params } of redos) {
		if (id !== SetWorksheetRowAutoHeightMutation.id) continue;
		const fitted = params as ISetWorksheetRowAutoHeightMutationParams;
		const rowsAutoHeightInfo = fitted.rowsAutoHeightInfo.filter(
			({ row, autoHeight }) => (autoHeight ?? 0) > sheet.getRowHeight(row),
		);
		partOf(desk.engine, ICommandService).syncExecuteCommand(id, {
			...fitted,
			rowsAutoHeightInfo,
		});
	}
}

/** Keeps the rows of the open tab fitted, now and after what changes them. */
export function keepRowsFitted(desk: Desk): void {
	const fitOpenTab = () => {
		const sheet = desk.engine.api.getActiveWorkbook()?.getActiveSheet();
		if (sheet) fitRows(desk, sheet.getSheet());
	};
	const soon = soonOnce(fitOpenTab, 100);
	onCalculated(desk, soon);
	onTabOpened(desk, soon);
	fitOpenTab();
}
