/** Rules of the platform that no other test here holds: how long, how often and in which order things are called. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openHeadlessDesk } from "../../src/desk/headless";
import { close, entry, open } from "./open";

const WAIT = "var end = Date.now() + 80; while (Date.now() < end) {}";

describe("a call that takes too long", () => {
	const limits = { cellMs: 40, triggerMs: 40, callMs: 40 };

	it("in a cell is an error with the platform's words", async () => {
		const desk = await open(`function SLOW() { ${WAIT} return 1; }`, {
			limits,
		});
		desk.type("Sheet1", "A1", "=SLOW()");
		await desk.settle();
		expect(desk.errorAt("Sheet1", "A1")).toMatchObject({
			shown: "#ERROR!",
			message: "Exceeded maximum execution time (line 0).",
		});
	});

	it("in a menu or the panel throws", async () => {
		const desk = await open(entry(WAIT), { limits });
		await expect(desk.call("run")).rejects.toThrow("Exceeded maximum");
	});

	it("in onOpen breaks it", async () => {
		const code = `function onOpen() { ${WAIT} }`;
		await expect(open(code, { limits })).rejects.toThrow("Exceeded maximum");
	});

	it("but not one within its time", async () => {
		const desk = await open(`function SLOW() { ${WAIT} return 1; }`);
		desk.type("Sheet1", "A1", "=SLOW()");
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([[1]]);
	});
});

describe("a function that", () => {
	it.each([
		["asks chance", "return Math.random();"],
		["asks the clock", "return Date.now() + Math.random();"],
		[
			"fails now and then",
			"if (Math.random() < 2) throw new Error(String(Math.random()));",
		],
	])("%s is found out: it may be called twice", async (_, body) => {
		const desk = await open(`function UNSURE() { ${body} }`);
		desk.type("Sheet1", "A1", "=UNSURE()");
		await desk.settle();
		expect(desk.errorAt("Sheet1", "A1")?.message).toBe(
			"UNSURE answers otherwise when it is called again with the same arguments",
		);
	});

	it("returns a promise is refused", async () => {
		const desk = await open("async function LATER() { return 1; }");
		desk.type("Sheet1", "A1", "=LATER()");
		await desk.settle();
		expect(desk.errorAt("Sheet1", "A1")?.message).toContain(
			"answered object, which no cell can hold",
		);
	});

	it("gets more arguments than it names is called all the same", async () => {
		const desk = await open("function ONE(a) { return a; }");
		desk.type("Sheet1", "A1", "=ONE(1,2,3)");
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([[1]]);
	});
});

it("formulas are calculated in an order of chance, what they read first", async () => {
	// the first calls of 8 functions, told apart by their argument; a global would not outlive a call, so each tells the time
	const code = `function SEEN(n) { return n; }\nfunction ALL(rows) { return rows.length; }`;
	const desk = await open(
		entry(
			"s.getRange('A1:A8').setValues([[1], [2], [3], [4], [5], [6], [7], [8]]); s.getRange('B1:B8').setFormulas([1, 2, 3, 4, 5, 6, 7, 8].map(function (n) { return ['=A' + n + '*A$1']; })); s.getRange('C1').setFormula('=SUM(B1:B8)');",
			code,
		),
	);
	await desk.call("run");
	const generator = desk.engine.univer
		.__getInjector()
		.get(
			(await import("@univerjs/engine-formula")).IFormulaDependencyGenerator,
		) as unknown as { generate(): Promise<{ row: number; column: number }[]> };
	const orders = new Set<string>();
	const own = generator.generate;
	generator.generate = async () => {
		const list = await own();
		if (list.length > 0) {
			const run = list.map(({ row, column }) => `${row},${column}`).reverse();
			expect(run.at(-1)).toBe("0,2");
			orders.add(run.join(" "));
		}
		return list;
	};
	for (let value = 2; value < 12; value++) {
		desk.type("Sheet1", "A1", String(value));
		await desk.settle();
		// by hand: A1 × (A1 + 2 + … + 8)
		expect(desk.read("Sheet1", "C1")).toEqual([[value * (value + 35)]]);
	}
	expect(orders.size).toBeGreaterThan(3);
});

describe("the built script", () => {
	const DIST = join(import.meta.dirname, "../../dist");

	it.each(["NONE", "LIMITED", "FULL"] as const)(
		"opens in %s with its menu, and touches nothing else",
		async (mode) => {
			close();
			const desk = await openHeadlessDesk(DIST, { enabled: false });
			try {
				const before = desk.state();
				await desk.call("onOpen", [{ authMode: mode }], { mode });
				const touched = Object.keys(desk.counts().byName);
				expect(touched.length).toBeGreaterThan(0);
				expect(
					touched.filter(
						(name) =>
							!/^(?:SpreadsheetApp\.getUi|Ui\.createAddonMenu|Menu\.\w+)$/.test(
								name,
							),
					),
				).toEqual([]);
				expect(desk.menus()[0]?.items.length).toBeGreaterThan(1);
				expect(desk.state()).toBe(before);
			} finally {
				desk.dispose();
			}
		},
	);

	it("is installed with its menu", async () => {
		close();
		const desk = await openHeadlessDesk(DIST, { enabled: false });
		try {
			await desk.call("onInstall", [{ authMode: "FULL" }]);
			expect(desk.menus()).toHaveLength(1);
		} finally {
			desk.dispose();
		}
	});

	it("names a function of its own in every menu item", async () => {
		close();
		const desk = await openHeadlessDesk(DIST, { enabled: false });
		const code = readFileSync(join(DIST, "Code.js"), "utf8");
		try {
			for (const { run } of desk.menus().flatMap(({ items }) => items))
				expect(code).toMatch(new RegExp(`^function ${run}\\(`, "m"));
		} finally {
			desk.dispose();
		}
	});
});
