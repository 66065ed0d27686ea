/** The built-in formulas of the demo's workbook, calculated a second time by LibreOffice. */
import { beforeAll, describe, expect, it } from "vitest";
import { cellA1 } from "../../src/desk/a1";
import { openHeadlessDesk, readAddOn } from "../../src/desk/headless";
import { readScript } from "../../src/desk/script";
import { type BookCell, type BookData, bookData, type Shown } from "./cells";
import { recalculated } from "./libreoffice";
import { joinsErrors, joinsWhatMayFail, PROBE } from "./probe";
import { readXlsx, xlsxFile } from "./xlsx";

/** What Debian's LibreOffice (7.4) does not know; these formulas stand in the file as values. */
const UNKNOWN = /\b(?:FILTER|UNIQUE|SEQUENCE|LET|XLOOKUP|SORT)\(/;

const own = new RegExp(
	`\\b(?:${readScript(readAddOn("dist").code).names.join("|")})\\(`,
);
const bare = (formula: string) => formula.replace(/"(?:[^"]|"")*"/g, '""');

/** Whether the second engine is to calculate the cell. */
function isBuiltIn({ formula }: BookCell): boolean {
	return (
		formula !== undefined &&
		!own.test(bare(formula)) &&
		!UNKNOWN.test(bare(formula))
	);
}

async function demoBook(units: "metric" | "us"): Promise<BookData> {
	const desk = await openHeadlessDesk("dist", { enabled: true });
	try {
		await desk.call("createDemoJob", [units]);
		expect(desk.errors()).toEqual([]);
		return bookData(desk);
	} finally {
		desk.dispose();
	}
}

function same(first: Shown, second: Shown): boolean {
	if (typeof first !== "number" || typeof second !== "number")
		return first === second;
	return (
		Math.abs(first - second) <=
		1e-9 * Math.max(Math.abs(first), Math.abs(second))
	);
}

interface Compared {
	at: string;
	formula: string | undefined;
	isBlank: boolean;
	here: Shown;
	there: Shown;
}

/** Every cell that a built-in formula fills, and what is there after both calculations. */
function compared(data: BookData, second: ReturnType<typeof readXlsx>) {
	return data.tabs.flatMap(({ name, cells }) => {
		const known = new Map(
			cells.map((cell) => [cellA1(cell.row, cell.column), cell]),
		);
		return cells.filter(isBuiltIn).flatMap(({ row, column, fills, formula }) =>
			Array.from({ length: fills.rows * fills.columns }, (_, index) => {
				const at = cellA1(
					row + Math.floor(index / fills.columns),
					column + (index % fills.columns),
				);
				return {
					at: `${name}!${at}`,
					formula,
					isBlank: known.get(at)?.isBlank ?? false,
					here: known.get(at)?.shown ?? "",
					there: second.get(name)?.get(at) ?? "",
				};
			}),
		);
	});
}

const UNITS = ["metric", "us"] as const;
const books: BookData[] = [];
let calculated: ReturnType<typeof readXlsx>[] = [];
let joinsRight = false;

/** Whether the second engine's answer for the formula counts. */
const counts = (formula: string | undefined) =>
	joinsRight || !joinsWhatMayFail(formula ?? "");

beforeAll(async () => {
	for (const units of UNITS) books.push(await demoBook(units));
	const files = [...books, PROBE].map((book) => xlsxFile(book, isBuiltIn));
	calculated = recalculated(files).map(readXlsx);
	const [, , probe] = calculated;
	joinsRight = probe !== undefined && joinsErrors(probe);
}, 480_000);

/** A blank cell that a formula passes on stays blank in Sheets and on the desk; LibreOffice makes it 0. */
const isPassedOn = ({ isBlank, there }: Compared) => isBlank && there === 0;

const others = (cells: readonly Compared[]) =>
	cells.filter((cell) => !same(cell.here, cell.there) && !isPassedOn(cell));

describe.each(UNITS)("the demo, %s", (units) => {
	const both = () => {
		const index = UNITS.indexOf(units);
		const book = books[index];
		const second = calculated[index];
		if (!book || !second) throw new Error("nothing was calculated");
		return { book, second };
	};

	it("shows in every cell of a built-in formula what LibreOffice calculates", () => {
		const { book, second } = both();
		const cells = compared(book, second).filter(({ formula }) =>
			counts(formula),
		);
		expect(others(cells)).toEqual([]);
		expect(cells.length).toBeGreaterThan(500);
		// numbers, and not all of them nothing
		const numbers = cells.filter(({ there }) => Number(there) !== 0);
		expect(numbers.length).toBeGreaterThan(100);
	});

	it("leaves hardly a formula to the desk alone", () => {
		const left = both()
			.book.tabs.flatMap((tab) => tab.cells)
			.filter(
				({ formula = "" }) =>
					!own.test(bare(formula)) &&
					(UNKNOWN.test(bare(formula)) || !counts(formula)),
			)
			.map(
				({ tab, row, column, formula }) =>
					`${tab}!${cellA1(row, column)} =${formula}`,
			);
		console.log(
			`${units}, left out since this LibreOffice does not know or miscounts them:\n${left.join("\n")}`,
		);
		const formulas = both()
			.book.tabs.flatMap((tab) => tab.cells)
			.filter(({ formula = "" }) => formula && !own.test(bare(formula)));
		expect(left.length / formulas.length).toBeLessThan(0.05);
	});

	it("would show a difference: a number of the desk's changed by a millionth", () => {
		const { book, second } = both();
		const [cell] = compared(book, second).filter(
			({ here }) => typeof here === "number" && here !== 0,
		);
		if (!cell) throw new Error("no formula shows a number");
		const changed = { ...cell, here: Number(cell.here) * (1 + 1e-6) };
		expect(others([changed])).toEqual([changed]);
	});
});
