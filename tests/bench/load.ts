import { kilobytes } from "../../src/build/gates";
import { milliseconds, ms, type Row, times } from "./row";
import { compiled, distText, loaded } from "./script";

/** How large the files are, and what every cell's call costs before it computes. */
export function loadRows(): Row[] {
	const code = distText("Code.js");
	const script = compiled(code);
	const first = milliseconds(() =>
		loaded(compiled(code))("READ_LENGTH", ["650 mm"]),
	);
	const empty = milliseconds(() =>
		loaded(compiled("function F() {}"))("F", []),
	);
	const again = milliseconds(() => loaded(script)("READ_LENGTH", ["650 mm"]));
	return [
		sizeRow("Code.js", code, 160),
		sizeRow("Panel.html", distText("Panel.html"), 120),
		{
			what: "Code.js, parse, load and first call",
			figure: ms(first),
			beside: `${times(first, empty)} an empty script`,
		},
		{
			what: "Code.js, load and first call, parsed before",
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
