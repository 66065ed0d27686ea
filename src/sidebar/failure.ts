/** What a person is told when the script did not answer as hoped. */
import { ended } from "./sentence";

/** Whether it was done: `no`, `unknown` where the answer was lost, `told` where the script's own sentence says. */
export type Outcome = "no" | "unknown" | "told";

export interface Failure {
	/** Whole sentences. */
	text: string;
	outcome: Outcome;
}

interface Known {
	pattern: RegExp;
	failure: Failure;
}

const ACCOUNTS =
	"Several accounts are signed in here and the wrong one was asked. Open this file in a private window with one account.";

// The messages are Google's own; a lost answer does not prove that the work was not done.
const KNOWN: readonly Known[] = [
	{
		pattern: /PERMISSION_DENIED|Authorization is required/i,
		failure: { text: ACCOUNTS, outcome: "no" },
	},
	{
		pattern: /NetworkError|HTTP 0\b|transport or processing/i,
		failure: { text: "The connection was lost.", outcome: "unknown" },
	},
	{
		pattern: /server error occurred|HTTP 5\d\d/i,
		failure: {
			text: "Google's server had an error. Wait a minute and try again.",
			outcome: "unknown",
		},
	},
	{
		pattern: /too many times|simultaneously|HTTP 429/i,
		failure: {
			text: "Google is busy with other calls. Wait a minute and try again.",
			outcome: "no",
		},
	},
	{
		pattern: /maximum execution time/i,
		failure: {
			text: "It took longer than Google allows.",
			outcome: "unknown",
		},
	},
	{
		pattern: /Script function not found/i,
		failure: {
			text: "The panel is older than its script. Close it and open it again.",
			outcome: "no",
		},
	},
];

/** An error of the script in words; its own sentences come as they are, without what the platform puts before them. */
export function failureOf(error: unknown): Failure {
	const message = error instanceof Error ? error.message : String(error);
	const known = KNOWN.find(({ pattern }) => pattern.test(message));
	if (known) return known.failure;
	const sentence = message
		.replace(/^(?:(?:\w*Error|Exception): ?)+/, "")
		.trim();
	return {
		text: ended(sentence || "The script failed without saying why"),
		outcome: "told",
	};
}
