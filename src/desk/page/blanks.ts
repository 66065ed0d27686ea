/** Blank cells in a spill: the grid would show 0 for them, a sheet shows nothing. */
import { InterceptorEffectEnum, type Univer } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";

/** Behind the engine's own, which puts the 0 there, and before its number formats: they have 100 and 10. */
const BETWEEN = 50;

export function showSpilledBlanks(univer: Univer): void {
	const injector = univer.__getInjector();
	const spills = injector.get(FormulaDataModel);
	injector
		.get(SheetInterceptorService)
		.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
			priority: BETWEEN,
			effect: InterceptorEffectEnum.Value,
			handler(cell, { unitId, subUnitId, row, col }, next) {
				const spilled =
					spills.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[col];
				const isBlank = spilled && spilled.v == null && spilled.t == null;
				return next(isBlank ? { ...cell, v: undefined, t: undefined } : cell);
			},
		});
}
