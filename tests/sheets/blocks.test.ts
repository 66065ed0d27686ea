import fc from "fast-check";
import { expect, test } from "vitest";
import { blocksOver, type Need } from "../../src/sheets/writing/covering";

const need = fc.constantFrom<Need>("covered", "free", "free", "barred");
const grids = fc
	.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }))
	.chain(([rows, columns]) =>
		fc.array(fc.array(need, { minLength: columns, maxLength: columns }), {
			minLength: rows,
			maxLength: rows,
		}),
	);

test("every cell that has to be covered is in one block, and no barred cell in any", () => {
	fc.assert(
		fc.property(grids, (cells) => {
			const times = cells.map((row) => row.map(() => 0));
			for (const { row, column, rows, columns } of blocksOver(cells))
				for (let down = row; down < row + rows; down++)
					for (let right = column; right < column + columns; right++) {
						const line = times[down];
						if (line) line[right] = (line[right] ?? 0) + 1;
					}
			const allowed = { covered: [1], free: [0, 1], barred: [0] };
			cells.forEach((row, down) => {
				row.forEach((cell, right) => {
					expect(allowed[cell]).toContain(times[down]?.[right]);
				});
			});
		}),
	);
});

test("where no cell is barred there is one block, and none where nothing has to be covered", () => {
	const covered: Need[] = ["free", "covered", "free", "covered", "free"];
	const free: Need[] = covered.map(() => "free");
	expect(blocksOver([free, covered, free, covered, free])).toEqual([
		{ row: 1, column: 1, rows: 3, columns: 3 },
	]);
	expect(blocksOver([free, free])).toEqual([]);
});
