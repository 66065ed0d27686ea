/** What goes into the cells of a block: a job's data, or what the template says. */
import type { Block, Slots, Value } from "../../../templates/plan";
import { filled, type Tokens } from "./tokens";

/** The block's rows as `setValues` takes them; data goes before the template's own. */
export function contentOf(
	block: Block,
	slots: Slots,
	tokens: Tokens,
): Value[][] {
	const data = dataFor(block, slots);
	if (data) return data.map((row) => row.map(keptAsText));
	return (block.rows ?? []).map((row) =>
		row.map((value) => fromTemplate(value, tokens)),
	);
}

/**
 * A text that Sheets keeps as it is. Without the mark in front, which is not part of the cell, `=HYPERLINK(…)` that a
 * client typed would be a formula, `3-4` a date and `007` a number.
 */
export const keptAsText = <T>(value: T): T | string =>
	typeof value === "string" && value !== "" ? `'${value}` : value;

const fromTemplate = (value: Value, tokens: Tokens): Value => {
	if (typeof value !== "string") return value;
	const text = filled(value, tokens);
	return text.startsWith("=") ? text : keptAsText(text);
};

/** The job's data for a block as rows; one value is a row of one. */
function dataFor(block: Block, slots: Slots): Value[][] | undefined {
	const key = block.slot ?? block.name;
	const data = key === undefined ? undefined : slots[key];
	if (data === undefined) return undefined;
	return typeof data === "object" ? data.map((row) => [...row]) : [[data]];
}
