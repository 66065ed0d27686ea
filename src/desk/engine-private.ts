/**
 * The parts of the engine that it does not offer: all of them, and in no other file of the desk.
 * Its version is pinned because of them. Each says what it is for, and what breaks without it.
 */
import {
	type DependencyIdentifier,
	type IUnitRange,
	LocaleService,
	type Univer,
} from "@univerjs/core";
import {
	type BaseAstNode,
	CELL_INVERTED_INDEX_CACHE,
	FormulaDataModel,
	IFormulaCurrentConfigService,
	type IFormulaData,
	type IFormulaDataItem,
	IFormulaDependencyGenerator,
	IFormulaRuntimeService,
	IOtherFormulaManagerService,
	LexerTreeBuilder,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";

type Running = { univer: Univer };

/**
 * A part of the engine by its token.
 *
 * The engine's types mark `__getInjector` as not for others. Without it the desk has the facade alone: no commands in one
 * step, no spills, no choices, rules and notes.
 */
export function partOf<T>(
	{ univer }: Running,
	token: DependencyIdentifier<T>,
): T {
	return univer.__getInjector().get(token);
}

/**
 * Edits that wait for the engine's timer of 100 ms. The desk calculates at once; without these every settling would wait
 * for the timer, and a wait with nothing to calculate would last half a second.
 */
interface EditQueue {
	_waitingCommandQueue: unknown[];
	_setTimeoutKey: ReturnType<typeof setTimeout>;
	_generateDirty(edits: unknown[]): { dirtyRanges: IUnitRange[] };
}

const queueIn = (engine: Running) =>
	partOf(engine, TriggerCalculationController) as unknown as EditQueue;

/** Takes the edits that were waiting; the timer finds none any more. */
export function takeEdits(engine: Running): unknown[] {
	const queue = queueIn(engine);
	clearTimeout(queue._setTimeoutKey);
	return queue._waitingCommandQueue.splice(0);
}

/** What the engine has to look at after edits. */
export const dirtyAfter = (engine: Running, edits: unknown[]) =>
	queueIn(engine)._generateDirty(edits);

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

/**
 * What decides which formulas are calculated, and in which order. `calculation` decides in its place, with its reading of
 * formulas; without these, numbers behind a spill that changes its size stay old, and an edit costs as much as all jobs.
 */
interface Generator {
	generate(): Promise<Tree[]>;
	_dependencyTreeCache: Map<number, Tree>;
	_createFDtree(
		unitId: string,
		sheetId: string,
		row: number,
		column: number,
		unitData: ReturnType<IFormulaCurrentConfigService["getUnitData"]>,
		item: IFormulaDataItem,
	): Tree;
	_registerOtherFormulas(
		data: ReturnType<IOtherFormulaManagerService["getOtherFormulaData"]>,
		keys: string[],
		into: Tree[],
	): void;
	_getTreeNode(tree: Tree): BaseAstNode;
	_getRangeListByNode(
		of: { node: BaseAstNode } & Pick<Tree, "refOffsetX" | "refOffsetY">,
	): Promise<IUnitRange[]>;
	_getAddressFunctionNodeList(node: BaseAstNode): unknown[];
	_disposeByUnitId(unitId: string): void;
	_detectForcedRecalculationNodeRecursion(node: BaseAstNode): boolean;
}

const generatorIn = (engine: Running) =>
	partOf(engine, IFormulaDependencyGenerator) as unknown as Generator;

/** Lets the engine calculate what `choose` answers. Returns a stop. */
export function chooseFormulas(
	engine: Running,
	choose: Generator["generate"],
): () => void {
	const generator = generatorIn(engine);
	const own = generator.generate;
	generator.generate = choose;
	return () => {
		generator.generate = own;
	};
}

/** The formula of a cell. */
export function cellTree(
	engine: Running,
	at: { unitId: string; sheetId: string; row: number; column: number },
	item: IFormulaDataItem,
): Tree {
	const { unitId, sheetId, row, column } = at;
	const unitData = partOf(engine, IFormulaCurrentConfigService).getUnitData();
	const tree = generatorIn(engine)._createFDtree(
		unitId,
		sheetId,
		row,
		column,
		unitData,
		item,
	);
	const { x: refOffsetX = 0, y: refOffsetY = 0 } = item;
	return Object.assign(tree, { refOffsetX, refOffsetY });
}

/** Formulas of rules, one for each of their cells. */
export function ruleTrees(engine: Running): Tree[] {
	const generator = generatorIn(engine);
	const data = partOf(
		engine,
		IOtherFormulaManagerService,
	).getOtherFormulaData();
	const trees: Tree[] = [];
	generator._registerOtherFormulas(data, Object.keys(data), trees);
	generator._dependencyTreeCache.clear();
	return trees;
}

/** The cells that a formula reads, and whether it has to be calculated every time. */
export async function readingOf(engine: Running, tree: Tree) {
	const generator = generatorIn(engine);
	const node = generator._getTreeNode(tree);
	partOf(engine, IFormulaRuntimeService).setCurrent(
		tree.row,
		tree.column,
		tree.rowCount,
		tree.columnCount,
		tree.subUnitId,
		tree.unitId,
	);
	const { refOffsetX, refOffsetY } = tree;
	return {
		ranges: await generator._getRangeListByNode({
			node,
			refOffsetX,
			refOffsetY,
		}),
		always:
			generator._detectForcedRecalculationNodeRecursion(node) ||
			generator._getAddressFunctionNodeList(node).length > 0,
	};
}

/** Forgets how formulas were read: a moved name would go on being read where it was. */
export function forgetReadings(engine: Running): void {
	partOf(engine, LexerTreeBuilder).dispose();
	const formulas = partOf(
		engine,
		IFormulaCurrentConfigService,
	).getFormulaData();
	for (const unitId of Object.keys(formulas))
		generatorIn(engine)._disposeByUnitId(unitId);
}

/**
 * Puts another reading of all formulas in place of the engine's own, which goes through every cell of every tab. After an
 * edit the engine is given the formulas of the edited tab alone. Without it a job takes several times as long to write.
 */
export function readFormulas(
	engine: Running,
	all: (model: FormulaDataModel) => IFormulaData,
): void {
	const model = partOf(engine, FormulaDataModel);
	const update = model.updateFormulaData.bind(model);
	const read = () => all(model);
	model.getFormulaData = read;
	model.updateFormulaData = (unitId, sheetId, cells) => {
		model.getFormulaData = () => ({
			[unitId]: { [sheetId]: model.getSheetFormulaData(unitId, sheetId) },
		});
		try {
			return update(unitId, sheetId, cells);
		} finally {
			model.getFormulaData = read;
		}
	};
}

/**
 * Makes the engine compare cell by cell.
 *
 * It keeps an index of compared columns during a calculation, which counts rows as read that were never put in: in a
 * real workbook `=E46=""` was false for a blank E46, and `=E46=C8` for two cells of 8966.
 */
export function compareCellByCell(): void {
	Object.assign(CELL_INVERTED_INDEX_CACHE, {
		canUseCache: () => ({ rowsInCache: [], rowsNotInCache: [] }),
		set: () => undefined,
		setContinueBuildingCache: () => undefined,
	});
}

/** Ends the engine. A progress timer of it may fire once more and asks for a text, which would throw. */
export function disposeQuietly({ univer }: Running): void {
	const locales = partOf({ univer }, LocaleService);
	univer.dispose();
	locales.t = (key) => key;
}
