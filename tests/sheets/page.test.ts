import { describe, expect, test } from "vitest";
import { a1Of, areaOf } from "../../src/sheets/reading/a1";
import { jobNumbers, nextJobNumber } from "../../src/sheets/reading/rangenames";
import { numberFormat } from "../../src/sheets/writing/formats";
import { LOOKS, MARKS, type Style } from "../../src/sheets/writing/looks";
import { type Page, pageOf } from "../../src/sheets/writing/page";
import { filled, type Tokens } from "../../src/sheets/writing/tokens";
import { widthRuns } from "../../src/sheets/writing/widths";
import type { Tab } from "../../templates/plan";

const TOKENS: Tokens = {
	units: "us",
	job: "job7_",
	tabs: { Job: "7 Job", Tones: "7 Ed's tones" },
};
const TAB: Tab = {
	name: "Job",
	color: "#123456",
	rows: 4,
	widths: [120, 100, 100],
	blocks: [
		{ at: "A1", look: "title", rows: [["Mix, {mass}", "={job}client"]] },
		{
			at: "A2",
			look: "input",
			size: [3, 3],
			formats: ["text", "mass", "length"],
			name: "pieces",
		},
		{
			at: "C2",
			look: "result",
			rows: [["={tab:Tones}!B2"]],
			formats: "length",
			wrap: true,
		},
		{
			at: "A4",
			look: "input",
			size: [1, 1],
			name: "client",
			note: "In {length}",
			align: "right",
		},
	],
	names: { two: "A2:B2" },
};
const page = (slots = {}): Page =>
	pageOf({ tab: TAB, tokens: TOKENS, prefix: "job7_", slots });
const values = ({ cells }: Page) =>
	cells.map((row) => row.map(({ value }) => value));

describe("a page", () => {
	test("has a template's texts and formulas with their tokens filled", () => {
		expect(values(page())).toEqual([
			["'Mix, lb", "=job7_client", ""],
			["", "", "='7 Ed''s tones'!B2"],
			["", "", ""],
			["", "", ""],
		]);
	});

	test("has the data of a job in its named blocks, marked as text and never a formula", () => {
		expect(
			values(page({ pieces: [["=1+1", 2], ["-x"]], client: "'A'" })),
		).toEqual([
			["'Mix, lb", "=job7_client", ""],
			["'=1+1", 2, "='7 Ed''s tones'!B2"],
			["'-x", "", ""],
			["''A'", "", ""],
		]);
	});

	test("refuses more rows than a block has", () => {
		expect(() => page({ pieces: Array(4).fill(["a"]) })).toThrow(
			"pieces has 3 rows, not 4",
		);
	});

	test("lets later blocks lie over earlier ones", () => {
		const { cells } = page();
		expect(cells[1]?.map(({ look }) => look)).toEqual([
			"input",
			"input",
			"result",
		]);
		expect(cells[1]?.map(({ wrap }) => wrap)).toEqual([false, false, true]);
		expect(cells[1]?.map(({ format }) => format)).toEqual([
			"@",
			"General",
			"0.00",
		]);
		expect(cells[2]?.map(({ format }) => format)).toEqual([
			"@",
			"General",
			"@",
		]);
		expect(cells[3]?.map(({ align }) => align)).toEqual([
			"right",
			"normal",
			"normal",
		]);
	});

	test("puts headings over numbers to the right, like them", () => {
		const headed: Tab = {
			name: "Job",
			rows: 4,
			widths: [90, 90, 90, 90, 90, 90],
			blocks: [
				{ at: "A1", look: "heading", size: [1, 6] },
				{ at: "F1", look: "heading", size: [1, 1], align: "left" },
				{ at: "A2", look: "note", size: [1, 6] },
				{
					at: "A3",
					look: "input",
					size: [2, 6],
					formats: ["number", "text", "length", "date", "text", "mass"],
				},
				{ at: "D3", look: "input", size: [1, 1], align: "left" },
				{ at: "E3", look: "input", size: [1, 1], align: "right" },
			],
		};
		const { cells } = pageOf({
			tab: headed,
			tokens: TOKENS,
			prefix: "",
			slots: {},
		});
		expect(cells[0]?.map(({ align }) => align)).toEqual([
			"right", // a number typed in has no format of its own
			"normal",
			"normal", // a length typed in is text
			"normal", // the date under it stands at the left
			"right", // the text under it stands at the right
			"left", // said of the heading itself
		]);
	});

	test("says what is named, what is typed in and what is noted where", () => {
		expect(page()).toMatchObject({
			name: "7 Job",
			names: { job7_pieces: "A2:C4", job7_client: "A4", job7_two: "A2:B2" },
			inputs: ["A2:C4", "A4"],
		});
		expect(
			page().cells.map((row) => row.map(({ note }) => note)),
		).toMatchObject({ 3: { 0: "In in" } });
		expect(
			page()
				.cells.flat()
				.filter(({ note }) => note),
		).toHaveLength(1);
	});

	test("must have room for its blocks", () => {
		const tab = { ...TAB, rows: 3 };
		expect(() =>
			pageOf({ tab, tokens: TOKENS, prefix: "", slots: {} }),
		).toThrow("leaves the grid");
	});
});

