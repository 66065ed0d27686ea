import { InputError, quoted } from "../../calc/errors";

/** Units of a length in tenths of a millimeter: whole numbers keep 96 in exact. */
const TENTHS_MM: Record<string, number> = {
	mm: 10,
	cm: 100,
	m: 10000,
	in: 254,
};
const TENTHS_A_METER = 10000;

const FRACTIONS: Record<string, string> = {
	"½": "1/2",
	"⅓": "1/3",
	"⅔": "2/3",
	"¼": "1/4",
	"¾": "3/4",
	"⅕": "1/5",
	"⅖": "2/5",
	"⅗": "3/5",
	"⅘": "4/5",
	"⅙": "1/6",
	"⅚": "5/6",
	"⅛": "1/8",
	"⅜": "3/8",
	"⅝": "5/8",
	"⅞": "7/8",
};

/** `2`, `2.4`, `2,4`, `1/2`, `25 1/2`, `25-1/2`. */
const NUMBER = String.raw`(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:[.,]\d+)?|[.,]\d+)`;
const FEET = new RegExp(`^(${NUMBER}) ?ft(?: ?-? ?(${NUMBER})(?: ?in)?)?$`);
const ONE_UNIT = new RegExp(`^(${NUMBER}) ?(mm|cm|m|in)?$`);

/** One spelling for every sign: `8′–0½″` becomes `8 ft-0 1/2 in`. */
function plainSpelling(text: string): string {
	return text
		.toLowerCase()
		.replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`)
		.replace(/[⁄∕]/g, "/")
		.replace(/[–—‐‑−]/g, "-")
		.replace(/''|["″”“]/g, " in ")
		.replace(/['′’‘]/g, " ft ")
		.replace(/\b(?:inches|inch|in)\b\.?/g, " in ")
		.replace(/(\d) *(?:feet|foot|ft)\b\.?/g, "$1 ft ")
		.replace(/(\d) *in\b/g, "$1 in ")
		.replace(/\s+/g, " ")
		.replace(/ ?- ?/g, "-")
		.trim();
}

function quantity(number: string): number {
	const [, whole = "0", top, bottom] =
		/^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(number) ?? [];
	if (top === undefined || bottom === undefined)
		return Number(number.replace(",", "."));
	const fraction = Number(top) / Number(bottom);
	// "25 3/2" is a slip of the finger; "3/2" alone may be meant.
	return whole !== "0" && fraction >= 1 ? Number.NaN : Number(whole) + fraction;
}

/**
 * A typed length in meters; a number without a unit is taken in `bareUnit` (`mm` or `in`), after feet in inches.
 *
 * @throws InputError when the text is no length, or when a comma may stand for thousands as well as for a decimal.
 */
export function lengthM(text: string, bareUnit: "mm" | "in"): number {
	const spelled = plainSpelling(text);
	checkComma(text, spelled);
	const negative = spelled.startsWith("-");
	const length = unsignedM(negative ? spelled.slice(1) : spelled, bareUnit);
	if (!Number.isFinite(length))
		throw new InputError(
			`${quoted(text)} is not a length: type for example 2440, 8' 1/2", 25 1/2 or 650 mm`,
		);
	return negative ? -length : length;
}

/** @throws InputError when a comma may stand for thousands as well as for a decimal. */
export function checkComma(text: string, spelled = text.trim()): void {
	if (/(?<![\d.,])\d+,\d{3}(?![\d.,])/.test(spelled))
		throw new InputError(
			`${quoted(text)} can be read in two ways: type ${spelled.replace(",", "")} or ${spelled.replace(",", ".")}`,
		);
}

function unsignedM(spelled: string, bareUnit: "mm" | "in"): number {
	const [, feet, inches = "0"] = FEET.exec(spelled) ?? [];
	// 2'440 is 2440 with a sign for thousands, not 2 ft and 440 in.
	if (feet !== undefined && quantity(inches) >= 12) return Number.NaN;
	if (feet !== undefined)
		return ((quantity(feet) * 12 + quantity(inches)) * 254) / TENTHS_A_METER;
	const [, number, unit = bareUnit] = ONE_UNIT.exec(spelled) ?? [];
	return number === undefined
		? Number.NaN
		: (quantity(number) * (TENTHS_MM[unit] ?? Number.NaN)) / TENTHS_A_METER;
}
