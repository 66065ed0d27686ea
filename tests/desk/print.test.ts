import { expect, it } from "vitest";
import { csv } from "../../src/desk/csv";
import { cssOf } from "../../src/desk/page/printlook";
import { textTable } from "../../src/desk/print";

const table = (rows: (string | number)[][]) =>
	textTable(
		rows.map((row) =>
			row.map((cell) => ({
				text: String(cell),
				isNumber: typeof cell === "number",
			})),
		),
	);

it("numbers stand to the right, texts to the left", () =>
	expect(
		table([
			["Sand", 7.5, "kg"],
			["Fiber, long", 12, "kg"],
		]),
	).toBe("Sand         7.5  kg\nFiber, long   12  kg"));

it("a text runs on over blank cells, and widens no column of its own", () =>
	expect(
		table([
			["A long title over everything", "", ""],
			["1", "Water", 5],
			["All together", "", 12],
		]),
	).toBe(
		// columns of 1, 9 and 2 with gaps of 2: "All together" needs 12 of the first two, which have 1 + 2 + 5
		"A long title over everything\n1  Water       5\nAll together  12",
	));

it("every section has columns of its own, and blank rows between are one", () =>
	expect(
		table([
			["a very wide word", "x"],
			["", ""],
			["", ""],
			["b", "y"],
		]),
	).toBe("a very wide word  x\n\nb  y"));

it("leaves out columns with nothing under their heading", () =>
	expect(
		table([
			["Do", "Weigh", "Load 1", "Load 2", "Mind"],
			["Sand", 2, "", "", "damp"],
		]),
	).toBe("Do    Weigh  Mind\nSand      2  damp"));

// RFC 4180, section 2, rules 5 to 7: quotes around comma, line break and quote; quotes doubled; lines end in CRLF
it("CSV keeps values as they are", () =>
	expect(
		csv([
			["a,b", 'say "x"', "two\nlines", ""],
			[0.1, true, new Date(2027, 2, 9), ""],
			[new Date(2027, 2, 9, 6, 30), "", "", ""],
			["", "", "", ""],
		]),
	).toBe(
		'"a,b","say ""x""","two\nlines"\r\n0.1,TRUE,2027-03-09\r\n2027-03-09 06:30,,\r\n',
	));

it("a white cell has no line of the grid under it, others keep theirs", () => {
	const line = (rgb?: string) =>
		cssOf(rgb ? { bg: { rgb } } : {}, false).borderBottomColor;
	expect(line("#ffffff")).toBe("#fff");
	expect([line("#fdf3d8"), line()]).toEqual(["", ""]);
});
