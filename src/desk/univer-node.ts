import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import type { Engine, EngineFunction } from "./contract";
import { disposeQuietly } from "./engine-private";

/** Univer without a grid. */
export function startHeadlessEngine(functions: EngineFunction[]): Engine {
	const univer = new Univer({
		locale: LocaleType.EN_US,
		locales: { [LocaleType.EN_US]: {} },
		logLevel: LogLevel.ERROR,
	});
	univer.registerPlugin(UniverFormulaEnginePlugin, {
		function: functions,
	});
	univer.registerPlugin(UniverDocsPlugin);
	univer.registerPlugin(UniverSheetsPlugin);
	univer.registerPlugin(UniverSheetsFormulaPlugin);
	univer.registerPlugin(UniverSheetsNumfmtPlugin);
	univer.registerPlugin(UniverSheetsDataValidationPlugin);
	univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
	univer.registerPlugin(UniverSheetsNotePlugin);
	return {
		univer,
		api: FUniver.newAPI(univer),
		dispose: () => disposeQuietly({ univer }),
	};
}
