/** What one range and a list of ranges are told alike: a value, lines, looks, and to be cleared. */
import type { Call } from "./call";
import {
	clearCells,
	sidesOf,
	writeBorders,
	writeStyle,
	writeValues,
} from "./fill";
import type { Place } from "./place";
import { STYLES } from "./style";

type Style = keyof typeof STYLES;

export const STYLE_NAMES = Object.keys(STYLES) as Style[];

export function markingMethods<Self>(
	call: Call,
	places: readonly Place[],
	self: () => Self,
) {
	const clearing = (content: boolean, format: boolean) => () => {
		clearCells(call, places, { content, format });
		return self();
	};
	const styles = STYLE_NAMES.map((name) => [
		name,
		(value: unknown) => {
			writeStyle(call, places, name, value);
			return self();
		},
	]);
	return {
		...(Object.fromEntries(styles) as Record<Style, (value: unknown) => Self>),
		setBorder(...sides: unknown[]) {
			writeBorders(call, places, sidesOf(sides));
			return self();
		},
		setValue(value: unknown) {
			for (const place of places) writeValues(call, place, () => value);
			return self();
		},
		clear: clearing(true, true),
		clearContent: clearing(true, false),
		clearFormat: clearing(false, true),
	};
}
