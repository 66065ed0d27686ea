/** What a scale said, as a gloved finger typed it, and as it is shown. */
import { InputError } from "../../calc/errors";
import { numberShown } from "../shown";

export interface Scale {
	/** The smallest step that it shows. */
	division: number;
	unit: string;
}

/** Further off than this is asked about once before it is written. */
const FAR = 0.1;

const NUMBER = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const TWO_WAYS = /^[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * The number, with a comma or a point before its decimals; undefined for nothing typed.
 *
 * `1,250` is 1.25 or 1250, whichever is near what was asked for.
 *
 * @throws InputError when it is no number, or one that could be either.
 */
export function scaleReading(typed: string, asked: number): number | undefined {
	const text = typed.replace(/\s|(?:kg|lb|g)\s*$/gi, "");
	if (text === "") return undefined;
	if (!NUMBER.test(text))
		throw new InputError(`"${typed.trim().slice(0, 30)}" is not a weight`);
	const decimal = Number(text.replace(",", "."));
	if (!TWO_WAYS.test(text) || !isFar(decimal, asked)) return decimal;
	const whole = Number(text.replace(/[.,]/, ""));
	if (!isFar(whole, asked)) return whole;
	throw new InputError(
		`"${text}" can be read in two ways: type ${whole} or ${decimal}`,
	);
}

/** Whether a reading is so far from what was asked for that a key was likely missed. */
export const isFar = (reading: number, asked: number): boolean =>
	Math.abs(reading - asked) > FAR * asked + 1e-9;

const decimalsOf = (division: number): number =>
	/\.(\d+)$/.exec(String(division))?.[1]?.length ?? 0;

/** `12.40 kg`; what was typed finer than the scale shows is shown in full. */
export function weightShown(
	weight: number,
	{ division, unit }: Scale,
	separator: string,
): string {
	const decimals = Math.max(
		decimalsOf(division),
		Math.min(4, decimalsOf(Number(weight.toFixed(4)))),
	);
	return `${numberShown(weight, decimals, separator)} ${unit}`;
}
