import vm from "node:vm";
import type { Realm } from "./contract";

const scripts = new Map<string, vm.Script>();

/** The text as compiled: once for all contexts, since compiling takes longer than most calls. */
function scriptOf(text: string): vm.Script {
	// without a file's name, stacks have the name that the text says of itself
	const script = scripts.get(text) ?? new vm.Script(text, { filename: "" });
	scripts.set(text, script);
	return script;
}

/** A fresh bare context: no timers, no `URL`, no `TextEncoder`, no `process`; in this it is as Apps Script's. */
export function openNodeRealm(): Realm {
	const context = vm.createContext({});
	const run = (text: string) => scriptOf(text).runInContext(context);
	// what V8 has there and Apps Script has not
	run("delete globalThis.SharedArrayBuffer; delete globalThis.Atomics;");
	return {
		compile: (parameters, body) =>
			run(`(function (${parameters.join(", ")}) {${body}\n})`),
		globals: () => run("Object.getOwnPropertyNames(globalThis)"),
	};
}
