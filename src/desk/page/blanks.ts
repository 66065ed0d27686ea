/** Blank cells in a spill: the grid would show 0 for them, a sheet shows nothing. */
import { InterceptorEffectEnum } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Engine } from "../contract";
import { partOf } from "../engine-private";

/** Behind the engine's own, which puts the 0 there, and before its number formats: they have 100 and 10. */
const BETWEEN = 50;

export function showSpilledBlanks(engine: Engine): void {
	const spills = partOf(engine, FormulaDataModel);
	partOf(engine, SheetInterceptorService).intercept(
		INTERCEPTOR_POINT.CELL_CONTENT,
		{
			priority: BETWEEN,
			effect: InterceptorEffectEnum.Value,
			handler(cell, { unitId, subUnitId, row, col }, next) {
				const spilled =
					spills.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[col];
				const isBlank = spilled && spilled.v == null && spilled.t == null;
				return next(isBlank ? { ...cell, v: undefined, t: undefined } : cell);
			},
		},
	);
}
