/** Number formats by what a column holds. Rounding happens here and nowhere before. */

import type { Format, Look } from "../../../templates/plan";
import type { UnitSystem } from "../../job/reading/units";

/** Keeps what is typed: `3/4` stays a length and does not become a day in April. */
export const PLAIN_TEXT = "@";
/** No format of its own. */
export const GENERAL = "General";

const SAME = {
	/** As it is: what a person typed, in a result too. */
	plain: GENERAL,
	whole: "0",
	number: "#,##0.00",
	share: "0.0#%",
	percent: "0%",
	money: "#,##0.00",
	date: "yyyy-mm-dd",
	area: "0.00",
	coating: "0.00",
	mass: "#,##0.00",
	// as fine as any scale that mix or pigment is weighed on, without a digit that it does not show
	weighed: "#,##0.0##",
	pigment: "#,##0.0",
	temperature: "0.0",
} as const;

type ByUnits = Exclude<Format, keyof typeof SAME | "text">;

const BY_UNITS: Readonly<Record<ByUnits, Record<UnitSystem, string>>> = {
	length: { metric: "#,##0", us: "0.00" },
	volume: { metric: "#,##0.0", us: "0.00" },
	density: { metric: "#,##0", us: "0.0" },
};

/** With the digits that people type, no more and no fewer: a scale shows 1.065, a pack holds 25. */
const AS_TYPED: readonly Format[] = [
	"number",
	"mass",
	"weighed",
	"pigment",
	"temperature",
];

/** Lengths that people type are text. */
export const isNumber = (format: Format, look: Look): boolean =>
	format !== "text" && (format !== "length" || look !== "input");

/** The pattern for a column of a block. A formula never is plain text. */
export function numberFormat(
	format: Format,
	look: Look,
	units: UnitSystem,
): string {
	const typedIn = look === "input";
	if (!isNumber(format, look)) return typedIn ? PLAIN_TEXT : GENERAL;
	if (typedIn && AS_TYPED.includes(format)) return GENERAL;
	return format in SAME
		? SAME[format as keyof typeof SAME]
		: BY_UNITS[format as ByUnits][units];
}
