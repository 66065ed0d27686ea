/** The wanted color: typed, or that of a swatch. */
import type { Lab } from "../../calc/color";
import { InputError } from "../../calc/errors";
import { isBlank } from "../../job/reading/cells";
import { colorIn } from "../../job/reading/colortext";
import type { StudioFile } from "../../job/studiofile";
import { SelectField, TextField } from "../field";
import { paintOf } from "../record/sample";

/** The color; undefined while what is typed is none. */
export function colorOrUndefined(typed: string): Lab | undefined {
	try {
		return colorIn("color", typed);
	} catch (error) {
		if (error instanceof InputError) return undefined;
		throw error;
	}
}

interface Props {
	wanted: string;
	setWanted(typed: string): void;
	studio: StudioFile;
}

export function WantedColor({ wanted, setWanted, studio }: Props) {
	const swatches = (studio.swatches ?? []).flatMap((swatch, i) => {
		if (isBlank(swatch.color)) return [];
		const doses = Object.entries(swatch.doses ?? {})
			.filter(([, dose]) => Number(dose) > 0)
			.map(
				([name, dose]) =>
					`${name} ${Number((Number(dose) * 100).toPrecision(4))}%`,
			);
		return [
			{
				name: `${i + 1} · ${doses.join(" + ") || "undosed"}`,
				color: String(swatch.color),
			},
		];
	});
	return (
		<section aria-labelledby="wanted-heading">
			<h2 id="wanted-heading">Wanted color</h2>
			<ColorField
				id="wanted-color"
				label="Color: #b8a591, or L*, a*, b*"
				value={wanted}
				onChange={setWanted}
			/>
			{swatches.length > 0 && (
				<SelectField
					id="wanted-swatch"
					label="Or as a swatch"
					value={swatches.find(({ color }) => color === wanted)?.name ?? ""}
					options={swatches.map(({ name }) => name)}
					blank="choose one"
					onChange={(name) =>
						setWanted(swatches.find((one) => one.name === name)?.color ?? "")
					}
				/>
			)}
			{wanted.trim() !== "" && !colorOrUndefined(wanted) && (
				<p class="mistake" role="status">
					Type a color as #b8a591, or L*, a* and b* with commas.
				</p>
			)}
		</section>
	);
}

/** A color as text, painted beside it. */
export const ColorField = (props: {
	id: string;
	label: string;
	value: string;
	onChange(typed: string): void;
}) => (
	<div class="with-swatch">
		<TextField {...props} numeric />
		<span
			class="swatch"
			aria-hidden="true"
			style={{ background: paintOf(props.value) }}
		/>
	</div>
);
