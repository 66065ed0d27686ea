/** The page for the client: what is made, what it sells for, and what is still to be paid of it. */
import { dayAfter } from "../../../calc/calendar";
import { inCents, splitAmounts } from "../../../calc/money";
import { QUOTE } from "../../fields/cost";
import { isBlank } from "../../reading/cells";
import type { Basis } from "../basis";
import { type Given, setting, withCurrency } from "../given";
import {
	all,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readField,
	type Said,
	saidOf,
} from "../known";
import { isAgreed } from "./agreed";
import type { CostAnswer } from "./cost";
import { type PaidAnswer, paidAnswer } from "./paid";
import { pieceWords } from "./quotewords";

/** A line with no amount is a part of the one below that has one. */
interface QuoteLine {
	text: string;
	amount: Known<number> | null;
}

/** Money in the studio's currency; paid, deposit and balance add up to the total. */
export interface QuoteAnswer {
	lines: readonly QuoteLine[];
	net: Known<number>;
	tax: Known<number>;
	total: Known<number>;
	paid: PaidAnswer;
	/** Still to be paid before work begins. */
	deposit: Known<number>;
	/** Still to be paid on delivery; below 0 once more was paid than the total. */
	balance: Known<number>;
	/** Deposit and balance together. */
	toPay: Known<number>;
	/** What is still to be paid, in words. */
	open: Said;
	/** The last day on which the client may accept it. */
	holdsUntil: Known<string>;
}

export function quoteAnswer(basis: Basis, cost: CostAnswer): QuoteAnswer {
	const { given } = basis;
	const taxOf = (net: Known<number>) =>
		fromBoth(net, setting(given, "tax"), (money, share) =>
			inCents(money * share),
		);
	const sumOf = (one: Known<number>, other: Known<number>) =>
		fromBoth(one, other, (money, added) => inCents(money + added));
	const net = from(cost.price, inCents);
	const tax = taxOf(net);
	const total = sumOf(net, tax);
	const paid = paidAnswer(given);
	// Once the price is agreed, change orders are paid with the balance.
	const begunWith = isAgreed(given)
		? sumOf(cost.basePrice, taxOf(cost.basePrice))
		: total;
	const agreedDeposit = fromBoth(
		begunWith,
		setting(given, "deposit"),
		(money, share) => splitAmounts(money, [share, 1 - share], 2)[0] ?? 0,
	);
	const deposit = from(
		all<[number, number, number]>([agreedDeposit, total, paid.total]),
		([part, whole, received]) =>
			Math.max(0, inCents(Math.min(part, whole) - received)),
	);
	const balance = from(
		all<[number, number, number]>([total, paid.total, deposit]),
		([money, received, due]) => inCents(money - received - due),
	);
	return {
		lines: quoteLines(given, cost),
		net,
		tax,
		total,
		paid,
		deposit,
		balance,
		toPay: fromBoth(deposit, balance, (first, rest) => inCents(first + rest)),
		open: saidOf(openOf(given, total, deposit, balance)),
		holdsUntil: holdsUntilOf(given),
	};
}

/** Every piece in words, the price of them all, then each change order that is agreed. */
function quoteLines(
	{ job, units }: Given,
	{ basePrice, changes }: CostAnswer,
): QuoteLine[] {
	const pieces = job.pieces.filter(
		({ name, quantity }) => !isBlank(name) && Number(quantity) > 0,
	);
	return [
		...pieces.map((row) => ({ text: pieceWords(row, units), amount: null })),
		{ text: "Pieces as listed", amount: basePrice },
		...(isKnown(changes) ? changes.is : []).map(({ what, price }) => ({
			text: what,
			amount: is(price),
		})),
	];
}

function openOf(
	given: Given,
	total: Known<number>,
	deposit: Known<number>,
	balance: Known<number>,
): Known<string> {
	const sums = all<[number, number, number]>([total, deposit, balance]);
	if (!isKnown(sums)) return sums;
	const [whole, first, rest] = sums.is;
	const money = (amount: number) => moneyText(given, amount);
	const open = inCents(first + rest);
	if (whole < 0)
		return look(
			`the credits are ${money(-whole)} more than the price, tax included`,
		);
	if (open < 0)
		return look(`${money(-open)} more was paid than the quote comes to`);
	if (open === 0) return is("paid in full");
	return is(
		first > 0
			? `${money(first)} to begin, ${money(rest)} on delivery`
			: `${money(rest)} on delivery`,
	);
}

/** An amount as a sentence says it, e.g. `€ 120.00`. */
const moneyText = ({ studio }: Given, amount: number): string =>
	withCurrency(studio, amount.toFixed(2));

function holdsUntilOf(given: Given): Known<string> {
	const { job, units } = given;
	const quotedOn = readField(QUOTE, "quotedOn", job, units);
	return fromBoth(
		"missing" in quotedOn ? missing("type the date of the quote") : quotedOn,
		setting(given, "quote_days"),
		dayAfter,
	);
}
