/** What the Quote tab answers: its lines and sums, and the sums that other tabs show. */
import { from, is, type Known } from "../answers/known";
import type { QuoteAnswer } from "../answers/money/quote";
import { quoteSums } from "../answers/money/quotesums";
import { wholeFrom } from "../answers/whole";
import { serialDay } from "../reading/days";
import { PRICE_NEEDS } from "./cost";
import type { TabAnswer, Value } from "./tab";

/** Sums by their row in the last column. */
const SUMS = {
	total: ({ total }) => total,
	paid: ({ paid }) => paid.total,
	to_pay: ({ toPay }) => toPay,
	deposit: ({ deposit }) => deposit,
	balance: ({ balance }) => balance,
	deposit_paid: ({ paid }) => paid.deposit,
	balance_paid: ({ paid }) => paid.balance,
	holds_until: ({ holdsUntil }) => from(holdsUntil, serialDay),
	open: ({ open }) => open,
} satisfies Record<string, (quote: QuoteAnswer) => Value>;

export const SUM_KEYS = Object.keys(SUMS) as (keyof typeof SUMS)[];

export const QUOTE_LINES: TabAnswer = {
	name: "QUOTE_LINES",
	summary: "The lines of a quote, its sums, and what is still to be paid.",
	needs: PRICE_NEEDS,
	shape: "table",
	shown: [
		{ label: "Pieces", format: "text", wrap: true },
		{ label: "", format: "text" },
		{ label: "Price", format: "text" },
		{ label: "", format: "money" },
		{ label: "Sums for other tabs", format: "money" },
	],
	headings: ({ given }) => ({
		3: String(given.studio.settings.currency ?? ""),
	}),
	values(input) {
		const quote = wholeFrom(input).quote();
		const pieces = quote.lines.filter(({ amount }) => amount === null);
		const priced = quote.lines.flatMap(({ text, amount }) =>
			amount === null ? [] : [{ text: is(text) as Known<string>, amount }],
		);
		const amounts = [...priced, ...quoteSums(input.given, quote)];
		const sums = SUM_KEYS.map((key): Value => SUMS[key](quote));
		const rows = Math.max(pieces.length, amounts.length, sums.length);
		return Array.from({ length: rows }, (_, row) => [
			pieces[row]?.text,
			"",
			amounts[row]?.text,
			amounts[row]?.amount,
			sums[row],
		]);
	},
};
