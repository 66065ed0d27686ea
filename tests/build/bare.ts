import { createContext, runInContext } from "node:vm";

/** A loaded script's sheet functions, in a context that has nothing but the language. */
export function bareCaller(
	code: string,
): (name: string, args: readonly unknown[]) => unknown {
	const context = createContext({});
	runInContext(code, context, { filename: "Code.js", timeout: 30_000 });
	return (name, args) => {
		const given = JSON.stringify(args);
		const answer = runInContext(
			`JSON.stringify(${name}(...JSON.parse(${JSON.stringify(given)})))`,
			context,
			{ timeout: 30_000 },
		);
		return answer === undefined ? undefined : JSON.parse(answer);
	};
}
