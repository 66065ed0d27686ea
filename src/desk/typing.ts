/** Formulas that a person types or pastes into the grid, on their way to the engine. */
import { ICommandService } from "@univerjs/core";
import {
	type ISetRangeValuesMutationParams,
	SetRangeValuesMutation,
} from "@univerjs/sheets";
import { type Book, type Cell, sheetNamed } from "./book";
import { partOf } from "./engine-private";
import { closeRanges, writtenFormula } from "./separators";

/** The engine knows neither `;` between arguments nor open ranges: both are translated as they come. Returns a stop. */
export function translateTyped(book: Book): () => void {
	const commands = partOf(book.engine, ICommandService);
	const listening = commands.beforeCommandExecuted(({ id, params }) => {
		if (id !== SetRangeValuesMutation.id) return;
		const { cellValue, subUnitId } = params as ISetRangeValuesMutationParams;
		const rowsOf = (tab: string | undefined) =>
			(tab === undefined
				? book.workbook.getWorkbook().getSheetBySheetId(subUnitId)
				: sheetNamed(book, tab)
			)?.getRowCount() ?? 1000;
		for (const row of Object.values(cellValue ?? {}))
			for (const cell of Object.values((row ?? {}) as Record<string, Cell>))
				if (cell?.f && /[;:]/.test(cell.f))
					cell.f = closeRanges(writtenFormula(cell.f, "en_US"), rowsOf);
	});
	return () => listening.dispose();
}
