/** `SPARKLINE`: the cell holds an empty text; what it draws is kept beside it. */
import { type ICellData, ICommandService, type Nullable } from "@univerjs/core";
import {
	BaseFunction,
	type BaseValueObject,
	ErrorType,
	ErrorValueObject,
	FormulaDataModel,
	StringValueObject,
} from "@univerjs/engine-formula";
import {
	type ISetRangeValuesMutationParams,
	SetRangeValuesMutation,
} from "@univerjs/sheets";
import { plainArgument } from "../bridge";
import type { Engine, EngineFunction } from "../contract";
import { partOf } from "../engine-private";
import { type Drawing, type DrawingError, drawingOf } from "./drawing";

const ERRORS: Record<DrawingError, ErrorType> = {
	"#VALUE!": ErrorType.VALUE,
	"#REF!": ErrorType.REF,
	"#N/A": ErrorType.NA,
};

const rowsOf = (argument: unknown): unknown[][] =>
	Array.isArray(argument) ? argument : [[argument]];

/** In place of a function that the engine has not. */
export function sparkline(): EngineFunction {
	class Sparkline extends BaseFunction {
		override minParams = 1;
		override maxParams = 2;
		override needsReferenceObject = true;
		override calculate(data: BaseValueObject, options?: BaseValueObject) {
			for (const given of [data, options]) if (given?.isError()) return given;
			const drawn = drawingOf(
				rowsOf(plainArgument(data)),
				options ? rowsOf(plainArgument(options)) : [],
			);
			return typeof drawn === "string"
				? ErrorValueObject.create(ERRORS[drawn])
				: new StringValueObject("").withCustomData({ drawing: drawn });
		}
	}
	return [Sparkline, "SPARKLINE"];
}

type Cell = Nullable<ICellData>;
type Place = { unitId: string; subUnitId: string; row: number; col: number };

const kept = (cell: Cell): Drawing | undefined => cell?.custom?.drawing;

/** What a cell draws: by its own formula, or by a spill over it. */
export function drawingIn(
	engine: Engine,
	{ unitId, subUnitId, row, col }: Place,
	own: Cell,
): Drawing | undefined {
	if (own?.f || own?.si) return own.v === "" ? kept(own) : undefined;
	if (own?.v !== undefined && own.v !== null && own.v !== "") return undefined;
	return kept(
		partOf(engine, FormulaDataModel).getArrayFormulaCellData()[unitId]?.[
			subUnitId
		]?.[row]?.[col],
	);
}

/** The engine leaves a drawing where a later result has none: it is taken away with the content. Returns a stop. */
export function forgetDrawings(engine: Engine): () => void {
	const listening = partOf(engine, ICommandService).beforeCommandExecuted(
		({ id, params }) => {
			if (id !== SetRangeValuesMutation.id) return;
			const { cellValue, subUnitId } = params as ISetRangeValuesMutationParams;
			const sheet = engine.api
				.getActiveWorkbook()
				?.getWorkbook()
				.getSheetBySheetId(subUnitId);
			for (const [row, cells] of Object.entries(cellValue ?? {}))
				for (const [column, cell] of Object.entries(
					(cells ?? {}) as Record<string, Cell>,
				)) {
					if (!cell || !kept(sheet?.getCellRaw(Number(row), Number(column))))
						continue;
					const isDrawn = cell.custom?.drawing && (cell.v ?? "") === "";
					if (!isDrawn && ("v" in cell || "f" in cell))
						Object.assign(cell, { custom: null });
				}
		},
	);
	return () => listening.dispose();
}
