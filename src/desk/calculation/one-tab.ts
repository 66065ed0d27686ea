import { CommandType, ICommandService } from "@univerjs/core";
import {
	type FormulaDataModel,
	RemoveDefinedNameMutation,
	SetDefinedNameMutation,
	SetFormulaDataMutation,
} from "@univerjs/engine-formula";
import {
	InsertSheetMutation,
	SetStyleCommand,
	SetWorksheetColWidthMutation,
} from "@univerjs/sheets";
import {
	AddConditionalRuleMutation,
	DeleteConditionalRuleMutation,
} from "@univerjs/sheets-conditional-formatting";
import type { Workbook } from "../book";
import type { Engine } from "../contract";
import { partOf, readFormulas } from "../engine-private";

type TabFormulas = ReturnType<FormulaDataModel["getSheetFormulaData"]>;

/** Mutations that change no formula of a tab that is there already. */
const HARMLESS: ReadonlySet<string> = new Set([
	InsertSheetMutation.id,
	SetDefinedNameMutation.id,
	RemoveDefinedNameMutation.id,
	SetFormulaDataMutation.id,
	SetWorksheetColWidthMutation.id,
	AddConditionalRuleMutation.id,
	DeleteConditionalRuleMutation.id,
]);

interface Params {
	subUnitId?: string;
	/** The command that the mutation is part of. */
	trigger?: string;
}

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
			if (type !== CommandType.MUTATION || HARMLESS.has(id)) return;
			const { subUnitId, trigger }: Params = params ?? {};
			if (trigger === SetStyleCommand.id) return;
			if (subUnitId) known.delete(subUnitId);
			else known.clear();
		},
	);
	return () => listening.dispose();
}
