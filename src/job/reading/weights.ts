/** A weight as a scale says it: a number in the workbook's unit, or a text with a unit of its own. */
import { InputError } from "../../calc/errors";
import { came, isBlank, numberIn } from "./cells";
import { fromSi, type UnitSystem } from "./units";

// Exact by definition (NIST SP 811, appendix B).
const KG_OF = { g: 0.001, kg: 1, oz: 0.028349523125, lb: 0.45359237 } as const;

const WITH_UNIT = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(g|kg|oz|lb)$/;

/** `0.92`, `920 g` and `0,92 kg` are the same where the unit is the kilogram. @throws InputError for anything else. */
export function weightTyped(
	name: string,
	typed: unknown,
	units: UnitSystem,
): number {
	if (typeof typed !== "string" || isBlank(typed)) return numberIn(name, typed);
	const [, digits, unit] = WITH_UNIT.exec(typed.trim().toLowerCase()) ?? [];
	if (digits === undefined)
		throw new InputError(
			`${name} must be a number, or a text like "920 g", got ${came(typed)}`,
		);
	const kg =
		Number(digits.replace(",", ".")) * KG_OF[unit as keyof typeof KG_OF];
	return fromSi(kg, "mass", units);
}
