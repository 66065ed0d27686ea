/** The desk: a local workbook with the built add-on in it, in Node and in the page alike. */
import { type Book, tabNamed } from "./book";
import type { CallOptions, Desk, DeskOptions } from "./contract";
import { ownZone } from "./dates";
import { differenceFrom } from "./difference";
import { compareCellByCell } from "./engine-private";
import { type Entrance, enter } from "./enter";
import { cellFunctions } from "./functions";
import { selectCells, typeInto } from "./hand";
import { LIMITS } from "./limits";
import { readScript, type Script } from "./script";
import type { Call, Host } from "./services/call";
import { settler } from "./settle";
import { snapshot } from "./snapshot";
import { forgetDrawings } from "./sparkline/cells";
import { besideFrom, besideOf, stateOf } from "./state";
import { takeTurns } from "./turns";
import { translateTyped } from "./typing";
import { viewOf } from "./view";
import { sentArguments } from "./wire";

export type * from "./contract";

function hostOf(book: Book, script: Script, options: DeskOptions): Host {
	const beside = besideFrom(options.saved);
	return {
		book,
		addOn: options.addOn,
		person: options.person ?? {},
		documentProperties: new Map(beside.documentProperties),
		userProperties: options.userProperties ?? new Map(beside.userProperties),
		fileId: options.fileId ?? "file",
		bound: options.bound ?? true,
		protections: beside.protections.map((note) => ({ ...note })),
		pictures: beside.pictures.map((note) => ({ ...note })),
		lastTab: 0,
		lockedBy: undefined,
		menus: [],
		sidebar: undefined,
		functionNames: script.names,
	};
}

/** As the panel calls: plain data in and out, private functions not found. */
function callFromOutside(
	entrance: Entrance,
	name: string,
	args: readonly unknown[],
	options: CallOptions,
) {
	if (name.endsWith("_")) throw new Error(`Script function not found: ${name}`);
	return enter(entrance, name, sentArguments(args), options);
}

function chosenFunction({ menus }: Host, label: string): string {
	const items = menus.flatMap((menu) => menu.items);
	const item = items.find((one) => one.label === label);
	if (!item) throw new Error(`there is no menu item ${label}`);
	return item.run;
}

/** The counts of one entry point's call. */
function countsOf(call: Call | undefined) {
	const numbers = [...(call?.tally.values() ?? [])];
	return {
		services: numbers.reduce((sum, count) => sum + count, 0),
		byName: Object.fromEntries(call?.tally ?? []),
		order: call?.order ?? [],
	};
}

/** A file's add-on is enabled once a menu function has run in it. */
function onOpen(entrance: Entrance, enabled: boolean): void {
	if (!entrance.script.names.includes("onOpen")) return;
	const mode = enabled ? "LIMITED" : "NONE";
	enter(entrance, "onOpen", [{ authMode: mode }], { mode });
}

/** Opens a workbook, runs the add-on's `onOpen` in it, and lets it settle. */
export async function openDesk(options: DeskOptions): Promise<Desk> {
	const { addOn, openRealm, locale = "en_US", saved } = options;
	let enabled = options.enabled ?? besideFrom(saved).enabled;
	const script = readScript(addOn.code);
	const limits = { ...LIMITS, ...options.limits };
	const functions = cellFunctions(
		script,
		openRealm(),
		() => enabled,
		limits.cellMs,
	);
	compareCellByCell();
	const engine = options.startEngine(functions.classes);
	const workbook = engine.api.createWorkbook(snapshot(saved));
	const timeZone = options.timeZone ?? ownZone();
	const book: Book = { engine, workbook, locale, timeZone };
	const host = hostOf(book, script, options);
	const stopTranslating = translateTyped(book);
	const stopForgetting = forgetDrawings(engine);
	const rest = settler(engine, workbook);
	const turns = takeTurns(rest);
	let last: Call | undefined;
	const listeners = new Set<() => void>();
	const entrance: Entrance = {
		host,
		script,
		openRealm,
		limits,
		ended: (call) => {
			last = call;
			for (const listener of listeners) listener();
		},
	};

	const desk: Desk = {
		...viewOf(book, functions),
		engine,
		call: (name, args = [], how = {}) =>
			turns.take(() => callFromOutside(entrance, name, args, how), !how.quick),
		onCalled(then) {
			listeners.add(then);
			return () => listeners.delete(then);
		},
		menus: () => host.menus,
		choose: (label) =>
			turns.take(() => {
				const name = chosenFunction(host, label);
				if (!enabled) turns.outdate();
				enabled = true;
				enter(entrance, name, []);
			}),
		pictures(tab) {
			const sheetId = tabNamed(book, tab).getSheetId();
			return host.pictures.filter((note) => note.sheetId === sheetId);
		},
		sidebar: () => host.sidebar,
		closeSidebar() {
			host.sidebar = undefined;
		},
		type: (tab, cell, text) => typeInto(book, tab, cell, text),
		select: (tab, range) => selectCells(book, tab, range),
		settle: () => turns.take(() => undefined),
		keepSettled: rest.keepSettled,
		counts: () => ({ ...countsOf(last), functions: functions.calls() }),
		resetCounts() {
			functions.reset();
			turns.outdate();
			last = undefined;
		},
		state: () => stateOf(host),
		differsFrom: (kept, { butShown = false } = {}) =>
			differenceFrom(kept, host, butShown),
		save: () => ({
			workbook: workbook.save(),
			beside: besideOf(host, enabled),
		}),
		dispose() {
			stopTranslating();
			stopForgetting();
			rest.dispose();
			engine.dispose();
		},
	};

	try {
		onOpen(entrance, enabled);
		if (options.quick) rest.postpone();
		else await desk.settle();
		return desk;
	} catch (error) {
		desk.dispose();
		throw error;
	}
}
