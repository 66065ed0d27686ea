/** What becomes of a text that is typed into a cell, or written by `setValue`, which does the same. */
import type { Locale } from "./contract";
import { serialOfDay } from "./dates";
import { hasDecimalComma } from "./separators";

export type Typed =
	| { kind: "blank" }
	| { kind: "text"; text: string }
	| { kind: "formula"; formula: string }
	| { kind: "boolean"; value: boolean }
	/** `pattern` is the number format that a cell without one takes. */
	| { kind: "number"; value: number; pattern?: string };

const PLAIN_TEXT = "@";

/** A number in the file's own way, with thousands marks, or undefined. */
function numberIn(text: string, locale: Locale): number | undefined {
	const plain = hasDecimalComma(locale)
		? text.replace(/[.\u202f\u00a0](?=\d{3}(?:\D|$))/g, "").replace(",", ".")
		: text.replace(/,(?=\d{3}(?:\D|$))/g, "");
	if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(plain))
		return undefined;
	const value = Number(plain);
	return Number.isFinite(value) ? value : undefined;
}

/** Share, money or bare number. */
function numeric(text: string, locale: Locale): Typed | undefined {
	const share = /^(.*\d)\s*%$/.exec(text);
	if (share?.[1] !== undefined) {
		const value = numberIn(share[1], locale);
		const pattern = /[.,]/.test(share[1]) ? "0.00%" : "0%";
		return value === undefined
			? undefined
			: { kind: "number", value: value / 100, pattern };
	}
	const money = /^(-?)[$€£]\s?(.*)$/.exec(text);
	if (money?.[2] !== undefined) {
		const value = numberIn(`${money[1]}${money[2]}`, locale);
		return value === undefined
			? undefined
			: { kind: "number", value, pattern: "$#,##0.00" };
	}
	const value = numberIn(text, locale);
	return value === undefined ? undefined : { kind: "number", value };
}

/** The serial of a day that exists, or undefined. */
function day(year: number, month: number, date: number): number | undefined {
	const full = year < 100 ? year + (year < 50 ? 2000 : 1900) : year;
	return serialOfDay(full, month, date);
}

/** `2026-05-01`, `3/4`, `3/4/2026`, `3.4.2026`, `10:30`. */
function dated(text: string, locale: Locale): Typed | undefined {
	const number = (part: string | undefined) => Number(part);
	const iso = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text);
	const parts = hasDecimalComma(locale)
		? /^(\d{1,2})[-/.](\d{1,2})(?:[-/.](\d{2}|\d{4}))?$/.exec(text)
		: /^(\d{1,2})[-/](\d{1,2})(?:[-/](\d{2}|\d{4}))?$/.exec(text);
	const time = /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/.exec(text);
	if (time)
		return {
			kind: "number",
			value:
				number(time[1]) / 24 +
				number(time[2]) / 1440 +
				number(time[3] ?? "0") / 86400,
			pattern: "h:mm",
		};
	const year = parts?.[3] ?? String(new Date().getFullYear());
	const [month, date] = hasDecimalComma(locale)
		? [parts?.[2], parts?.[1]]
		: [parts?.[1], parts?.[2]];
	const serial = iso
		? day(number(iso[1]), number(iso[2]), number(iso[3]))
		: parts
			? day(number(year), number(month), number(date))
			: undefined;
	if (serial === undefined) return undefined;
	return { kind: "number", value: serial, pattern: "yyyy-mm-dd" };
}

/**
 * The cell's content for a typed text.
 *
 * `'` in front keeps text; a plain-text cell (`@`) keeps all of it; `=` starts a formula, and so do `+` and `-`
 * where no number follows, which is how text of a person becomes an error.
 */
export function typed(text: string, pattern: string, locale: Locale): Typed {
	if (text === "") return { kind: "blank" };
	if (pattern === PLAIN_TEXT) return { kind: "text", text };
	if (text.startsWith("'")) return { kind: "text", text: text.slice(1) };
	if (text.startsWith("=") && text.length > 1)
		return { kind: "formula", formula: text };
	const trimmed = text.trim();
	if (/^(?:true|false)$/i.test(trimmed))
		return { kind: "boolean", value: /^true$/i.test(trimmed) };
	const value = numeric(trimmed, locale) ?? dated(trimmed, locale);
	if (value) return value;
	if (/^[+-]./.test(text)) return { kind: "formula", formula: `=${text}` };
	return { kind: "text", text };
}
