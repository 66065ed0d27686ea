/** What a cell holds, read by the rules of the sheet functions: blank, error cell, date, number, text. */
import { at, InputError, quoted } from "../../calc/errors";
import { lengthM } from "./typed";
import { fromSi, toSi, type UnitSystem, unitName } from "./units";

const ERROR_CELL =
	/^(#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|ERROR!|SPILL!|CALC!)|Loading\.\.\.)$/;

export const isBlank = (cell: unknown): boolean =>
	cell === undefined ||
	cell === null ||
	(typeof cell === "string" && cell.trim() === "");

const isDate = (cell: unknown): cell is Date =>
	Object.prototype.toString.call(cell) === "[object Date]";

/** A number as people write it: no noise of binary arithmetic. */
export function plain(value: number): string {
	const short = Number(value.toPrecision(10));
	// The largest number there is, rounded up, is none.
	return String(Number.isFinite(short) ? short : value);
}

/** A length as a sentence says it: `980 mm`. */
export const lengthText =
	(units: UnitSystem) =>
	(lengthM: number): string =>
		`${plain(fromSi(lengthM, "length", units))} ${unitName("length", units)}`;

/** What came, for an error sentence. */
export function came(cell: unknown): string {
	if (typeof cell === "number") return plain(cell);
	if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
	if (isDate(cell)) return "a date";
	return quoted(String(cell).trim());
}

/** Fails where the cell is blank or an error cell; every other reading starts here. */
export function filled(name: string, cell: unknown): unknown {
	if (isBlank(cell)) throw new InputError(`${name} is blank`);
	if (typeof cell === "string" && ERROR_CELL.test(cell.trim()))
		throw new InputError(`${name} is an error cell (${cell.trim()})`);
	return cell;
}

/** Numbers up to here can be added up without end; beyond, a sum of weights is infinite and each share of it 0. */
const LARGEST = 1e100;
/** Products of a few numbers from here on are not 0. */
const SMALLEST = 1e-100;

/** A number in the unit it is typed in; TRUE, text and dates are no numbers. */
export function numberIn(name: string, cell: unknown): number {
	const value = filled(name, cell);
	const size = typeof value === "number" ? Math.abs(value) : Number.NaN;
	if (size === 0 || (size >= SMALLEST && size <= LARGEST))
		return value as number;
	if (Number.isFinite(size))
		throw new InputError(
			`${name} is too ${size > 1 ? "large" : "small"} to calculate with, got ${came(value)}`,
		);
	throw new InputError(`${name} must be a number, got ${came(value)}`);
}

/** A length in meters, from a number or a text as people write it. */
export function lengthIn(
	name: string,
	cell: unknown,
	units: UnitSystem,
): number {
	const value = filled(name, cell);
	if (isDate(value))
		throw new InputError(
			`${name}: ${value.getMonth() + 1}/${value.getDate()} was read as a date: format the cell as plain text`,
		);
	if (typeof value !== "string")
		return toSi(numberIn(name, value), "length", units);
	return at(name, () => lengthM(value, units === "us" ? "in" : "mm"));
}

/** Longer names are told apart so slowly that thousands of them take minutes. */
const LONGEST = 10_000;

/** A name or another text; a number typed for a name is that text. */
export function textIn(name: string, cell: unknown): string {
	const value = filled(name, cell);
	if (typeof value === "string" && value.length > LONGEST)
		throw new InputError(
			`${name} is longer than 10,000 letters, got ${came(value)}`,
		);
	if (typeof value === "string") return value.trim();
	if (typeof value === "number" && Number.isFinite(value)) return plain(value);
	throw new InputError(`${name} must be text, got ${came(value)}`);
}

/** One of the allowed words, whatever its case. */
export function wordIn<W extends string>(
	name: string,
	cell: unknown,
	words: readonly W[],
): W {
	const value = filled(name, cell);
	const typed = typeof value === "string" ? value.trim().toLowerCase() : "";
	const word = words.find((candidate) => candidate.toLowerCase() === typed);
	if (word !== undefined) return word;
	const list =
		words.length > 2 ? `one of ${words.join(", ")}` : words.join(" or ");
	throw new InputError(`${name} must be ${list}, got ${came(value)}`);
}
