import { expect, it } from "vitest";
import {
	columnIndex,
	columnLetters,
	formatA1,
	formatAbsolute,
	parseA1,
	quoteTab,
	splitReference,
} from "../../src/desk/a1";

// counted by hand: A..Z are 26, so AA is the 27th and ZZ the 702nd, AAA the 703rd
it.each([
	["A", 0],
	["Z", 25],
	["AA", 26],
	["ZZ", 701],
	["AAA", 702],
])("column %s is %d from 0", (letters, index) => {
	expect(columnIndex(letters)).toBe(index);
	expect(columnLetters(index)).toBe(letters);
});

it.each([
	["B2", [1, 1, 1, 1]],
	["$A$1:C4", [0, 0, 3, 2]],
	["C4:A1", [0, 0, 3, 2]],
	["B:C", [0, 1, 9, 2]],
	["2:3", [1, 0, 2, 4]],
	["A2:A", [1, 0, 9, 0]],
])("reads %s on 10 rows and 5 columns", (text, corners) => {
	const block = parseA1(text, 10, 5);
	expect(
		block && [block.startRow, block.startColumn, block.endRow, block.endColumn],
	).toEqual(corners);
});

it.each(["", "job1_tones", "A", "1", "A1:B2:C3", "A1!", "ABCD1"])(
	"finds no cells in %s",
	(text) => expect(parseA1(text, 10, 5)).toBeUndefined(),
);

it("writes what it reads", () => {
	const block = { startRow: 0, startColumn: 0, endRow: 2, endColumn: 1 };
	expect(formatA1(block)).toBe("A1:B3");
	expect(formatAbsolute(block)).toBe("$A$1:$B$3");
	expect(quoteTab("Ann's")).toBe("'Ann''s'");
	expect(splitReference("'Ann''s'!A1")).toEqual({ tab: "Ann's", range: "A1" });
	expect(splitReference("Job!A1:B2")).toEqual({ tab: "Job", range: "A1:B2" });
	expect(splitReference("A1")).toEqual({ tab: undefined, range: "A1" });
});