describe("tokens", () => {
	test.each([["{weight}"], ["{tab:Cost}"], ["{tab}"]])(
		"%s stands for nothing",
		(text) => {
			expect(() => filled(text, TOKENS)).toThrow("stands for nothing here");
		},
	);

	test("a studio tab has no job", () => {
		expect(() => filled("{job}client", { units: "us", tabs: {} })).toThrow(
			"{job} stands for nothing here",
		);
	});
});

describe("A1 notation", () => {
	test.each([
		["A1", 0, 0, 1, 1],
		["B2:C4", 1, 1, 3, 2],
		["Z9:AA9", 8, 25, 1, 2],
		["ZZ1:AAA1", 0, 701, 1, 2],
	])("%s", (a1, row, column, rows, columns) => {
		expect(areaOf(a1)).toEqual({ row, column, rows, columns });
		expect(a1Of({ row, column, rows, columns })).toBe(a1);
	});
});

describe("widths", () => {
	const painted = (widths: number[]) => {
		const columns = widths.map(() => 100);
		for (const { first, count, width } of widthRuns(widths))
			columns.fill(width, first - 1, first - 1 + count);
		return columns;
	};
	test.each([
		[[100, 100], 0],
		[[230, 100, 470], 2],
		[[190, 190, 90, 90, 90], 2],
		[[60, 250, 60, 60, 300, 60], 3],
		// 60 over all, 90 over the middle, 200 in it
		[[60, 90, 200, 90, 60], 3],
		// 100 between needs no call
		[[100, 60, 100, 60, 100], 2],
	])("%j need %d calls", (widths, calls) => {
		expect(widthRuns(widths)).toHaveLength(calls);
		expect(painted(widths)).toEqual(widths);
	});
});

describe("job numbers", () => {
	test("are read from names, whoever wrote them", () => {
		expect(
			jobNumbers([
				"job12_a",
				"JOB3_b",
				"job12_c",
				"jobs_1",
				"job_2",
				"myjob4_x",
			]),
		).toEqual([3, 12]);
	});

	test.each([
		[[], 1],
		[[1], 2],
		[[1, 2, 3], 4],
		[Array.from({ length: 60 }, (_, index) => index + 1), 61],
	])("after jobs %j comes %d", (jobs: number[], next) => {
		let asked = 0;
		const number = nextJobNumber((job) => {
			asked += 1;
			return jobs.includes(job);
		});
		expect(number).toBe(next);
		expect(asked).toBeLessThanOrEqual(2 * Math.ceil(Math.log2(next)) + 1);
	});

	test("are never one that is taken, where some are missing", () => {
		const jobs = [1, 2, 4, 7, 8];
		expect(jobs).not.toContain(nextJobNumber((job) => jobs.includes(job)));
	});
});

describe("looks", () => {
	/** Contrast of two colors, by WCAG 2.1, "relative luminance" and "contrast ratio". */
	const luminance = (hex: string) => {
		const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
			const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
			return c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
		});
		return 0.2126 * r + 0.7152 * g + 0.0722 * b;
	};
	const contrast = (a: string, b: string) => {
		const [low = 0, high = 0] = [luminance(a), luminance(b)].sort(
			(x, y) => x - y,
		);
		return (high + 0.05) / (low + 0.05);
	};

	const marks = Object.entries(MARKS).map(
		([mark, background]) => [mark, { background }] as [string, Style],
	);
	test.each([...Object.entries(LOOKS), ...marks])(
		"%s can be read: 4.5 to 1 at least",
		(_, { background = "#ffffff", color = "#000000" }) => {
			expect(contrast(background, color)).toBeGreaterThanOrEqual(4.5);
		},
	);

	test("only inputs have the tint of inputs", () => {
		const tinted = Object.entries(LOOKS).filter(
			([, { background }]) => background === LOOKS.input.background,
		);
		expect(tinted.map(([look]) => look)).toEqual(["input"]);
		expect(LOOKS.result.background).toBeUndefined();
	});
});

describe("number formats", () => {
	test("keep a typed length as text, and a calculated one a number", () => {
		expect(numberFormat("length", "input", "us")).toBe("@");
		expect(numberFormat("length", "result", "us")).toBe("0.00");
		expect(numberFormat("text", "result", "us")).toBe("General");
	});

	test("leave what is typed the digits that it has", () => {
		expect(numberFormat("weighed", "input", "metric")).toBe("General");
		expect(numberFormat("mass", "input", "us")).toBe("General");
		expect(numberFormat("money", "input", "us")).toBe("#,##0.00");
	});

	test("show a weight as fine as a scale of 5 g does", () => {
		expect(numberFormat("weighed", "large", "metric")).toBe("#,##0.0##");
		expect(numberFormat("mass", "result", "metric")).toBe("#,##0.00");
	});
});
