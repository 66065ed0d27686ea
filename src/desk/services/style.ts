/** Formats of Sheets in the engine's words. */
import {
	BooleanNumber,
	HorizontalAlign,
	type IStyleData,
	WrapStrategy,
} from "@univerjs/core";
import { signature } from "./call";

type Styled = (value: unknown, method: string) => IStyleData;

function oneOf<T>(
	choices: Readonly<Record<string, T>>,
	value: unknown,
	method: string,
): T | null {
	if (value === null) return null;
	const chosen = choices[String(value).toLowerCase()];
	if (chosen === undefined) throw signature([value], method);
	return chosen;
}

const ALIGN = {
	left: HorizontalAlign.LEFT,
	center: HorizontalAlign.CENTER,
	right: HorizontalAlign.RIGHT,
	normal: HorizontalAlign.UNSPECIFIED,
};
const YES_NO = (on: boolean) => (on ? BooleanNumber.TRUE : BooleanNumber.FALSE);

const color = (value: unknown, method: string) => {
	if (value === null) return null;
	if (typeof value !== "string") throw signature([value], method);
	return { rgb: value };
};

/**
 * What each format method of a range puts into the style of a cell, by the method's name for one value.
 * `null` takes the format away; the engine's type does not say that it may be.
 */
export const STYLES = {
	setBackground: (value, method) => ({ bg: color(value, method) }),
	setFontColor: (value, method) => ({ cl: color(value, method) }),
	setFontWeight: (value, method) => ({
		bl: oneOf(
			{ bold: YES_NO(true), normal: YES_NO(false) },
			value,
			method,
		) as BooleanNumber,
	}),
	setFontSize: (value, method) => {
		if (typeof value !== "number") throw signature([value], method);
		return { fs: value };
	},
	setHorizontalAlignment: (value, method) => ({
		ht: oneOf(ALIGN, value, method),
	}),
	setWrap: (value, method) => {
		if (typeof value !== "boolean") throw signature([value], method);
		return { tb: value ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW };
	},
	setNumberFormat: (value, method) => {
		if (typeof value !== "string") throw signature([value], method);
		return { n: /^general$/i.test(value) ? null : { pattern: value } };
	},
} satisfies Record<string, Styled>;
