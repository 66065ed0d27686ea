/**
 * Recalculation until two passes agree.
 *
 * One pass of the engine leaves old numbers behind a spill that shrank; a forced second one puts them right.
 */
import { ICommandService } from "@univerjs/core";
import {
	FormulaDataModel,
	IActiveDirtyManagerService,
	SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import type { Workbook } from "./book";
import type { Engine } from "./contract";

const MOST_PASSES = 8;
const PATIENCE_MS = 60_000;

/** Private parts of the engine that hold the edits it has not calculated yet; its version is pinned. */
interface Waiting {
	_waitingCommandQueue: unknown[];
	_setTimeoutKey: ReturnType<typeof setTimeout>;
	_generateDirty(commands: unknown[]): object;
}

export interface Settler {
	/**
	 * Calculates until two passes agree; does nothing when nothing was edited since, unless forced.
	 *
	 * @throws Error when they never agree: a circular formula, or one that changes every time.
	 */
	settle(forced?: boolean): Promise<void>;
	/** Keeps a live workbook at rest. Returns a stop. */
	keepSettled(): () => void;
	dispose(): void;
}

/** All calculated values as one text; two equal ones mean that the workbook is at rest. */
function fingerprint(engine: Engine, workbook: Workbook): string {
	const values: unknown[] = [];
	for (const sheet of workbook.getWorkbook().getSheets())
		sheet.getCellMatrix().forValue((row, column, cell) => {
			if (cell?.f || cell?.si) values.push(row, column, cell.v);
		});
	const spills = engine.univer
		.__getInjector()
		.get(FormulaDataModel)
		.getArrayFormulaCellData()[workbook.getId()];
	return JSON.stringify([values, spills ?? null]);
}

function hasFormula(workbook: Workbook): boolean {
	return workbook
		.getWorkbook()
		.getSheets()
		.some((sheet) => {
			let found = false;
			sheet.getCellMatrix().forValue((_row, _column, cell) => {
				found = Boolean(cell?.f || cell?.si);
				return !found;
			});
			return found;
		});
}

/** One pass over all formulas, with the edits that were waiting; not the engine's own timer of 100 ms. */
async function calculateAll(engine: Engine): Promise<void> {
	const trigger = engine.univer
		.__getInjector()
		.get(TriggerCalculationController) as unknown as Waiting;
	clearTimeout(trigger._setTimeoutKey);
	const dirty = trigger._generateDirty(trigger._waitingCommandQueue.splice(0));
	const applied = engine.api
		.getFormula()
		.onCalculationResultApplied(PATIENCE_MS);
	engine.univer
		.__getInjector()
		.get(ICommandService)
		.syncExecuteCommand(
			SetFormulaCalculationStartMutation.id,
			{ ...dirty, forceCalculation: true },
			{ onlyLocal: true },
		);
	await applied;
}

async function calculateToRest(
	engine: Engine,
	workbook: Workbook,
): Promise<void> {
	// the engine registers new formulas in a later turn
	await new Promise((done) => setTimeout(done, 0));
	if (!hasFormula(workbook)) return;
	let last = "";
	for (let pass = 0; pass < MOST_PASSES; pass++) {
		await calculateAll(engine);
		const now = fingerprint(engine, workbook);
		if (now === last) return;
		last = now;
	}
	throw new Error(
		"the workbook does not come to rest: a formula is circular or changes every time",
	);
}

/** After each calculation a forced one, until nothing changes. */
function keepSettled(engine: Engine, workbook: Workbook): () => void {
	const formula = engine.api.getFormula();
	let last = "";
	let passes = 0;
	const listening = formula.calculationResultApplied(() => {
		const now = fingerprint(engine, workbook);
		const rest = now === last || passes >= MOST_PASSES;
		last = now;
		passes = rest ? 0 : passes + 1;
		if (!rest) formula.executeCalculation();
	});
	return () => listening.dispose();
}

/** Calls back for every change that formulas may depend on; results of a calculation are none. */
function onEdit(engine: Engine, edited: () => void): () => void {
	const injector = engine.univer.__getInjector();
	const dirty = injector.get(IActiveDirtyManagerService);
	const listening = injector
		.get(ICommandService)
		.onCommandExecuted(({ id }, options) => {
			const isResult =
				id === SetRangeValuesMutation.id && options?.onlyLocal === true;
			if (dirty.get(id) && !isResult) edited();
		});
	return () => listening.dispose();
}

export function settler(engine: Engine, workbook: Workbook): Settler {
	let edits = 1;
	let settled = 0;
	const stop = onEdit(engine, () => {
		edits += 1;
	});
	return {
		async settle(forced = false) {
			if (settled === edits && !forced) return;
			const seen = edits;
			await calculateToRest(engine, workbook);
			settled = seen;
		},
		keepSettled: () => keepSettled(engine, workbook),
		dispose: stop,
	};
}
