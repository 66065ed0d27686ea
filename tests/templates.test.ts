/** Every formula of the template, held to the rules that make it parse in every locale and calculate in every file. */
import { describe, expect, test } from "vitest";
import { registry } from "../src/functions";
import { tabArguments } from "../src/functions/tabs";
import { tabAnswers } from "../src/job/tabs/index";
import { type Area, areaOf } from "../src/sheets/reading/a1";
import { blockArea } from "../src/sheets/writing/page";
import { jobTabs, studioTabs } from "../templates";
import { lettersOf } from "../templates/blocks";
import type { Tab } from "../templates/plan";

const tabs: readonly Tab[] = [...studioTabs, ...jobTabs];

const formulas = tabs.flatMap((tab) => [
	...tab.blocks.flatMap((block) =>
		(block.rows ?? [])
			.flat()
			.filter((value): value is string => String(value).startsWith("="))
			.map((formula) => ({
				where: `${tab.name} ${block.at}`,
				formula,
				rule: false,
				area: blockArea(block),
			})),
	),
	...(tab.rules ?? []).map(({ range, when }) => ({
		where: `${tab.name} rule ${range}`,
		formula: when,
		rule: true,
		// A rule is written for the tab's own cells.
		area: areaOf(`A1:${lettersOf(tab.widths.length - 1)}${tab.rows}`),
	})),
]);

/** Strings emptied and tokens in braces taken out, so that only syntax is left. */
const bare = (formula: string) =>
	formula.replace(/"(?:[^"]|"")*"/g, '""').replace(/\{[^}]*\}/g, "x_");

