/** How a cell looks on paper. */
import {
	BooleanNumber,
	HorizontalAlign,
	type IBorderStyleData,
	type IStyleData,
	type Nullable,
	WrapStrategy,
} from "@univerjs/core";

export type Borders = Partial<
	Record<"top" | "right" | "bottom" | "left", string>
>;

const ALIGN: Readonly<Record<number, string>> = {
	[HorizontalAlign.LEFT]: "left",
	[HorizontalAlign.CENTER]: "center",
	[HorizontalAlign.RIGHT]: "right",
};

/** A cell's style as CSS. */
export function cssOf(
	style: IStyleData,
	isNumber: boolean,
): Partial<CSSStyleDeclaration> {
	return {
		fontFamily: style.ff ?? "",
		fontSize: style.fs ? `${style.fs}pt` : "",
		fontWeight: style.bl === BooleanNumber.TRUE ? "bold" : "",
		fontStyle: style.it === BooleanNumber.TRUE ? "italic" : "",
		color: style.cl?.rgb ?? "",
		backgroundColor: style.bg?.rgb ?? "",
		// a white cell hides the grid, as it does on the screen
		borderBottomColor: /^#?f{6}$/i.test(style.bg?.rgb ?? "") ? "#fff" : "",
		textAlign: ALIGN[style.ht ?? 0] ?? (isNumber ? "right" : ""),
		whiteSpace: style.tb === WrapStrategy.WRAP ? "pre-wrap" : "pre",
	};
}

/** Colors of a cell's lines. */
export function bordersOf({ bd }: IStyleData): Borders {
	const color = (line: Nullable<IBorderStyleData>) =>
		line ? (line.cl?.rgb ?? "#000") : undefined;
	return {
		top: color(bd?.t),
		right: color(bd?.r),
		bottom: color(bd?.b),
		left: color(bd?.l),
	};
}
