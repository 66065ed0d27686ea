/** The desk: a local workbook with the built add-on in it, in Node and in the page alike. */
import type { IWorkbookData } from "@univerjs/core";
import { formatA1 } from "./a1";
import { type Book, blockOf, mapBlock, sheets, tabNamed } from "./book";
import type { CellError, Desk, DeskOptions, SavedWorkbook } from "./contract";
import { type Entrance, enter } from "./enter";
import { cellFunctions } from "./functions";
import { namedRange } from "./names";
import { readScript } from "./script";
import type { Call, Host } from "./services/call";
import { checkValid } from "./services/validation";
import { settler } from "./settle";
import { besideFrom, besideOf, stateOf } from "./state";
import { translateTyped } from "./typing";
import { displayAt, formulaAt, isCalculated, rawAt, valueAt } from "./values";
import { sentArguments } from "./wire";
import { typedCell, writeCells } from "./writing";

export type * from "./contract";

let opened = 0;

/** The engine's caches are kept by id in its modules, so every workbook gets a fresh one. */
function snapshot(saved: SavedWorkbook | undefined): Partial<IWorkbookData> {
	opened += 1;
	const id = `workbook${opened}`;
	if (saved) return { ...(saved.workbook as Partial<IWorkbookData>), id };
	return {
		id,
		name: "Workbook",
		sheetOrder: ["tab0"],
		sheets: {
			tab0: {
				id: "tab0",
				name: "Sheet1",
				rowCount: 1000,
				columnCount: 26,
				defaultColumnWidth: 100,
				defaultRowHeight: 21,
				defaultStyle: { ff: "Arial", fs: 10, vt: 3 },
			},
		},
	};
}

const ERROR_TEXT =
	/^#(?:ERROR!|REF!|N\/A|NAME\?|VALUE!|NUM!|DIV\/0!|NULL!|CALC!)$/;

