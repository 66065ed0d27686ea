/** The part of the engine that decides what is calculated and in which order; private, so its version is pinned. */
import type { IUnitRange } from "@univerjs/core";
import {
	type BaseAstNode,
	FormulaExecuteStageType,
	type IDirtyUnitOtherFormulaMap,
	type IFormulaCurrentConfigService,
	type IFormulaDataItem,
	IFormulaDependencyGenerator,
	type IFormulaRuntimeService,
	type IOtherFormulaManagerService,
} from "@univerjs/engine-formula";
import type { Engine } from "../contract";

/** A formula as the engine runs it. */
export interface Tree {
	row: number;
	column: number;
	rowCount: number;
	columnCount: number;
	unitId: string;
	subUnitId: string;
	formula: string;
	refOffsetX: number;
	refOffsetY: number;
	/** Of a rule's formula: the rule. */
	formulaId?: string;
	node?: BaseAstNode;
}

type UnitData = ReturnType<IFormulaCurrentConfigService["getUnitData"]>;
type OtherData = ReturnType<IOtherFormulaManagerService["getOtherFormulaData"]>;

export interface Generator {
	generate(): Promise<Tree[]>;
	_currentConfigService: IFormulaCurrentConfigService;
	_runtimeService: IFormulaRuntimeService;
	_otherFormulaManagerService: IOtherFormulaManagerService;
	_dependencyTreeCache: Map<number, Tree>;
	_createFDtree(
		unitId: string,
		sheetId: string,
		row: number,
		column: number,
		unitData: UnitData,
		item: IFormulaDataItem,
	): Tree;
	_registerOtherFormulas(data: OtherData, keys: string[], into: Tree[]): void;
	_getTreeNode(tree: Tree): BaseAstNode;
	_getRangeListByNode(of: {
		node: BaseAstNode;
		refOffsetX: number;
		refOffsetY: number;
	}): Promise<IUnitRange[]>;
	_getAddressFunctionNodeList(node: BaseAstNode): unknown[];
	_disposeByUnitId(unitId: string): void;
	_lexerTreeBuilder: { dispose(): void };
	_detectForcedRecalculationNodeRecursion(node: BaseAstNode): boolean;
}

export function generatorOf(engine: Engine): Generator {
	return engine.univer
		.__getInjector()
		.get(IFormulaDependencyGenerator) as unknown as Generator;
}

/** Forgets how formulas were read: a moved name would go on being read where it was. */
export function forgetReadings(generator: Generator): void {
	generator._lexerTreeBuilder.dispose();
	for (const unitId of Object.keys(
		generator._currentConfigService.getFormulaData(),
	))
		generator._disposeByUnitId(unitId);
}

/** Whether the engine asks for what reads the spills of a pass: everything was in order in that pass already. */
export function isAfterSpills({ _runtimeService }: Generator): boolean {
	return (
		_runtimeService.getFormulaExecuteStage() ===
		FormulaExecuteStageType.START_DEPENDENCY_ARRAY_FORMULA
	);
}

/** Rules whose formulas are new or changed. */
export function dirtyRules({ _currentConfigService }: Generator): Set<string> {
	const map: IDirtyUnitOtherFormulaMap =
		_currentConfigService.getDirtyUnitOtherFormulaMap();
	return new Set(
		Object.values(map)
			.flatMap((sheets) => Object.values(sheets ?? {}))
			.flatMap((rules) => Object.keys(rules ?? {})),
	);
}
