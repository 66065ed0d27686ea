/** A reference card as a studio typed it: its patches row by row. */
import { type Lab, labOfD50 } from "../../calc/color";
import { at } from "../../calc/errors";
import { colorIn } from "./colortext";

/**
 * The patches' colors under D65. `#rrggbb` is of D65 already.
 *
 * @throws InputError naming the first patch that is no color.
 */
export const cardColors = (typed: string, light: "D50" | "D65"): Lab[] =>
	typed
		.split(/[|\n]+/)
		.map((text) => text.trim())
		.filter((text) => text !== "")
		.map((text, i) =>
			at(`patch ${i + 1}`, () => {
				const lab = colorIn("color", text);
				return light === "D50" && !text.startsWith("#") ? labOfD50(lab) : lab;
			}),
		);
