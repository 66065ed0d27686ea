/** Packs, prices and amounts that add up. */
import { InputError } from "./errors";
import { sum } from "./sum";

/**
 * Whole packs to buy: max(0, ⌈(needed − on hand) / pack − 10⁻⁹⌉).
 *
 * The 10⁻⁹ keeps three tenths from a pack of one tenth at three packs, not four.
 */
export const packsToBuy = (stock: {
	needed: number;
	onHand: number;
	pack: number;
}): number =>
	Math.max(0, Math.ceil((stock.needed - stock.onHand) / stock.pack - 1e-9));

/** Price that leaves this margin, a share of the price: cost / (1 − margin). */
export const priceForMargin = (cost: number, margin: number): number =>
	cost / (1 - margin);

/** Margin as a share of the price: (price − cost) / price; negative below cost. */
export const marginOf = (price: number, cost: number): number =>
	(price - cost) / price;

/** Up to here a unit of the last decimal is far above the noise of the numbers that are split. */
const MOST_UNITS = 1e12;

/**
 * An amount without its sign in whole units of the last decimal, half away from zero.
 *
 * A number is the decimal a sheet shows, which has 15 digits at most: 1.005 is 1.01, although its binary form is
 * slightly less.
 */
function wholeUnits(amount: number, decimals: number): number {
	const [digits, exponent] = Math.abs(amount).toExponential(14).split("e");
	return Math.round(Number(`${digits}e${Number(exponent) + decimals}`));
}

/** An amount in whole cents, half away from zero; never −0. */
export function inCents(amount: number): number {
	const cents = wholeUnits(amount, 2) / 100;
	return amount < 0 && cents > 0 ? -cents : cents;
}

/**
 * Amounts in proportion to shares that add up to the total rounded to `decimals`.
 *
 * Largest remainder: each gets its share rounded down, the units left over go to the largest remainders, ties to the
 * earlier. A negative total is split like its opposite.
 *
 * @throws InputError when all shares are 0 or the total has more units than a number can count.
 */
export function splitAmounts(
	total: number,
	shares: readonly number[],
	decimals: number,
): number[] {
	const weight = sum(shares);
	if (weight <= 0) throw new InputError("shares must not all be 0");
	const units = wholeUnits(total, decimals);
	if (units > MOST_UNITS)
		throw new InputError(
			`total must be at most ${MOST_UNITS / 10 ** decimals} to be split exactly, got ${total}`,
		);
	const exact = shares.map((share) => (share / weight) * units);
	// Divided, not multiplied by 0.01: 57 cents are then 0.57 and not 0.5700000000000001.
	return wholeParts(units, exact).map(
		(part) => (Math.sign(total) * part) / 10 ** decimals,
	);
}

/** Each exact part rounded down or up, so that the sum is `units`. */
function wholeParts(units: number, exact: readonly number[]): number[] {
	const parts = exact.map(Math.floor);
	const left = units - sum(parts);
	// Equal remainders differ in their last bits; rounded, they are ties again.
	const remainders = exact.map(
		(value, index) => Math.round((value - (parts[index] ?? 0)) * 1e9) / 1e9,
	);
	const byRemainder = [...exact.keys()].sort(
		(a, b) => (remainders[b] ?? 0) - (remainders[a] ?? 0) || a - b,
	);
	for (const index of byRemainder.slice(0, left))
		parts[index] = (parts[index] ?? 0) + 1;
	return parts;
}
