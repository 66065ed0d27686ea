/** Recalculation until nothing is left to look at. */
import { CommandType, ICommandService, type IUnitRange } from "@univerjs/core";
import {
	IActiveDirtyManagerService,
	type ISetFormulaCalculationNotificationMutation,
	SetFormulaCalculationNotificationMutation,
	SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Workbook } from "./book";
import { lookAtOneTab } from "./calculation/one-tab";
import { type Schedule, schedule } from "./calculation/schedule";
import type { Engine } from "./contract";
import { dirtyAfter, partOf, takeEdits } from "./engine-private";

const MOST_PASSES = 8;

export interface Settler {
	/**
	 * Calculates what was edited since and all that depends on it; everything, where forced.
	 *
	 * @throws Error when it does not come to rest: a circular formula, or one that changes every time.
	 */
	settle(forced?: boolean): Promise<void>;
	/** Forgets the edits that wait, and calculates everything when it settles next. */
	postpone(): void;
	/** Keeps a live workbook at rest. Returns a stop. */
	keepSettled(): () => void;
	dispose(): void;
}

/** One calculation of the edits that were waiting and of these cells, now and not by the engine's timer. */
function calculate(
	engine: Engine,
	cells: readonly IUnitRange[],
	forceCalculation: boolean,
): Promise<void> {
	const dirty = dirtyAfter(engine, takeEdits(engine));
	const calculated = onCalculated(engine);
	partOf(engine, ICommandService).syncExecuteCommand(
		SetFormulaCalculationStartMutation.id,
		{
			...dirty,
			dirtyRanges: [...dirty.dirtyRanges, ...cells],
			forceCalculation,
		},
		{ onlyLocal: true },
	);
	return calculated;
}

/** Resolves at the end of the next calculation, its results in their cells. */
function onCalculated(engine: Engine): Promise<void> {
	const commands = partOf(engine, ICommandService);
	return new Promise((done) => {
		const listening = commands.onCommandExecuted(({ id, params }) => {
			if (id !== SetFormulaCalculationNotificationMutation.id) return;
			const { functionsExecutedState } =
				params as ISetFormulaCalculationNotificationMutation;
			if (functionsExecutedState === undefined) return;
			listening.dispose();
			setTimeout(done, 0);
		});
	});
}

async function calculateToRest(
	engine: Engine,
	plan: Schedule,
	forced: boolean,
): Promise<void> {
	// the engine registers new formulas in a later turn
	await new Promise((done) => setTimeout(done, 0));
	await calculate(engine, [], forced);
	for (let pass = 1; pass < MOST_PASSES; pass++) {
		const cells = plan.followUp();
		if (cells.length === 0) return;
		await calculate(engine, cells, false);
	}
	if (plan.followUp().length > 0)
		throw new Error(
			"the workbook does not come to rest: a formula is circular or changes every time",
		);
}

/** After each calculation that leaves something to look at, another. */
function keepSettled(
	engine: Engine,
	plan: Schedule,
	isBusy: () => boolean,
): () => void {
	let passes = 0;
	const listening = engine.api.getFormula().calculationResultApplied(() => {
		if (isBusy()) return;
		const cells = plan.followUp();
		passes = cells.length === 0 || passes >= MOST_PASSES ? 0 : passes + 1;
		if (passes > 0) void calculate(engine, cells, false);
	});
	return () => listening.dispose();
}

/** Calls back for every change that formulas may depend on, and tells those that change what a formula's text means. */
function onEdit(
	engine: Engine,
	edited: () => void,
	changedMeaning: () => void,
): () => void {
	const dirty = partOf(engine, IActiveDirtyManagerService);
	const listening = partOf(engine, ICommandService).onCommandExecuted(
		({ id, type }, options) => {
			if (type !== CommandType.MUTATION || !dirty.get(id)) return;
			if (id !== SetRangeValuesMutation.id) changedMeaning();
			else if (options?.onlyLocal === true) return;
			edited();
		},
	);
	return () => listening.dispose();
}

export function settler(engine: Engine, workbook: Workbook): Settler {
	const stopLooking = lookAtOneTab(engine, workbook);
	const plan = schedule(engine, workbook);
	let edits = 1;
	let settled = 0;
	let busy = false;
	const stop = onEdit(
		engine,
		() => {
			edits += 1;
		},
		plan.doubt,
	);
	return {
		async settle(forced = false) {
			if (settled === edits && !forced) return;
			const seen = edits;
			busy = true;
			try {
				await calculateToRest(engine, plan, forced || settled === 0);
			} finally {
				busy = false;
			}
			settled = seen;
		},
		postpone() {
			takeEdits(engine);
			settled = 0;
		},
		keepSettled: () => keepSettled(engine, plan, () => busy),
		dispose() {
			stop();
			stopLooking();
			plan.dispose();
		},
	};
}
