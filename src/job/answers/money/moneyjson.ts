/** Cost, quote and what to buy as the answers are printed: plain numbers, null where one is not known. */

import { orNull } from "../known";
import type { BuyRow } from "./buy";
import type { CostAnswer } from "./cost";
import type { QuoteAnswer } from "./quote";

export const costJson = ({
	lines,
	cost,
	price,
	margin,
	hours,
	check,
	cameTo,
}: CostAnswer) => ({
	lines: lines.map(({ name, amount }) => ({ name, amount: orNull(amount) })),
	cost: orNull(cost),
	price: orNull(price),
	margin: orNull(margin),
	hours: orNull(hours),
	cameTo: orNull(cameTo),
	...check,
});

export const quoteJson = (quote: QuoteAnswer) => ({
	lines: quote.lines.map(({ text, amount }) => ({
		text,
		amount: amount && orNull(amount),
	})),
	net: orNull(quote.net),
	tax: orNull(quote.tax),
	total: orNull(quote.total),
	paid: orNull(quote.paid.total),
	deposit: orNull(quote.deposit),
	balance: orNull(quote.balance),
	holdsUntil: orNull(quote.holdsUntil),
	...quote.open,
});

export const buyJson = (rows: readonly BuyRow[]) =>
	rows.map((row) => ({
		name: row.name,
		unit: row.unit,
		needed: orNull(row.needed),
		onHand: orNull(row.onHand),
		reserved: row.reserved,
		packs: orNull(row.packs),
		pack: orNull(row.pack),
		toPay: orNull(row.toPay),
		...row.counted,
	}));
