/** One call of an entry point: what it may touch, what it has touched, and the strict form of every service. */
import type { Block } from "../a1";
import type { Book } from "../book";
import { messageOf } from "../bridge";
import type {
	AddOn,
	Menu,
	Mode,
	Person,
	PictureNote,
	Realm,
	Sidebar,
} from "../contract";
import { isDate } from "../dates";
import { adopter, thrower } from "../script";
import { permissionProblem } from "./permission";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A warning that someone edits a protected tab; it stops nobody. */
export interface ProtectionNote {
	sheetId: string;
	/** The cells that stay free. */
	unprotected?: Block[];
	warningOnly: boolean;
}

/** What outlives a call. */
export interface Host {
	book: Book;
	addOn: AddOn;
	person: Person;
	documentProperties: Map<string, string>;
	userProperties: Map<string, string>;
	fileId: string;
	/** Whether the file keeps properties for the script. */
	bound: boolean;
	protections: ProtectionNote[];
	pictures: PictureNote[];
	/** Number of the tab made last. */
	lastTab: number;
	/** The call that holds the document's lock. */
	lockedBy: Call | undefined;
	menus: Menu[];
	sidebar: Sidebar | undefined;
	/** Names of the script's functions that cells may call. */
	functionNames: readonly string[];
}

export interface Call {
	host: Host;
	mode: Mode;
	/** True once the call has changed the workbook: from then on calculated cells may not be read. */
	written: boolean;
	/** Tabs that calculate because a tab or a name was taken away that their formulas mention. */
	outdated: Set<string>;
	/** Whether calculated cells are still being calculated. */
	loading: boolean;
	/** Service calls so far, by name. */
	tally: Map<string, number>;
	/** The same in order. */
	order: string[];
	/** The service as the script sees it. */
	serve<T extends object>(name: string, members: Members, inner?: object): T;
	/** What stands behind a service object, if it is of that kind. */
	inner<T extends object>(service: unknown, kind: string): T;
	adopt(value: unknown): unknown;
	/** The tab as the script sees it: tabs give ranges, and a range gives its tab. */
	sheetOf(place: { sheetId: string }): Sheet;
}

/** Methods and constants of a service, by name. */
export type Members = object;

export interface CallSetup {
	host: Host;
	mode: Mode;
	realm: Realm;
	loading: boolean;
	/** Runs before the service call of this number. */
	before(count: number): void;
	sheetOf(call: Call, place: { sheetId: string }): Sheet;
}

function describe(value: unknown): string {
	if (value === null || value === undefined) return "null";
	if (Array.isArray(value)) return `${describe(value[0])}[]`;
	if (isDate(value)) return "Date";
	const name = typeof value;
	return name.charAt(0).toUpperCase() + name.slice(1);
}

/** The sentence for arguments that a method does not take. */
export function signature(args: readonly unknown[], method: string): Error {
	return new Error(
		`The parameters (${args.map(describe).join(",")}) don't match the method signature for ${method}.`,
	);
}

const isFormulaIn = (value: unknown): boolean =>
	Array.isArray(value)
		? value.some(isFormulaIn)
		: typeof value === "string" && /^=./.test(value);

const writesFormula = (name: string, args: readonly unknown[]): boolean =>
	/^Range(List)?\.set(Value|Formula)s?$/.test(name) && args.some(isFormulaIn);

const SILENT = new Set(["then", "toJSON", "constructor", "valueOf"]);

/** Starts a call; its services live as long as it does. */
export function startCall({
	host,
	mode,
	realm,
	loading,
	before,
	sheetOf,
}: CallSetup): Call {
	const behind = new WeakMap<object, { kind: string; inner: object }>();
	const adoptPlain = adopter(realm, (value) => behind.has(value));
	const makeError = thrower(realm);
	const tally = new Map<string, number>();
	const order: string[] = [];
	let count = 0;

	const counted = (name: string, args: readonly unknown[]) => {
		count += 1;
		order.push(writesFormula(name, args) ? `${name} =` : name);
		tally.set(name, (tally.get(name) ?? 0) + 1);
		before(count);
		const problem = permissionProblem(mode, name);
		if (problem) throw new Error(problem);
	};
	const method =
		(name: string, run: (...args: unknown[]) => unknown) =>
		(...args: unknown[]) => {
			try {
				counted(name, args);
				// an undefined argument is a null one on the platform
				return adoptPlain(run(...args.map((arg) => arg ?? null)));
			} catch (error) {
				throw makeError(messageOf(error));
			}
		};

	const call: Call = {
		host,
		mode,
		written: false,
		outdated: new Set(),
		loading,
		tally,
		order,
		adopt: adoptPlain,
		sheetOf: (place) => sheetOf(call, place),
		serve<T extends object>(name: string, members: Members, inner = members) {
			const served = new Proxy(members, {
				get(target, key) {
					if (typeof key === "symbol" || SILENT.has(key)) return undefined;
					if (key === "toString") return () => name;
					if (!Object.hasOwn(target, key))
						throw makeError(`${name}.${key} is not a function`);
					const member = (target as Record<string, unknown>)[key];
					return typeof member === "function"
						? method(
								`${name}.${key}`,
								member as (...args: unknown[]) => unknown,
							)
						: member;
				},
				set(_target, key) {
					throw makeError(`${name}.${String(key)} cannot be set`);
				},
			});
			behind.set(served, { kind: name, inner });
			return served as T;
		},
		inner<T extends object>(service: unknown, kind: string) {
			const found =
				typeof service === "object" && service !== null
					? behind.get(service)
					: undefined;
			if (found?.kind !== kind) throw signature([service], kind);
			return found.inner as T;
		},
	};
	return call;
}
