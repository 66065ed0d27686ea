/** The sums under the lines of the quote, in the client's words. */
import { type Given, setting } from "../given";
import { from, fromBoth, is, type Known } from "../known";
import type { QuoteAnswer } from "./quote";

interface QuoteSum {
	text: Known<string>;
	amount: Known<number>;
}

/** Paid, deposit and balance add up to the total. */
export const quoteSums = (given: Given, quote: QuoteAnswer): QuoteSum[] => [
	{ text: is("Without tax"), amount: quote.net },
	{
		text: from(
			setting(given, "tax"),
			(share) => `Tax, ${percentText(share, 3)}`,
		),
		amount: quote.tax,
	},
	{ text: is("Total"), amount: quote.total },
	{ text: is("Paid"), amount: quote.paid.total },
	{ text: depositWords(given, quote), amount: quote.deposit },
	{ text: is("Balance on delivery"), amount: quote.balance },
];

/** Once something is paid, the deposit is what is left of it. */
const depositWords = (given: Given, { paid }: QuoteAnswer): Known<string> =>
	fromBoth(setting(given, "deposit"), paid.total, (share, received) =>
		received > 0
			? "Still to pay to begin"
			: `Deposit to begin, ${percentText(share, 1)}`,
	);

/** A share as a page says it, e.g. `8.25%`. */
export const percentText = (share: number, decimals: number): string =>
	`${Number((share * 100).toFixed(decimals))}%`;
