import { describe, expect, test } from "vitest";
import { compared, publishedRows } from "./checks";
import { differences } from "./difference";

const rows = await publishedRows();

describe("published numbers", () => {
	test.each(
		rows.map(
			(row, i) =>
				[
					`${row.row.function}, ${row.row.locator ?? row.from.locator} (${row.file} ${i})`,
					row,
				] as const,
		),
	)("%s", (_, row) => {
		const found = compared(row);
		expect(found).not.toEqual([]);
		expect(found.filter(({ within }) => !within)).toEqual([]);
	});
});

describe("comparing", () => {
	test.each([
		["outside the tolerance", 10.06, 10, 0.05],
		["outside a relative tolerance", 10.2, 10, { rel: 0.01 }],
		["not a number", "10", 10, 0.05],
		["NaN", Number.NaN, 10, 0.05],
		["of another size", [[1], [2]], [[1]], 0.05],
		["another text", "keep", "add", 0],
		["one wrong cell", [[1, 2]], [[1, 3]], 0.05],
		["a value where rows are due", 1, [[1]], 0.05],
	])("%s does not pass", (_, got, expected, tolerance) => {
		expect(differences(got, expected, tolerance)).toContainEqual(
			expect.objectContaining({ within: false }),
		);
	});

	test.each([
		["half a digit away", 10.05, 10, 0.05],
		["a cell that is not printed", [[1, 99]], [[1, null]], 0],
		["equal texts", "add", "add", 0],
	])("%s passes", (_, got, expected, tolerance) => {
		expect(differences(got, expected, tolerance)).not.toContainEqual(
			expect.objectContaining({ within: false }),
		);
	});
});
