/** Whether a call ended as every call must. */
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/index";
import type { Call } from "./calls";

/** Longest that a call may take; a cell that says Loading… for longer is taken for broken. */
const LIMIT_MS = 1000;
/** A sentence longer than this is read by nobody. */
const LONGEST_SENTENCE = 400;

type Ended = { answer: unknown } | { error: unknown };

function ended({ fn, args }: Call): Ended {
	try {
		return { answer: callFunction(fn, args) };
	} catch (error) {
		return { error };
	}
}

/** Words that only a program says. */
const NO_SENTENCE =
	/undefined|NaN|Infinity|\[object|null\b|Error:|\bat \w+ \(|\.ts\b|not a function|not iterable|out of memory|call stack/;

/** What is wrong with an error; what a person typed stands in it in quotation marks and may be anything. */
function sentenceComplaint(error: unknown): string | undefined {
	if (!(error instanceof InputError))
		return `not a sentence for a person: ${error instanceof Error ? error.stack : error}`;
	const { message } = error;
	const own = message.replace(/"[^"]*"/g, '""');
	if (/[\n\r\u2028\u2029]/.test(message)) return `several lines: ${message}`;
	if (NO_SENTENCE.test(own)) return `says what no person says: ${message}`;
	if (message.length > LONGEST_SENTENCE)
		return `${message.length} signs long: ${message.slice(0, 500)}`;
	return /^\S.{8,}\S$/.test(message) ? undefined : `no sentence: ${message}`;
}

const cellComplaint = (value: unknown): string | undefined =>
	typeof value === "string" ||
	(typeof value === "number" && Number.isFinite(value))
		? undefined
		: `a cell of ${String(value)}`;

function answerComplaint(answer: unknown): string | undefined {
	if (!Array.isArray(answer)) return cellComplaint(answer);
	if (answer.length === 0) return "a table without rows";
	if (!answer.every(Array.isArray)) return "rows that are none";
	const width = answer[0]?.length ?? 0;
	if (width === 0) return "a table without columns";
	if (!answer.every(({ length }) => length === width)) return "a jagged table";
	return answer.flat().map(cellComplaint).find(Boolean);
}

/** Milliseconds that this process has worked: a machine with other work too keeps it waiting. */
function workedMs(): number {
	const { user, system } = process.cpuUsage();
	return (user + system) / 1000;
}

/** Milliseconds of a call; a slow one is run again, since the first may have been compiling. */
function tookMs(call: Call, first: number): number {
	if (first <= LIMIT_MS) return first;
	const started = workedMs();
	ended(call);
	return Math.min(first, workedMs() - started);
}

/** What is wrong with how a call ended; nothing when all is well. */
export function complaint(call: Call): string | undefined {
	const started = workedMs();
	const end = ended(call);
	const took = tookMs(call, workedMs() - started);
	if (took > LIMIT_MS) return `took ${Math.round(took)} ms`;
	return "error" in end
		? sentenceComplaint(end.error)
		: answerComplaint(end.answer);
}
