/** What is typed in a field, as the cell would hold it. */

const NUMBER = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
// "2,440" may be two thousand or two and a half: it stays text, and the reader asks.
const THOUSANDS = /,\d{3}$/;

/** The number, else the text itself for the reader to refuse. */
export function numberOrText(typed: string): number | string {
	const text = typed.trim().replace("−", "-");
	if (!NUMBER.test(text) || THOUSANDS.test(text)) return typed.trim();
	return Number(text.replace(",", "."));
}

/** A field that shows %: `4` and `4%` are 0.04. Exact: 55 is 0.55 and not 0.55000…1. */
export function percentOrText(typed: string): number | string {
	const number = numberOrText(typed.trim().replace(/\s*%$/, ""));
	return typeof number === "number"
		? Number((number / 100).toPrecision(15))
		: typed.trim();
}
