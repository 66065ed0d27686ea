/**
 * Recalculation until two passes agree.
 *
 * One pass of the engine leaves old numbers behind a spill that shrank; a forced second one puts them right.
 */
import { ICommandService } from "@univerjs/core";
import {
	FormulaDataModel,
	SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import type { Engine } from "./contract";

type Workbook = NonNullable<ReturnType<Engine["api"]["getWorkbook"]>>;

const MOST_PASSES = 8;
const PATIENCE_MS = 60_000;

/** Private parts of the engine that hold the edits it has not calculated yet; its version is pinned. */
interface Waiting {
	_waitingCommandQueue: unknown[];
	_setTimeoutKey: ReturnType<typeof setTimeout>;
	_generateDirty(commands: unknown[]): object;
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

const waiting = (engine: Engine) =>
	engine.univer
		.__getInjector()
		.get(TriggerCalculationController) as unknown as Waiting;

/** Whether edits have been made that no pass has seen yet. */
export function hasEdits(engine: Engine): boolean {
	return waiting(engine)._waitingCommandQueue.length > 0;
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
	const trigger = waiting(engine);
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

/**
 * Calculates until two passes agree.
 *
 * @throws Error when they never do: a circular formula, or one that changes every time.
 */
export async function settle(
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

/** Keeps a live workbook at rest: after each calculation a forced one, until nothing changes. Returns a stop. */
export function keepSettled(engine: Engine, workbook: Workbook): () => void {
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