/** Calls with the number of their arguments. */
function calls(formula: string): { name: string; count: number }[] {
	const found: { name: string; count: number }[] = [];
	const open: { name: string; count: number; empty: boolean }[] = [];
	for (const [piece] of bare(formula)
		.replace(/^=/, "")
		.matchAll(/[A-Z][A-Z0-9_.]*\(|[();]|[^();\s]+/g)) {
		const top = open.at(-1);
		if (piece === ")") {
			const call = open.pop();
			if (call?.name)
				found.push({ name: call.name, count: call.empty ? 0 : call.count });
		} else if (piece === ";") {
			if (top) top.count += 1;
		} else {
			if (top) top.empty = false;
			if (piece.endsWith("("))
				open.push({ name: piece.slice(0, -1), count: 1, empty: true });
		}
	}
	expect(open, `${formula}: brackets`).toEqual([]);
	return found;
}

// Built-ins of Google's function list (support page 25273) that the template uses, with their least and most arguments.
const BUILT_IN: Record<string, readonly [number, number]> = {
	ABS: [1, 1],
	AND: [1, 30],
	ARRAYFORMULA: [1, 1],
	COLUMN: [0, 1],
	COLUMNS: [1, 1],
	COUNT: [1, 30],
	COUNTA: [1, 30],
	COUNTIF: [2, 2],
	FILTER: [2, 30],
	FIND: [2, 3],
	HSTACK: [1, 30],
	IF: [2, 3],
	IFERROR: [1, 2],
	INDEX: [2, 3],
	INT: [1, 1],
	ISERROR: [1, 1],
	ISNUMBER: [1, 1],
	LEFT: [1, 2],
	MATCH: [2, 3],
	MAX: [1, 30],
	MID: [3, 3],
	MIN: [1, 30],
	MMULT: [2, 2],
	MOD: [2, 2],
	N: [1, 1],
	NA: [0, 0],
	OR: [1, 30],
	RIGHT: [1, 2],
	ROUND: [1, 2],
	ROUNDUP: [1, 2],
	ROW: [0, 1],
	ROWS: [1, 1],
	SEARCH: [2, 3],
	SPARKLINE: [1, 2],
	SUBSTITUTE: [3, 4],
	SUM: [1, 30],
	SUMIF: [2, 3],
	SUMPRODUCT: [1, 30],
	LARGE: [2, 2],
	SUMIFS: [3, 30],
	NOT: [1, 1],
	TODAY: [0, 0],
	WEEKDAY: [1, 2],
	TEXTJOIN: [3, 30],
	TRANSPOSE: [1, 1],
	TIMEVALUE: [1, 1],
	TRIM: [1, 1],
	VALUE: [1, 1],
	VLOOKUP: [3, 4],
	VSTACK: [1, 30],
};

/** A tab's function takes the studio's settings and each region that it needs. */
const REGIONS: Readonly<Record<string, readonly [number, number]>> =
	Object.fromEntries(
		tabAnswers.map((answer) => {
			const { length } = tabArguments(answer);
			return [answer.name, [length, length]];
		}),
	);

const namesOf = ({ names = {}, blocks }: Tab): string[] => [
	...Object.keys(names),
	...blocks.flatMap(({ name = [] }) => name),
];

/** Every region that a tab has, as formulas name it. */
const REGION_NAMES = [
	...studioTabs.flatMap((tab) => namesOf(tab).map((name) => `studio_${name}`)),
	...jobTabs.flatMap((tab) => namesOf(tab).map((name) => `{job}${name}`)),
];

const REFERENCE =
	/(?<![A-Za-z_$\d])\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?(?![(\w])/g;

/** Whether cells lie in an area, or beside it. */
const touches = (area: Area, cells: Area): boolean =>
	cells.row <= area.row + area.rows &&
	area.row <= cells.row + cells.rows &&
	cells.column <= area.column + area.columns &&
	area.column <= cells.column + cells.columns;

const VOLATILE = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|INDIRECT|OFFSET)\(/;

describe.each(formulas)("$where $formula", ({ where, formula, rule, area }) => {
	test("reads in every locale", () => {
		expect(bare(formula)).not.toMatch(/[,\\]/);
		expect(bare(formula)).not.toMatch(/\d\.|\.\d/);
		expect(formula.replace(/"(?:[^"]|"")*"/g, "")).not.toMatch(/\{[^a-zA-Z]/);
	});
	test("has nothing volatile, but for the days of the Jobs tab, which no custom function reads", () => {
		const isOfDays = where.startsWith("Jobs ") && /\bTODAY\(/.test(formula);
		if (isOfDays)
			for (const { name } of calls(formula))
				expect(REGIONS).not.toHaveProperty(name);
		else expect(bare(formula)).not.toMatch(VOLATILE);
	});
	test("is short enough to be read", () => {
		expect(formula.length).toBeLessThanOrEqual(200);
	});
	test("passes regions to the functions of tabs, and calls no others of its own", () => {
		for (const { name } of calls(formula))
			expect(registry.map((fn) => fn.name)).not.toContain(name);
		for (const [, name = "", given = ""] of formula.matchAll(
			/\b([A-Z_]+)\(([^()]*)\)/g,
		))
			if (name in REGIONS)
				for (const region of given.split(";"))
					expect(REGION_NAMES).toContain(region);
	});
	test("names cells by their keys, but those of its own table or list", () => {
		// A list counts the rows of its labels before it fills the cells beside them.
		const cells = bare(formula).replace(/\bROWS\([^()]*\)/g, "");
		expect(cells).not.toContain("!");
		const far = [...cells.matchAll(REFERENCE)]
			.map(([reference]) => reference.replace(/\$/g, ""))
			.filter((reference) => !touches(area, areaOf(reference)));
		expect(far).toEqual([]);
	});
	test("names real functions with a right number of arguments", () => {
		for (const { name, count } of calls(formula)) {
			if (name === "") continue;
			const [least, most] = BUILT_IN[name] ?? REGIONS[name] ?? [-1, -1];
			expect(count, name).toBeGreaterThanOrEqual(least);
			expect(count, name).toBeLessThanOrEqual(most);
			if (rule)
				expect(BUILT_IN, "rules call no custom function").toHaveProperty(name);
		}
	});
	test("a rule looks at its own tab only", () => {
		if (rule) expect(formula).not.toMatch(/!|\{job\}|studio/);
	});
});

test.each(tabs.map((tab) => [tab.name, tab] as const))(
	"%s: blocks lie on the grid and do not write over each other",
	(_, tab) => {
		const taken = new Map<string, string>();
		for (const { at, rows } of tab.blocks) {
			const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
			const column = [...letters].reduce(
				(sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
				0,
			);
			rows?.forEach((values, down) => {
				values.forEach((value, right) => {
					if (value === "") return;
					const cell = `${column + right},${Number(row) + down}`;
					expect(taken.get(cell), `${at} writes over`).toBeUndefined();
					taken.set(cell, at);
					expect(column + right).toBeLessThanOrEqual(tab.widths.length);
					expect(Number(row) + down).toBeLessThanOrEqual(tab.rows);
				});
			});
		}
	},
);

test("a job calls no more than 20 functions of tabs, and each of them once", () => {
	const called = jobTabs.flatMap((tab) =>
		tab.blocks.flatMap(({ rows = [] }) =>
			rows
				.flat()
				.flatMap((value) =>
					String(value).startsWith("=")
						? calls(String(value)).map(({ name }) => name)
						: [],
				)
				.filter((name) => name in REGIONS),
		),
	);
	expect(new Set(called).size).toBe(called.length);
	expect(called.length).toBeLessThanOrEqual(20);
	expect(called.length).toBeGreaterThan(0);
});
