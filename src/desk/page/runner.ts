/** `google.script.run` and `google.script.host` inside the panel's page, which can only send messages. */
import { sentArguments } from "../wire";
import type { FromPanel, ToPanel } from "./messages";

type Success = (answer: unknown, userObject: unknown) => void;
type Failure = (error: Error, userObject: unknown) => void;

interface Handlers {
	success?: Success;
	failure?: Failure;
	userObject?: unknown;
}

type Runner = Record<string, (...args: never[]) => unknown>;

/** @source developers.google.com/apps-script/guides/html/reference/run: ten calls at a time, the rest wait */
const MOST_IN_FLIGHT = 10;

const sent = new Map<number, Handlers>();
const waiting: (() => void)[] = [];
let lastId = 0;

const toDesk = (message: FromPanel) => window.parent.postMessage(message, "*");

function sendNext(): void {
	while (sent.size < MOST_IN_FLIGHT && waiting.length > 0) waiting.shift()?.();
}

function send(name: string, args: unknown[], handlers: Handlers): void {
	const message = { kind: "call", name, args: sentArguments(args) } as const;
	waiting.push(() => {
		lastId += 1;
		sent.set(lastId, handlers);
		toDesk({ ...message, id: lastId });
	});
	sendNext();
}

function handler<T>(value: T): T {
	if (typeof value !== "function")
		throw new TypeError("a handler is a function");
	return value;
}

/** A runner never changes: each `with…` gives a new one. */
function runner(names: readonly string[], handlers: Handlers): Runner {
	const calls = names.map(
		(name) =>
			[name, (...args: unknown[]) => send(name, args, handlers)] as const,
	);
	const withMore = (more: Handlers) => runner(names, { ...handlers, ...more });
	return {
		...Object.fromEntries(calls),
		withSuccessHandler: (success: Success) =>
			withMore({ success: handler(success) }),
		withFailureHandler: (failure: Failure) =>
			withMore({ failure: handler(failure) }),
		withUserObject: (userObject: unknown) => withMore({ userObject }),
	};
}

const scriptError = (message: string): Error =>
	Object.assign(new Error(message), { name: "ScriptError" });

function received({ source, data }: MessageEvent<ToPanel>): void {
	const handlers = sent.get(data?.id);
	if (source !== window.parent || !handlers) return;
	sent.delete(data.id);
	sendNext();
	const { success, failure, userObject } = handlers;
	if (!("error" in data)) success?.(data.answer, userObject);
	else if (failure) failure(scriptError(data.error), userObject);
	else throw scriptError(data.error);
}

/** Gives the panel's page its `google.script`, with the functions of these names. */
export function installRunner(names: readonly string[]): void {
	window.addEventListener("message", received);
	const script = {
		run: runner(names, {}),
		host: {
			close: () => toDesk({ kind: "close" }),
			editor: { focus: () => toDesk({ kind: "focus" }) },
		},
	};
	Object.assign(window, { google: { script } });
}
