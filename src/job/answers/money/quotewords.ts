/** A piece as the quote lists it, in the client's words. */

import type { Typed } from "../../fields/field";
import type { PieceRow } from "../../fields/piece";
import { isBlank, plain } from "../../reading/cells";
import { type UnitSystem, unitName } from "../../reading/units";

const NO_BREAK = "\u00a0";

const asTyped = (typed: Typed | undefined): string =>
	isBlank(typed)
		? "?"
		: typeof typed === "number"
			? plain(typed)
			: String(typed).trim();

/** A length as it was typed; a bare number with its unit. A line break in 1 1/4 in would make it 1/4. */
function lengthWords(typed: Typed | undefined, units: UnitSystem): string {
	const text = asTyped(typed);
	const bare = /[0-9½¼¾⅛⅜⅝⅞]$/.test(text);
	return (bare ? `${text} ${unitName("length", units)}` : text).replace(
		/ /g,
		NO_BREAK,
	);
}

export function pieceWords(row: PieceRow, units: UnitSystem): string {
	const drop = isBlank(row.dropHeight)
		? ""
		: `, drop edge ${lengthWords(row.dropHeight, units)}`;
	return `${asTyped(row.quantity)} × ${asTyped(row.name)}: ${shapeWords(row, units)}, ${lengthWords(row.thickness, units)} thick${drop}`;
}

function shapeWords(row: PieceRow, units: UnitSystem): string {
	const [a, b, c, d] = [row.a, row.b, row.c, row.d].map((typed) =>
		lengthWords(typed, units),
	);
	const notched = `${a} × ${b}, notch ${c} × ${d}`;
	const words: Record<string, string> = {
		round: `round, ${a} across`,
		oval: `oval, ${a} × ${b}`,
		l: `L, ${notched}`,
		u: `U, ${notched}`,
		basin: `basin, ${a} × ${b}, ${c} high`,
		tube: `tube, ${a} across, ${c} high`,
		area: `to template, ${asTyped(row.a)} ${unitName("area", units)}`,
	};
	return words[asTyped(row.shape).toLowerCase()] ?? `${a} × ${b}`;
}
