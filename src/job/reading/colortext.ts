/** Colors as people type them. */
import { type Lab, labOfHex } from "../../calc/color";
import { InputError } from "../../calc/errors";
import { came, filled } from "./cells";

const NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)$/;

/**
 * A color from `#rrggbb` or from `L*, a*, b*` as measured (D65, 2°); with `;` between, decimals may be commas.
 *
 * @throws InputError when it is neither, or when L* is outside 0 to 100 or a*, b* outside ±200.
 */
export function colorIn(name: string, cell: unknown): Lab {
	const text = typeof cell === "string" ? cell.trim() : "";
	if (/^#[0-9a-f]{6}$/i.test(text)) return labOfHex(text);
	// Digits after # are a slip of the pen, not an error cell.
	const value = /^#[0-9a-f]+$/i.test(text) ? text : filled(name, cell);
	const [l, a, b] = measured(text);
	if (l === undefined || a === undefined || b === undefined)
		throw new InputError(
			`${name} must be #rrggbb or "L*, a*, b*", e.g. #b5a99a or "52.1, 8.0, 14.2", got ${came(value)}`,
		);
	if (l < 0 || l > 100)
		throw new InputError(`${name}: L* must be between 0 and 100, got ${l}`);
	if (Math.abs(a) > 200 || Math.abs(b) > 200)
		throw new InputError(
			`${name}: a* and b* must be between -200 and 200, got ${a} and ${b}`,
		);
	return { l, a, b };
}

/** Three numbers, or nothing. */
function measured(text: string): number[] {
	const parts = text
		.replace(/−/g, "-")
		.split(text.includes(";") ? ";" : ",")
		.map((part) => part.trim());
	const decimal = text.includes(";") ? NUMBER : /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
	return parts.length === 3 && parts.every((part) => decimal.test(part))
		? parts.map((part) => Number(part.replace(",", ".")))
		: [];
}
