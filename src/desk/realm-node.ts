import vm from "node:vm";
import type { Realm } from "./contract";

/** A fresh bare context: no timers, no `URL`, no `TextEncoder`, no `process`; in this it is as Apps Script's. */
export function openNodeRealm(): Realm {
	const context = vm.createContext({});
	// what V8 has there and Apps Script has not
	vm.runInContext(
		"delete globalThis.SharedArrayBuffer; delete globalThis.Atomics;",
		context,
	);
	return {
		compile: (parameters, body) =>
			vm.compileFunction(body, [...parameters], {
				parsingContext: context,
			}) as (...values: unknown[]) => unknown,
		globals: () =>
			vm.runInContext("Object.getOwnPropertyNames(globalThis)", context),
	};
}
