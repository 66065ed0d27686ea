import type { Locale } from "./contract";

/** Strings, quoted tab names and array literals pass whole. */
const PIECE =
	/"(?:[^"]|"")*"|'(?:[^']|'')*'|\{(?:"(?:[^"]|"")*"|[^"}])*\}|[;,.\\]|[^"'{;,.\\]+|["'{]/g;

const pieces = (formula: string): readonly string[] =>
	formula.match(PIECE) ?? [];

/** Whether numbers in files of this locale have a decimal comma. */
export function hasDecimalComma(locale: Locale): boolean {
	return locale !== "en_US";
}

/**
 * A formula that a script wrote, as the engine reads it: `;` becomes `,`.
 *
 * In a decimal-comma file `,` `.` `\` and array literals mean something else than in an `en_US` file, so that
 * a formula holding one cannot be the same formula everywhere.
 *
 * @throws Error in a decimal-comma file for `,` `.` `\` or `{` outside strings.
 */
export function writtenFormula(formula: string, locale: Locale): string {
	const translated = pieces(formula).map((piece) => {
		if (hasDecimalComma(locale) && /^(?:[,.\\]|\{.*)$/s.test(piece))
			throw new Error(
				`Formula parse error in a ${locale} file, because of ${piece}: ${formula}`,
			);
		return piece === ";" ? "," : piece;
	});
	return translated.join("");
}

/** A formula that a person typed in the file's own way. */
export function typedFormula(formula: string, locale: Locale): string {
	const own: Readonly<Record<string, string>> = hasDecimalComma(locale)
		? { ";": ",", ",": ".", "\\": "," }
		: { ";": "," };
	return pieces(formula)
		.map((piece) => own[piece] ?? piece)
		.join("");
}

/** A formula of the engine as a file of this locale shows it. */
export function shownFormula(formula: string, locale: Locale): string {
	if (!hasDecimalComma(locale)) return formula;
	const own: Readonly<Record<string, string>> = { ",": ";", ".": "," };
	return pieces(formula)
		.map((piece) => own[piece] ?? piece)
		.join("");
}

const OPEN_RANGE =
	/("(?:[^"]|"")*")|(?:('(?:[^']|'')+'|[A-Za-z_][\w.]*)!)?(\$?[A-Z]{1,3}\$?\d+):(\$?[A-Z]{1,3})(?![\w$(!])/g;

/** Ranges with an open end (`A2:A`) closed at the last row of their tab; the engine reads no others. */
export function closeRanges(
	formula: string,
	rowsOf: (tab: string | undefined) => number,
): string {
	return formula.replace(
		OPEN_RANGE,
		(whole, text, tab: string | undefined, from, to) => {
			if (text !== undefined) return whole;
			const name = tab?.replace(/^'|'$/g, "").replace(/''/g, "'");
			return `${tab === undefined ? "" : `${tab}!`}${from}:${to}${rowsOf(name)}`;
		},
	);
}
