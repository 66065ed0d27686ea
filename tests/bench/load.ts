import { kilobytes, LIMITS_KB } from "../../src/build/gates";
import { milliseconds, ms, type Row, times } from "./row";
import { compiled, distCode, distText, loaded } from "./script";

/** What each cell's call may take before it computes. */
export const LOAD_LIMIT_MS = 10;

/** Milliseconds to parse and load the script in a fresh context and to answer one cell. */
export const firstCall = (code = distCode()): number =>
	milliseconds(() => loaded(compiled(code))("READ_LENGTH", ["650 mm"]));

/** How large the files are, and what every cell's call costs before it computes. */
export function loadRows(): Row[] {
	const script = compiled(distCode());
	const first = firstCall();
	const empty = milliseconds(() =>
		loaded(compiled("function F() {}"))("F", []),
	);
	const again = milliseconds(() => loaded(script)("READ_LENGTH", ["650 mm"]));
	return [
		...Object.entries(LIMITS_KB).map(([file, limit]) =>
			sizeRow(file, distText(file), limit),
		),
		{
			what: "the script, parse, load and first call",
			figure: ms(first),
			beside: `${times(first, LOAD_LIMIT_MS)} its limit of ${LOAD_LIMIT_MS} ms, ${times(first, empty)} an empty script`,
		},
		{
			what: "the script, load and first call, parsed before",
			figure: ms(again),
			beside: `${times(again, empty)} an empty script`,
		},
	];
}

function sizeRow(file: string, text: string, limit: number): Row {
	return {
		what: file,
		figure: `${kilobytes(text).toFixed(1)} kB`,
		beside: `${times(kilobytes(text), limit)} its limit of ${limit} kB`,
	};
}
