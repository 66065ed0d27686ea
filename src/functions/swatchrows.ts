import type { Lab } from "../calc/color";
import { InputError } from "../calc/errors";
import type { SwatchRow } from "../calc/tonecolor";

/**
 * Doses and colors put together, a row for each swatch.
 *
 * @throws InputError when a row has one and not the other.
 */
export function swatchRows(
	doses: readonly { more: readonly number[]; row: number }[],
	colors: readonly (Lab | undefined)[],
): SwatchRow[] {
	const dosed = new Set(doses.map(({ row }) => row));
	const undosed = colors.findIndex((lab, i) => lab && !dosed.has(i + 1));
	if (undosed >= 0)
		throw new InputError(
			`row ${undosed + 1}: doses is blank beside a color: type 0 for an undosed swatch`,
		);
	return doses.map(({ more, row }) => {
		const lab = colors[row - 1];
		if (!lab) throw new InputError(`row ${row}: colors is blank beside a dose`);
		return { doses: more, lab };
	});
}