/** Opens a workbook, runs the add-on's `onOpen` in it, and lets it settle. */
export async function openDesk(options: DeskOptions): Promise<Desk> {
	const { addOn, openRealm, locale = "en_US", person = {} } = options;
	const beside = besideFrom(options.saved);
	let enabled = options.enabled ?? beside.enabled;
	const script = readScript(addOn.code);
	const functions = cellFunctions(script, openRealm(), () => enabled);
	const engine = options.startEngine(functions.classes);
	const workbook = engine.api.createWorkbook(snapshot(options.saved));
	const book: Book = { engine, workbook, locale };
	const host: Host = {
		book,
		addOn,
		person,
		documentProperties: new Map(beside.documentProperties),
		userProperties: new Map(beside.userProperties),
		protections: beside.protections,
		lockedBy: undefined,
		menus: [],
		sidebar: undefined,
		functionNames: script.names,
	};
	const stopTranslating = translateTyped(book);
	const rest = settler(engine, workbook);
	/** True when formulas would answer something else than they did, though nothing was edited. */
	let stale = false;
	let last: Call | undefined;
	const entrance: Entrance = {
		host,
		script,
		openRealm,
		ended: (call) => {
			last = call;
		},
	};

	let turn: Promise<unknown> = Promise.resolve();
	/** Calls wait for each other, and for the calculation in between. */
	const queued = <T>(work: () => T): Promise<T> => {
		const done = turn.then(async () => {
			await rest.settle();
			try {
				return work();
			} finally {
				await rest.settle(stale);
				stale = false;
			}
		});
		turn = done.catch(() => undefined);
		return done;
	};

	const errorAt = (tab: string, cell: string): CellError | undefined => {
		const sheet = tabNamed(book, tab);
		const { startRow: row, startColumn: column } = blockOf(sheet, cell);
		const shown = rawAt(book, sheet, row, column);
		const isError =
			typeof shown === "string" &&
			ERROR_TEXT.test(shown) &&
			isCalculated(book, sheet, row, column);
		if (!isError) return undefined;
		const caller = { sheetId: sheet.getSheetId(), row, column };
		return {
			tab,
			cell,
			shown,
			message: functions
				.messagesAt(caller, formulaAt(book, sheet, row, column))
				.join("; "),
		};
	};

	const desk: Desk = {
		engine,
		call: (name, args = [], callOptions = {}) =>
			queued(() => {
				const sent = sentArguments(args);
				if (name.endsWith("_"))
					throw new Error(`Script function not found: ${name}`);
				return enter(entrance, name, sent, callOptions);
			}),
		menus: () => host.menus,
		choose: (label) =>
			queued(() => {
				const item = host.menus
					.flatMap(({ items }) => items)
					.find((one) => one.label === label);
				if (!item) throw new Error(`there is no menu item ${label}`);
				stale = !enabled;
				enabled = true;
				enter(entrance, item.run, []);
			}),
		sidebar: () => host.sidebar,
		closeSidebar() {
			host.sidebar = undefined;
		},
		type(tab, cell, text) {
			const sheet = tabNamed(book, tab);
			const { startRow: row, startColumn: column } = blockOf(sheet, cell);
			const content = typedCell(book, sheet, row, column, text, "person");
			if (content?.v !== null && content?.v !== undefined)
				checkValid(book, sheet, row, column, content.v);
			writeCells(book, sheet, { [row]: { [column]: content } });
		},
		select(tab, range) {
			const sheet = workbook.getSheetByName(tab);
			if (!sheet) throw new Error(`there is no tab ${tab}`);
			workbook.setActiveSheet(sheet);
			sheet.setActiveSelection(sheet.getRange(range));
		},
		read(tab, range) {
			const sheet = tabNamed(book, tab);
			return mapBlock(blockOf(sheet, range), (row, column) =>
				valueAt(book, sheet, row, column),
			);
		},
		display(tab, range) {
			const sheet = tabNamed(book, tab);
			return mapBlock(blockOf(sheet, range), (row, column) =>
				displayAt(book, sheet, row, column),
			);
		},
		formula(tab, cell) {
			const sheet = tabNamed(book, tab);
			const { startRow, startColumn } = blockOf(sheet, cell);
			return formulaAt(book, sheet, startRow, startColumn);
		},
		named(name) {
			const cells = namedRange(book, name)?.cells;
			return (
				cells && { tab: cells.sheet.getName(), range: formatA1(cells.block) }
			);
		},
		tabs: () => sheets(book).map((sheet) => sheet.getName()),
		errorAt,
		errors: () =>
			sheets(book).flatMap((sheet) => {
				const whole = {
					startRow: 0,
					startColumn: 0,
					endRow: sheet.getRowCount() - 1,
					endColumn: sheet.getColumnCount() - 1,
				};
				return mapBlock(whole, (row, column) => {
					const value = rawAt(book, sheet, row, column);
					if (typeof value !== "string" || !value.startsWith("#")) return [];
					const cell = formatA1({
						startRow: row,
						endRow: row,
						startColumn: column,
						endColumn: column,
					});
					return errorAt(sheet.getName(), cell) ?? [];
				}).flat(2);
			}),
		settle: () => queued(() => undefined),
		keepSettled: rest.keepSettled,
		counts: () => ({
			services: [...(last?.tally.values() ?? [])].reduce((a, b) => a + b, 0),
			byName: Object.fromEntries(last?.tally ?? []),
			functions: functions.calls(),
		}),
		resetCounts() {
			functions.reset();
			stale = true;
			last = undefined;
		},
		state: () => stateOf(host),
		save: () => ({
			workbook: workbook.save(),
			beside: besideOf(host, enabled),
		}),
		dispose() {
			stopTranslating();
			rest.dispose();
			engine.dispose();
		},
	};

	if (script.names.includes("onOpen")) {
		const mode = enabled ? "LIMITED" : "NONE";
		enter(entrance, "onOpen", [{ authMode: mode }], { mode });
	}
	await desk.settle();
	return desk;
}
