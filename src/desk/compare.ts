/** Comparing cells: the engine's own way with columns is wrong at times. */
import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * Makes the engine compare cell by cell.
 *
 * It keeps an index of compared columns during a calculation, which counts rows as read that were never put in: in a
 * real workbook `=E46=""` was false for a blank E46, and `=E46=C8` for two cells of 8966. Private, the version is pinned.
 */
export function compareCellByCell(): void {
	Object.assign(CELL_INVERTED_INDEX_CACHE, {
		canUseCache: () => ({ rowsInCache: [], rowsNotInCache: [] }),
		set: () => undefined,
		setContinueBuildingCache: () => undefined,
	});
}
