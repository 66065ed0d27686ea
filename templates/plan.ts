/**
 * What a template may say: tabs made of blocks. Data only; `sheets/` writes it into a spreadsheet.
 *
 * Texts and formulas may hold tokens in braces: `{length}`, `{mass}` … become the unit of the workbook,
 * `{job}` the prefix of the job's names (`job14_`), `{tab:Tones}` the quoted name of another tab, `{studio:waste}` the cell of
 * a setting of the Studio tab, `{at:Tones.mix}` the cells of the block of that tab with this slot or name.
 */

export type { Format } from "../src/job/tabs/tab";

import type { Format } from "../src/job/tabs/tab";

export type Value = string | number | boolean;

/** How a block looks. Inputs have one tint, results none; the writer knows the colors. */
export type Look =
	| "title"
	| "heading"
	| "label"
	| "input"
	| "result"
	| "total"
	| "large"
	| "note"
	| "caution";

export interface Block {
	/** Top left cell, A1 notation. */
	at: string;
	/** Filled from the top left; a text that starts with `=` is a formula, `""` leaves a cell blank. */
	rows?: readonly (readonly Value[])[];
	/** Rows and columns that the look and the formats cover; default: the size of `rows`. */
	size?: readonly [rows: number, columns: number];
	look: Look;
	/** One for all columns, or one a column. */
	formats?: Format | readonly Format[];
	/**
	 * Name of the whole block. In a job tab it gets the job's prefix, in a studio tab `studio_`.
	 * The data of a job with the same key is written into the block.
	 */
	name?: string;
	/** Key of the job's data, and of the block's cells for `{at:Tab.slot}`; names cost calls, so few blocks have one. */
	slot?: string;
	align?: "left" | "center" | "right";
	wrap?: boolean;
	/** Shown beside the block's first cell. */
	note?: string;
}

/** A dropdown (`list` or `from`), or a number between two limits: anything else is refused, with the help in words; a name that is not in `from` is only marked. */
export interface Choice {
	range: string;
	list?: readonly string[];
	/** The cells of the list, as formulas write them: `{at:Mixes.names}`. */
	from?: string;
	between?: readonly [number, number];
	help?: string;
}

/** A conditional format; `when` is a formula without custom functions, for the range's first cell. */
export interface Rule {
	/** One range, or several with commas between. */
	range: string;
	when: string;
	look: "warning" | "current";
}

export interface Tab {
	/** Job tabs are written as `14 Tones`. */
	name: string;
	/** Of the tab itself; a job's tabs have one, so that they stand out from the studio's. */
	color?: string;
	/** Grid size: new tabs are cut to it. A job's tabs have one number of rows, so that copies need no cutting. */
	rows: number;
	/** Column widths in pixels, from column A; their number is the number of columns. */
	widths: readonly number[];
	frozenRows?: number;
	frozenColumns?: number;
	blocks: readonly Block[];
	choices?: readonly Choice[];
	rules?: readonly Rule[];
	/** How many columns at its end are kept out of sight. */
	hidden?: number;
	/** A column more that is out of sight, counted from 1: the words by which what is typed beside them is found. */
	keys?: number;
	/** Name of one cell range more than blocks have: name to A1. */
	names?: Readonly<Record<string, string>>;
}

/** Data for named blocks: one value, or rows. */
export type Slots = Readonly<
	Record<string, Value | readonly (readonly Value[])[]>
>;
