import { CommandType, ICommandService } from "@univerjs/core";
import {
	FormulaDataModel,
	type IFormulaData,
	RemoveDefinedNameMutation,
	SetDefinedNameMutation,
} from "@univerjs/engine-formula";
import { InsertSheetMutation } from "@univerjs/sheets";
import type { Workbook } from "../book";
import type { Engine } from "../contract";

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
	const injector = engine.univer.__getInjector();
	const model = injector.get(FormulaDataModel);
	const update = model.updateFormulaData.bind(model);
	const known = new Map<string, TabFormulas>();
	const unitId = workbook.getId();
	const formulasOf = (sheetId: string): TabFormulas => {
		const formulas =
			known.get(sheetId) ?? model.getSheetFormulaData(unitId, sheetId);
		known.set(sheetId, formulas);
		return formulas;
	};
	const allFormulas = (): IFormulaData => ({
		[unitId]: Object.fromEntries(
			workbook
				.getWorkbook()
				.getSheets()
				.map((sheet) => [sheet.getSheetId(), formulasOf(sheet.getSheetId())]),
		),
	});
	const listening = injector
		.get(ICommandService)
		.beforeCommandExecuted(({ id, type, params }) => {
			if (type !== CommandType.MUTATION) return;
			const tab = (params as { subUnitId?: string } | undefined)?.subUnitId;
			if (tab) known.delete(tab);
			else if (!HARMLESS.has(id)) known.clear();
		});
	model.getFormulaData = allFormulas;
	model.updateFormulaData = (_unitId, sheetId, cells) => {
		model.getFormulaData = () => ({
			[unitId]: { [sheetId]: model.getSheetFormulaData(unitId, sheetId) },
		});
		try {
			return update(unitId, sheetId, cells);
		} finally {
			model.getFormulaData = allFormulas;
		}
	};
	return () => listening.dispose();
}
