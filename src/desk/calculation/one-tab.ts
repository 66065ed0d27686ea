import { CommandType, ICommandService } from "@univerjs/core";
import {
	type FormulaDataModel,
	RemoveDefinedNameMutation,
	SetDefinedNameMutation,
} from "@univerjs/engine-formula";
import { InsertSheetMutation } from "@univerjs/sheets";
import type { Workbook } from "../book";
import type { Engine } from "../contract";
import { partOf, readFormulas } from "../engine-private";

type TabFormulas = ReturnType<FormulaDataModel["getSheetFormulaData"]>;

/** Mutations that name no tab and change no formula of a tab that is there already. */
const HARMLESS: ReadonlySet<string> = new Set([
	InsertSheetMutation.id,
	SetDefinedNameMutation.id,
	RemoveDefinedNameMutation.id,
]);

/**
 * Lets the engine look at the formulas of tabs that were changed, and not at all cells of all tabs each time, which took
 * most of the time that it takes to write a job.
 */
export function lookAtOneTab(engine: Engine, workbook: Workbook): () => void {
	const known = new Map<string, TabFormulas>();
	const unitId = workbook.getId();
	const formulasOf = (
		model: FormulaDataModel,
		sheetId: string,
	): TabFormulas => {
		const formulas =
			known.get(sheetId) ?? model.getSheetFormulaData(unitId, sheetId);
		known.set(sheetId, formulas);
		return formulas;
	};
	readFormulas(engine, (model) => ({
		[unitId]: Object.fromEntries(
			workbook
				.getWorkbook()
				.getSheets()
				.map((sheet) => [
					sheet.getSheetId(),
					formulasOf(model, sheet.getSheetId()),
				]),
		),
	}));
	const listening = partOf(engine, ICommandService).beforeCommandExecuted(
		({ id, type, params }) => {
			if (type !== CommandType.MUTATION) return;
			const tab = (params as { subUnitId?: string } | undefined)?.subUnitId;
			if (tab) known.delete(tab);
			else if (!HARMLESS.has(id)) known.clear();
		},
	);
	return () => listening.dispose();
}
