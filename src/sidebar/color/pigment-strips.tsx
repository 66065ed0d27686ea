/** The color of each pigment against its dose, its swatches below, and how well they agree. */
import { useMemo } from "preact/hooks";
import { hexOfLab } from "../../calc/color";
import { percent } from "../../calc/errors";
import { agreements } from "../../calc/leaveout";
import { type PalettePigment, paletteColor } from "../../calc/palette";
import type { ColorWork } from "./color-work";

/** Colors of a strip: between them the page goes straight. */
const STOPS = 17;

export function PigmentStrips({
	studio: { palette, names, rows },
}: Pick<ColorWork, "studio">) {
	const known = useMemo(() => agreements(rows), [rows]);
	const strip = (pigment: PalettePigment) =>
		Array.from({ length: STOPS }, (_, i) =>
			hexOfLab(paletteColor(palette, [pigment], [i / (STOPS - 1)])),
		).join(", ");
	return (
		<details>
			<summary>Color against dose, and how swatches agree</summary>
			{palette.pigments.map((pigment) => {
				const { column, swatches, strongest } = pigment;
				const own = known.find((one) => one.column === column);
				return (
					<div key={column} class="strip">
						<h3>
							{names[column]}, undosed to {percent(strongest, 3)} of binder
						</h3>
						<div
							class="curve"
							aria-hidden="true"
							style={{
								background: `linear-gradient(to right, ${strip(pigment)})`,
							}}
						>
							{swatches.map(({ dose, lab }) => (
								<span
									key={dose}
									style={{
										left: `${(100 * dose) / strongest}%`,
										background: hexOfLab(lab),
									}}
								/>
							))}
						</div>
						<p>
							{swatches.length - 1} dosed;{" "}
							{own?.mean === undefined
								? "an undosed swatch and three doses show how they agree."
								: `each is ${own.mean.toFixed(1)} off what the others say, at the mean.`}
							{own?.odd &&
								` Look: the one of ${percent(rows[own.odd.row]?.doses[column] ?? 0, 3)} disagrees by ${own.odd.difference.toFixed(1)}.`}
						</p>
					</div>
				);
			})}
		</details>
	);
}
