/** The palette: calm, one tint for what is typed in, one color for what is wrong, dark text on all of it. */
import type { Look, Rule } from "../../../templates/plan";

export interface Style {
	background?: string;
	color?: string;
	bold?: boolean;
	size?: number;
}

/** Points of plain text. */
export const TEXT_SIZE = 10;

/** A filled cell hides the grid: a page, not a raw sheet. */
export const PAPER = "#ffffff";

const INPUT_TINT = "#fdf3d8";
const HEADING_GRAY = "#e4e2dd";
const WARNING_RED = "#8f1d14";
const QUIET_GRAY = "#595959";

/** How each kind of block looks; results are plain, so that what can be typed in stands out. */
export const LOOKS: Readonly<Record<Look, Style>> = {
	title: { bold: true, size: 16 },
	heading: { background: HEADING_GRAY, bold: true },
	label: {},
	input: { background: INPUT_TINT },
	result: {},
	total: { bold: true },
	large: { bold: true, size: 14 },
	note: { color: QUIET_GRAY },
	caution: { color: WARNING_RED, bold: true },
};

/** How a rule marks cells. Nothing hangs on color alone: what is wrong begins with the word "Look:". */
export const MARKS: Readonly<Record<Rule["look"], string>> = {
	warning: "#f9dcd6",
	current: "#f6d488",
};
