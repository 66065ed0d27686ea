/** Formats of Sheets in the engine's words. */
import {
	BooleanNumber,
	BorderStyleTypes,
	HorizontalAlign,
	type IBorderData,
	type IStyleData,
	VerticalAlign,
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
const VERTICAL = {
	top: VerticalAlign.TOP,
	middle: VerticalAlign.MIDDLE,
	bottom: VerticalAlign.BOTTOM,
};
const WRAP = {
	wrap: WrapStrategy.WRAP,
	overflow: WrapStrategy.OVERFLOW,
	clip: WrapStrategy.CLIP,
};
const YES_NO = (on: boolean) => (on ? BooleanNumber.TRUE : BooleanNumber.FALSE);

const color = (value: unknown, method: string) => {
	if (value === null) return null;
	if (typeof value !== "string") throw signature([value], method);
	return { rgb: value };
};

/**
 * What each format method of a range puts into the style of a cell, by the method's name in the singular.
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
	setFontStyle: (value, method) => ({
		it: oneOf(
			{ italic: YES_NO(true), normal: YES_NO(false) },
			value,
			method,
		) as BooleanNumber,
	}),
	setFontLine: (value, method) => ({
		ul: {
			s: YES_NO(oneOf({ underline: 1, none: 0 }, value, method) === 1),
		},
	}),
	setFontSize: (value, method) => {
		if (typeof value !== "number") throw signature([value], method);
		return { fs: value };
	},
	setFontFamily: (value, method) => {
		if (value !== null && typeof value !== "string")
			throw signature([value], method);
		return { ff: value };
	},
	setHorizontalAlignment: (value, method) => ({
		ht: oneOf(ALIGN, value, method),
	}),
	setVerticalAlignment: (value, method) => ({
		vt: oneOf(VERTICAL, value, method),
	}),
	setWrap: (value, method) => {
		if (typeof value !== "boolean") throw signature([value], method);
		return { tb: value ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW };
	},
	setWrapStrategy: (value, method) => ({ tb: oneOf(WRAP, value, method) }),
	setNumberFormat: (value, method) => {
		if (typeof value !== "string") throw signature([value], method);
		return { n: /^general$/i.test(value) ? null : { pattern: value } };
	},
} satisfies Record<string, Styled>;

const LINES: Readonly<Record<string, BorderStyleTypes>> = {
	DOTTED: BorderStyleTypes.DOTTED,
	DASHED: BorderStyleTypes.DASHED,
	SOLID: BorderStyleTypes.THIN,
	SOLID_MEDIUM: BorderStyleTypes.MEDIUM,
	SOLID_THICK: BorderStyleTypes.THICK,
	DOUBLE: BorderStyleTypes.DOUBLE,
};

/** Names of border lines, as `SpreadsheetApp.BorderStyle` has them. */
export const BORDER_STYLES = Object.fromEntries(
	Object.keys(LINES).map((name) => [name, name]),
);

/** Which sides of a block get a line: true adds, false takes away, null leaves. */
export interface Sides {
	top: boolean | null;
	left: boolean | null;
	bottom: boolean | null;
	right: boolean | null;
	vertical: boolean | null;
	horizontal: boolean | null;
	color: string | null;
	style: string | null;
}

/** The borders of one cell of a bordered block. */
export function bordersAt(
	sides: Sides,
	edge: { top: boolean; left: boolean; bottom: boolean; right: boolean },
): IBorderData {
	const line = {
		s: LINES[sides.style ?? "SOLID"] ?? BorderStyleTypes.THIN,
		cl: { rgb: sides.color ?? "#000000" },
	};
	const side = (on: boolean | null) =>
		on === null ? undefined : on ? line : null;
	const all = {
		t: side(edge.top ? sides.top : sides.horizontal),
		b: side(edge.bottom ? sides.bottom : sides.horizontal),
		l: side(edge.left ? sides.left : sides.vertical),
		r: side(edge.right ? sides.right : sides.vertical),
	};
	return Object.fromEntries(
		Object.entries(all).filter(([, value]) => value !== undefined),
	);
}
