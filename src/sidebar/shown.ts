/** Numbers as the panel writes them: a thin space between thousands, the file's decimal sign. */
import { type Quantity, type UnitSystem, unitName } from "../job/reading/units";

const THIN_SPACE = "\u202f";

/** A number with so many decimals, e.g. `12 480.5`. */
export function numberShown(
	value: number,
	decimals: number,
	separator: string,
): string {
	const [whole = "", part] = Math.abs(value).toFixed(decimals).split(".");
	const grouped = whole.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
	const mark = separator === ";" ? "," : ".";
	const sign = value < 0 && Number(value.toFixed(decimals)) !== 0 ? "−" : "";
	return sign + (part === undefined ? grouped : grouped + mark + part);
}

/** A number to read, not to weigh by: three or four digits that mean something. */
export function roughly(value: number, separator: string): string {
	const size = Math.abs(value);
	const decimals = size >= 100 || size === 0 ? 0 : size >= 10 ? 1 : 2;
	return numberShown(value, decimals, separator);
}

/** A share as a percentage, e.g. `4.5%`. */
export const percentShown = (share: number, separator: string): string =>
	`${String(Number((share * 100).toPrecision(6))).replace(".", separator === ";" ? "," : ".")}%`;

/** A quantity with its unit, to read: `318 kg`. */
export const withUnit = (
	value: number,
	quantity: Quantity,
	units: UnitSystem,
	separator: string,
): string => `${roughly(value, separator)} ${unitName(quantity, units)}`;

/** Grams of pigment, to a tenth below 100. */
export const gramsShown = (grams: number, separator: string): string =>
	`${numberShown(grams, grams < 100 && grams > 0 ? 1 : 0, separator)} g`;
