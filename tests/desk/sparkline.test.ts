/** Errors and values as recorded in live Sheets by truecalc/core, google.tsv; options: support.google.com/docs/answer/3093289. */
import { describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/desk";
import { type Drawing, drawingText } from "../../src/desk/sparkline/drawing";
import { type Shape, shapesOf } from "../../src/desk/sparkline/shapes";
import { entry, open } from "./open";

const TAB = "Sheet1";

async function typed(
	cells: Record<string, string>,
	locale?: "de_DE",
): Promise<Desk> {
	const desk = await open(entry(""), { locale });
	for (const [cell, text] of Object.entries(cells)) desk.type(TAB, cell, text);
	await desk.settle();
	return desk;
}

const BAR =
	'=SPARKLINE(1;HSTACK(VSTACK("charttype";"color1");VSTACK("bar";B1)))';

describe("SPARKLINE in a cell", () => {
	test.each([undefined, "de_DE"] as const)(
		"draws in the color that another cell holds, in locale %s",
		async (locale) => {
			const desk = await typed({ A1: BAR, B1: "#aa3311" }, locale);
			expect(desk.drawing(TAB, "A1")).toMatchObject({
				chart: "bar",
				values: [1],
				max: 1,
				colors: ["#aa3311", expect.any(String)],
			});
			desk.type(TAB, "B1", "#00aa00");
			await desk.settle();
			expect(desk.drawing(TAB, "A1")).toMatchObject({
				colors: ["#00aa00", expect.any(String)],
			});
		},
	);

	test("takes its options from a range of two columns, in any case; unknown ones are passed over", async () => {
		const desk = await typed({
			A1: "=SPARKLINE(D1:E1;B1:C4)",
			B1: "ChartType",
			C1: "BAR",
			B2: "max",
			C2: "10",
			B3: "Color2",
			C3: "blue",
			B4: "sparkle",
			C4: "yes",
			D1: "3",
			E1: "4",
		});
		expect(desk.drawing(TAB, "A1")).toMatchObject({
			values: [3, 4],
			max: 10,
			colors: [expect.any(String), "blue"],
		});
	});

	test("holds an empty text", async () => {
		const desk = await typed({
			A1: "=SPARKLINE({1,3,2})",
			C1: "=LEN(A1)",
			C2: "=SUM(A1:A1)",
		});
		expect(desk.read(TAB, "A1")).toEqual([[""]]);
		expect(desk.read(TAB, "C1:C2")).toEqual([[0], [0]]);
	});

	test.each([
		['=SPARKLINE(1;HSTACK("charttype";"pie"))', "#VALUE!"],
		['=SPARKLINE({1,2};{"charttype"})', "#REF!"],
		["=SPARKLINE(1)", "#N/A"],
		["=SPARKLINE(1/0)", "#DIV/0!"],
	])("%s is %s", async (formula, error) => {
		const desk = await typed({ A1: formula });
		expect(desk.read(TAB, "A1")).toEqual([[error]]);
		expect(desk.drawing(TAB, "A1")).toBeUndefined();
	});

	test("blanks and texts among the data are passed over", async () => {
		const desk = await typed({
			A1: "=SPARKLINE(B1:E1)",
			B1: "1",
			D1: "two",
			E1: "3",
		});
		expect(desk.drawing(TAB, "A1")).toMatchObject({
			points: [
				[0, 1],
				[3, 3],
			],
		});
	});

	test("two columns are x and y, within the ends that are said", async () => {
		const desk = await typed({
			A1: '=SPARKLINE({0,0;7,20;28,32};HSTACK(VSTACK("ymax";"linewidth");VSTACK(40;2)))',
		});
		expect(desk.drawing(TAB, "A1")).toMatchObject({
			chart: "line",
			points: [
				[0, 0],
				[7, 20],
				[28, 32],
			],
			from: [0, 0],
			to: [28, 40],
			widthPx: 2,
		});
	});

	test("is gone with its formula, with what it was drawn for, and where something is typed over it", async () => {
		const desk = await typed({
			A1: `=IF(B1="";"";${BAR.slice(1)})`,
			A2: BAR,
			A3: BAR,
			B1: "#aa3311",
		});
		expect(desk.drawing(TAB, "A1")).toBeDefined();
		desk.type(TAB, "B1", "");
		desk.type(TAB, "A2", "");
		desk.type(TAB, "A3", "5");
		await desk.settle();
		for (const cell of ["A1", "A2", "A3"])
			expect(desk.drawing(TAB, cell)).toBeUndefined();
		desk.type(TAB, "B1", "#112233");
		await desk.settle();
		expect(desk.drawing(TAB, "A1")).toMatchObject({
			colors: ["#112233", expect.any(String)],
		});
	});

	test("passes through a function that takes it on", async () => {
		const desk = await typed({
			A1: `=IFERROR(IF(TRUE;${BAR.slice(1)};"");"")`,
			B1: "#aa3311",
		});
		expect(desk.drawing(TAB, "A1")).toMatchObject({ chart: "bar" });
	});
});

describe("shapes", () => {
	const bar = (change: Partial<Drawing> = {}): Drawing =>
		({
			chart: "bar",
			values: [2, 1, 1],
			max: 8,
			colors: ["red", "blue"],
			fromRight: false,
			...change,
		}) as Drawing;
	const boxes = (shapes: Shape[]) =>
		shapes.map((shape) =>
			shape.kind === "box" ? [shape.x, shape.width, shape.color] : shape,
		);

	test("a bar's parts follow each other in two colors in turn, as wide as their share of max", () => {
		expect(boxes(shapesOf(bar(), 80, 10))).toEqual([
			[0, 20, "red"],
			[20, 10, "blue"],
			[30, 10, "red"],
		]);
		expect(boxes(shapesOf(bar({ fromRight: true }), 80, 10))[0]).toEqual([
			60,
			20,
			"red",
		]);
		// more than the whole is the whole
		expect(boxes(shapesOf(bar({ values: [20] }), 80, 10))).toEqual([
			[0, 80, "red"],
		]);
	});

	test("a line goes from its ends to its ends, upward", () => {
		const line: Drawing = {
			chart: "line",
			points: [
				[0, 0],
				[5, 10],
			],
			color: "green",
			widthPx: 2,
			from: [0, 0],
			to: [10, 10],
		};
		// 1 to 101 across and 1 to 21 up, half a line's width inside
		expect(shapesOf(line, 102, 22)).toEqual([
			{
				kind: "line",
				points: [
					[1, 21],
					[51, 1],
				],
				color: "green",
				widthPx: 2,
			},
		]);
	});

	test("columns stand on 0, those below hang", () => {
		const columns: Drawing = {
			chart: "column",
			values: [5, undefined, -5],
			colors: ["red", "red", "blue"],
			from: -5,
			to: 5,
		};
		expect(shapesOf(columns, 30, 20)).toEqual([
			{ kind: "box", x: 0, y: 0, width: 9, height: 10, color: "red" },
			{ kind: "box", x: 20, y: 10, width: 9, height: 10, color: "blue" },
		]);
	});

	test("are told in words, numbers rounded", () => {
		expect(drawingText(bar({ values: [1 / 3], max: 1 }))).toBe(
			"a bar of 0.3333 in red, the whole being 1",
		);
	});
});
