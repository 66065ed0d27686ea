/** The panel's line to the script. */
import type { PanelCalls } from "../sheets/messages";

/** Calls one of the script's functions; rejects with what the script threw. */
export type Ask = <Name extends keyof PanelCalls>(
	name: Name,
	...args: Parameters<PanelCalls[Name]>
) => Promise<ReturnType<PanelCalls[Name]>>;

type Runner = {
	withSuccessHandler(done: (answer: unknown) => void): Runner;
	withFailureHandler(failed: (error: unknown) => void): Runner;
} & Readonly<Record<string, (...args: unknown[]) => void>>;

declare const google: { script: { run: Runner } } | undefined;

export const askScript: Ask = (name, ...args) =>
	new Promise((resolve, reject) => {
		if (typeof google === "undefined")
			throw new Error("This page works as the side panel of a spreadsheet.");
		const runner = google.script.run
			.withSuccessHandler((answer) =>
				// An answer that cannot pass comes as null, without an error.
				answer === null || answer === undefined
					? reject(new Error(`The script gave no answer to ${name}.`))
					: resolve(answer as never),
			)
			.withFailureHandler(reject);
		runner[name]?.(...args);
	});
