/** What the desk takes and offers, headless and in the page alike. */
import type { Univer } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { BaseFunction, IFunctionNames } from "@univerjs/engine-formula";
import type { Limits } from "./limits";
import type { Drawing } from "./sparkline/drawing";

/** A function class of the engine and the name it has in formulas. */
export type EngineFunction = [
	new (name: IFunctionNames) => BaseFunction,
	string,
];

/** One running Univer. Only one may live in a process at a time. */
export interface Engine {
	univer: Univer;
	api: FUniver;
	dispose(): void;
}

/** Starts Univer with these functions; headless or with a grid is the caller's choice. */
export type StartEngine = (functions: EngineFunction[]) => Engine;

/**
 * A bare script context: what Apps Script's has and nothing else.
 * `compile` makes a function of the given parameter names and body inside it.
 */
export interface Realm {
	compile(
		parameters: readonly string[],
		body: string,
	): (...values: unknown[]) => unknown;
	/** Names of the context's own global variables. */
	globals(): string[];
}

/** The files of the built add-on, as text. */
export interface AddOn {
	/** Title of its menu. */
	name: string;
	code: string;
	/** Panel pages by file name without `.html`. */
	pages: Readonly<Record<string, string>>;
	manifest?: string;
}

export type Locale = "en_US" | "de_DE" | "fr_FR" | "pt_BR";
export type Mode = "NONE" | "LIMITED" | "FULL";

export interface Question {
	title: string;
	text: string;
	/** In order, e.g. `["YES", "NO"]`. */
	buttons: readonly string[];
}

export interface Sidebar {
	title: string;
	html: string;
}

/** The person at the desk: answers what the script asks, sees what it shows. */
export interface Person {
	/** The button pressed; `CLOSE` for the window's own. */
	alert?(question: Question): string;
	prompt?(question: Question): { button: string; text: string };
	sidebar?(page: Sidebar): void;
}

export interface DeskOptions {
	addOn: AddOn;
	startEngine: StartEngine;
	openRealm: () => Realm;
	locale?: Locale;
	/** The file's; default that of this machine. */
	timeZone?: string;
	/** By it the script tells files apart. */
	fileId?: string;
	/** What the script keeps for the person, of all files; default only of this one. */
	userProperties?: Map<string, string>;
	/** False: the script is neither published nor bound to the file, so that the file keeps no properties for it. */
	bound?: boolean;
	person?: Person;
	/** False: functions answer `#NAME?` until a menu function has run. Default false, as in a fresh file. */
	enabled?: boolean;
	/** Other times that calls may take, for tests. */
	limits?: Partial<Limits>;
	/** A workbook kept with `save()`; default one blank tab. */
	saved?: SavedWorkbook;
	/** True: the kept workbook shows what it showed until a call calculates, as among quick calls. */
	quick?: boolean;
}

/** Plain JSON. */
export interface SavedWorkbook {
	workbook: unknown;
	beside: unknown;
}

export interface MenuItem {
	/** What the person reads. */
	label: string;
	/** The script's function. */
	run: string;
}

export interface Menu {
	title: string;
	items: MenuItem[];
}

export interface CallOptions {
	mode?: Mode;
	/** Throws once, at the service call of this number (1 is the first). */
	failAt?: number;
	/** Ends the run at the service call of this number: from it on no call has an effect, whatever the script catches. */
	killAt?: number;
	/** True: every calculated cell answers `Loading...`. */
	loading?: boolean;
	/** Another person's moment: runs before the service call of this number. */
	otherAt?: number;
	other?: (desk: { call(name: string, args?: unknown[]): unknown }) => void;
	/**
	 * For calls in great number that are expected to leave the workbook as it was: nothing is calculated before and after,
	 * so that cells show what they showed, and the next call that calculates does so wholly; the script is loaded anew,
	 * but into the context of the quick call before.
	 */
	quick?: boolean;
}

export interface CellError {
	tab: string;
	cell: string;
	/** `#ERROR!`, `#REF!` … */
	shown: string;
	/** The sentence the function threw, where one did. */
	message: string;
}

/** A picture over the cells of a tab. */
export interface PictureNote {
	sheetId: string;
	/** The cell at its top left corner, counted from 1. */
	row: number;
	column: number;
	/** Pixels from that cell's own corner. */
	x: number;
	y: number;
	width: number;
	height: number;
	/** A `data:` address that holds all of it. */
	source: string;
	title: string;
}

export interface Counts {
	/** Apps Script service calls of the last entry point. */
	services: number;
	/** The same, by name: `Range.setValues` → 12. */
	byName: Readonly<Record<string, number>>;
	/** Their names in order; of a call that wrote a formula, with ` =` behind. */
	order: readonly string[];
	/** Custom function calls since the desk was opened or `resetCounts`. */
	functions: number;
}

/** One cell's value as `getValues` gives it. */
export type CellValue = string | number | boolean | Date;

export interface Desk {
	readonly engine: Engine;
	/**
	 * Runs an entry point as `google.script.run` does, then lets the workbook settle.
	 * Calls queue. Arguments and answer are plain data; a thrown error arrives as Error.
	 */
	call(
		name: string,
		args?: readonly unknown[],
		options?: CallOptions,
	): Promise<unknown>;
	/** Calls back at the end of every call of the script. Returns a stop. */
	onCalled(then: () => void): () => void;
	/** The menus `onOpen` built. */
	menus(): readonly Menu[];
	/** Chooses a menu item by its label; this enables the add-on in the file. */
	choose(label: string): Promise<void>;
	/** The open panel, if any. */
	sidebar(): Sidebar | undefined;
	closeSidebar(): void;
	/** Types into a cell as a person would; settle afterwards. */
	type(tab: string, cell: string, text: string): void;
	/** Selects a range, as a click on it would. */
	select(tab: string, range: string): void;
	/** The values of a range; a single cell gives one row of one. */
	read(tab: string, range: string): CellValue[][];
	/** The shown texts of a range. */
	display(tab: string, range: string): string[][];
	formula(tab: string, cell: string): string;
	/** What a cell draws, if it does. */
	drawing(tab: string, cell: string): Drawing | undefined;
	/** Where the link in a cell leads: its address, and the tab and cells where it leads to some of this file. */
	linkAt(
		tab: string,
		cell: string,
	): { address: string; tab?: string; range?: string } | undefined;
	/** The pictures of a tab. */
	pictures(tab: string): readonly PictureNote[];
	/** The tab and range a name stands for. */
	named(name: string): { tab: string; range: string } | undefined;
	tabs(): string[];
	/** What is wrong in a cell, or undefined. */
	errorAt(tab: string, cell: string): CellError | undefined;
	/** Every error cell of the workbook. */
	errors(): CellError[];
	/** Recalculates until two passes agree. */
	settle(): Promise<void>;
	/** For a live page: after every calculation, calculates again until nothing changes. Returns a stop. */
	keepSettled(): () => void;
	counts(): Counts;
	resetCounts(): void;
	/** The whole workbook as comparable JSON text. */
	state(): string;
	/**
	 * Where the workbook first differs from a kept one, by the same measure as `state()`; undefined where nowhere.
	 * With `butShown` two cells of one formula are the same, whatever it shows: after quick calls it may show nothing yet.
	 */
	differsFrom(
		saved: SavedWorkbook,
		options?: { butShown?: boolean },
	): string | undefined;
	save(): SavedWorkbook;
	dispose(): void;
}
