import { spawnSync } from "node:child_process";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../..");

/** A heading, then a program of `node_modules` and its arguments. */
export type Step = [title: string, program: string, args: readonly string[]];

export interface Ran {
	title: string;
	passed: boolean;
}

/** Runs a program where all of them are run, its output shown; true when it ended well. */
export function succeeds(program: string, args: readonly string[]): boolean {
	const { status } = spawnSync(program, args, { cwd: ROOT, stdio: "inherit" });
	return status === 0;
}

/** Runs one step under its heading. */
export function run([title, program, args]: Step): Ran {
	console.log(`\n${title}`);
	const started = Date.now();
	const passed = succeeds(join(ROOT, "node_modules/.bin", program), args);
	const seconds = ((Date.now() - started) / 1000).toFixed(1);
	console.log(`${passed ? "passed" : "FAILED"}, ${seconds} s`);
	return { title, passed };
}
