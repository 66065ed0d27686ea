import { hexOfLab } from "../../calc/color";
import { InputError } from "../../calc/errors";
import { colorIn } from "../../job/reading/colortext";

/** A typed color as the page paints it; nothing while it is none. */
export function paintOf(typed: string): string {
	try {
		// D65, as it was measured: a style's own lab() is of D50.
		return hexOfLab(colorIn("color", typed));
	} catch (error) {
		if (error instanceof InputError) return "transparent";
		throw error;
	}
}
