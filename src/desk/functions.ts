/** The script's functions as cells call them: counted, without services, their errors remembered. */
import { arrayFormula, bridged, type Caller, messageOf } from "./bridge";
import type { EngineFunction, Realm } from "./contract";
import { within } from "./limits";
import { links } from "./links";
import { isPublic, loadScript, type Script } from "./script";
import { refusedServices, SERVICES } from "./services/services";
import { sparkline } from "./sparkline/cells";

export interface CellFunctions {
	names: readonly string[];
	classes: EngineFunction[];
	/** Calls since the last reset. */
	calls(): number;
	/** Forgets count and answers. */
	reset(): void;
	/** Where the link in a cell leads. */
	linkAt(cell: Caller): string | undefined;
	/** What the functions of a cell's formula threw. */
	messagesAt(caller: Caller, formula: string): string[];
}

type Outcome = { answer: unknown } | { thrown: unknown };

/** The platform may call a function as often as it likes: here the first call of each, and then every so many, is made twice. */
const REPEATED = 10;

const told = (outcome: Outcome) =>
	"thrown" in outcome
		? messageOf(outcome.thrown)
		: JSON.stringify([outcome.answer], (_key, value) =>
				typeof value === "bigint" ? String(value) : value,
			);

const placeKey = ({ sheetId, row, column }: Caller) =>
	`${sheetId}:${row}:${column}`;

/**
 * Like the platform, keeps the last answer of a function in a cell and gives it again for the same arguments,
 * so that the extra passes of settling call nothing twice.
 */
export function cellFunctions(
	script: Script,
	realm: Realm,
	enabled: () => boolean,
	limitMs: number,
): CellFunctions {
	const run = loadScript(script, realm, SERVICES);
	const services = refusedServices();
	const outcomes = new Map<string, { key: string; outcome: Outcome }>();
	const messages = new Map<string, Map<string, string>>();
	const times = new Map<string, number>();
	const linked = links();
	let calls = 0;

	const outcomeOf = (name: string, args: unknown[]): Outcome => {
		try {
			return { answer: within(limitMs, () => run(name, args, services)) };
		} catch (thrown) {
			return { thrown };
		}
	};
	const repeatable = (name: string, args: unknown[]): Outcome => {
		const before = times.get(name) ?? 0;
		times.set(name, before + 1);
		calls += 1;
		const outcome = outcomeOf(name, args);
		if (before % REPEATED !== 0) return outcome;
		const same = told(outcome) === told(outcomeOf(name, args));
		return same
			? outcome
			: {
					thrown: new Error(
						`${name} answers otherwise when it is called again with the same arguments`,
					),
				};
	};
	const invoke = (name: string, args: unknown[], caller: Caller) => {
		const place = `${placeKey(caller)}:${name}`;
		const key = JSON.stringify(args);
		const known = outcomes.get(place);
		const outcome = known?.key === key ? known.outcome : repeatable(name, args);
		outcomes.set(place, { key, outcome });
		if ("thrown" in outcome) throw new Error(messageOf(outcome.thrown));
		return outcome.answer;
	};
	const failed = (
		name: string,
		caller: Caller,
		message: string | undefined,
	) => {
		const here = messages.get(placeKey(caller)) ?? new Map<string, string>();
		if (message === undefined) here.delete(name);
		else here.set(name, message);
		messages.set(placeKey(caller), here);
	};
	const names = script.names.filter((name) => isPublic(script, name));
	return {
		names,
		classes: [
			...names.map((name) => bridged(name, invoke, enabled, failed)),
			arrayFormula(),
			linked.engineFunction,
			sparkline(),
		],
		calls: () => calls,
		reset() {
			calls = 0;
			outcomes.clear();
		},
		linkAt: linked.at,
		messagesAt: (caller, formula) =>
			[...(messages.get(placeKey(caller)) ?? [])]
				.filter(([name]) => formula.includes(`${name}(`))
				.map(([, message]) => message),
	};
}
