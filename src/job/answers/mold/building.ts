/** How this studio builds its molds, by the Studio tab. */

import { InputError } from "../../../calc/errors";
import type { Rectangle } from "../../../calc/guillotine";
import type { Building } from "../../../calc/moldparts";
import { trimmed } from "../../../calc/nesting";
import type { SettingKey } from "../../fields/settings";
import { type Given, setting } from "../given";
import { all, from, type Known } from "../known";

export interface Workshop extends Building {
	board: Rectangle;
	/** Without its trim. */
	usable: Rectangle;
	kerfM: number;
	trimM: number;
	stripLengthM: number;
}

const LENGTHS = [
	"board_length",
	"board_width",
	"board_thickness",
	"kerf",
	"board_trim",
	"strip_thickness",
	"strip_length",
	"screw_spacing",
] as const satisfies readonly SettingKey[];

type Lengths = Record<(typeof LENGTHS)[number], number>;

/** The first screw of a side is a quarter of their spacing from its end. Common practice, no source. */
const END_OF_SPACING = 1 / 4;

export const workshop = (given: Given): Known<Workshop> =>
	from(
		all<[string, ...number[]]>([
			setting(given, "sides_stand"),
			...LENGTHS.map((key) => setting(given, key)),
		]),
		([stand, ...numbers]) => {
			const of = Object.fromEntries(
				LENGTHS.map((key, index) => [key, numbers[index]]),
			) as Lengths;
			const usableM =
				Math.min(of.board_length, of.board_width) - 2 * of.board_trim;
			if (usableM <= 0)
				throw new InputError("the trim leaves nothing of a board");
			const board = { lengthM: of.board_length, widthM: of.board_width };
			return {
				board,
				usable: trimmed(board, of.board_trim),
				kerfM: of.kerf,
				trimM: of.board_trim,
				boardM: of.board_thickness,
				stripM: of.strip_thickness,
				stripLengthM: of.strip_length,
				beside: stand === "beside the base",
				screwSpacingM: of.screw_spacing,
				screwEndM: of.screw_spacing * END_OF_SPACING,
			};
		},
	);
