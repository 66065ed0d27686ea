/** The table of swatches as several functions take it. */
import type { Lab } from "../calc/color";
import { InputError } from "../calc/errors";
import type { SwatchRow } from "../calc/tonecolor";
import { colorIn } from "../job/reading/colortext";
import { custom, list, share, table } from "./arguments";

const TYPED = `e.g. #b5a99a, or "52.1, 8.0, 14.2": L*, a*, b* as measured (D65, 2°)`;

export const color = (help: string) => custom(`${help}, ${TYPED}`, colorIn);

export const swatches = (help: string) => ({
	doses: table(
		`The studio's swatches, e.g. A2:A9: ${help}, 0 where undosed`,
		{},
		{ more: share("dose", { blank: 0 }), alone: true },
	),
	// A cell may be blank where its dose is, the column may not.
	colors: {
		...list(
			custom(`Their colors, one per row, ${TYPED}`, colorIn, {
				optional: true,
			}),
			{ alone: true },
		),
		optional: false,
	},
});

export const OWN =
	"Only as good as the swatches: same mix, finish, age, sealing and dry state. Water, curing and sealing change a color more than weighing does.";

export const SOURCE =
	"Two-constant Kubelka–Munk (Kubelka and Munk 1931, Duncan 1940) on X/Xn, Y/Yn, Z/Zn with tied saturation";

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
