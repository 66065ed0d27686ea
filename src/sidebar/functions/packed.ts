import type { FunctionHelp } from "../../functions/help";

/** Put in by the build: JSON, deflated, in base 64. The page needs what the functions say, not how they compute. */
declare const FUNCTION_HELP: string;

/** What every sheet function says to a person. */
export function functionHelp(): Promise<FunctionHelp[]> {
	const bytes = Uint8Array.from(atob(FUNCTION_HELP), (sign) =>
		sign.charCodeAt(0),
	);
	const json = new Blob([bytes])
		.stream()
		.pipeThrough(new DecompressionStream("deflate-raw"));
	return new Response(json).json();
}
