import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, Script } from "node:vm";

const DIST = join(import.meta.dirname, "../../dist");

export const distText = (file: string): string =>
	readFileSync(join(DIST, file), "utf8");

/** Both files of the script, which share one scope and are loaded for every call. */
export const distCode = (): string =>
	[distText("Code.js"), distText("Templates.js")].join("\n");

/** Calls a sheet function by name; the arguments are built inside the context before the clock starts. */
export type Call = (name: string, args: readonly unknown[]) => unknown;

/** The built script, loaded into a context that has nothing but the language. */
export function loaded(script: Script): Call {
	const context = createContext({});
	script.runInContext(context);
	return (name, args) => {
		context.given = JSON.stringify(args);
		return run(`${name}(...JSON.parse(given))`, context);
	};
}

/** Sheets gives a function half a minute. */
const TIMEOUT_MS = 30_000;

const run = (code: string, context: object): unknown =>
	new Script(code).runInContext(context, { timeout: TIMEOUT_MS });

export const compiled = (code: string): Script =>
	new Script(code, { filename: "Code.js" });

/** The built script, loaded once. */
export const built = (): Call => loaded(compiled(distCode()));
