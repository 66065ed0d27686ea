/** What the engine was asked to calculate in the pass that runs. */
import type { IUnitRange } from "@univerjs/core";
import {
	FormulaExecuteStageType,
	IFormulaCurrentConfigService,
	IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import type { Engine } from "../contract";
import { partOf } from "../engine-private";

export interface Pass {
	/** Whether everything is wanted. */
	isForced(): boolean;
	/** Cells that were edited. */
	dirtyRanges(): readonly IUnitRange[];
	/** Rules whose formulas are new or changed. */
	dirtyRules(): ReadonlySet<string>;
	/** Whether what reads the spills of the pass is wanted: everything was in order in that pass already. */
	isAfterSpills(): boolean;
	/** Lets the engine go through formulas that lead back to themselves. */
	allowCircles(): void;
	/** Forgets the spills of passes before. */
	forgetSpills(): void;
}

export function passOf(engine: Engine): Pass {
	const config = partOf(engine, IFormulaCurrentConfigService);
	const runtime = partOf(engine, IFormulaRuntimeService);
	return {
		isForced: () => config.isForceCalculate(),
		dirtyRanges: () => config.getDirtyRanges(),
		dirtyRules: () =>
			new Set(
				Object.values(config.getDirtyUnitOtherFormulaMap())
					.flatMap((sheets) => Object.values(sheets ?? {}))
					.flatMap((rules) => Object.keys(rules ?? {})),
			),
		isAfterSpills: () =>
			runtime.getFormulaExecuteStage() ===
			FormulaExecuteStageType.START_DEPENDENCY_ARRAY_FORMULA,
		allowCircles: () => runtime.enableCycleDependency(),
		forgetSpills: () => runtime.clearArrayObjectCache(),
	};
}
