/** Openings cast into the pieces. */
import { SelectField, TextField } from "../field";
import { focusSoon } from "../focus";
import { RowMistake } from "../mistake";
import { withoutRow, withRow } from "./edits";
import {
	blankCutout,
	type CutoutField,
	type CutoutRow,
	filledPieces,
} from "./form";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { CUTOUT_SHAPES, shapeNamed } from "./shapes";

export function Cutouts({ form, edit }: SectionProps) {
	const pieces = filledPieces(form).map(({ name }) => name.trim());
	const add = () => {
		const cutout = blankCutout(pieces.length === 1 ? pieces[0] : "");
		edit((before) => ({ ...before, cutouts: [...before.cutouts, cutout] }));
		focusSoon(fieldId(cutout.key, "piece"));
	};
	return (
		<>
			<h3 id="cutouts-heading">Cutouts</h3>
			{form.cutouts.length > 0 && (
				<ol class="cards" aria-labelledby="cutouts-heading">
					{form.cutouts.map((row, index) => (
						<li key={row.key} class="card">
							<Cutout {...{ form, edit, row, pieces }} place={index + 1} />
						</li>
					))}
				</ol>
			)}
			<button type="button" id="add-cutout" onClick={add}>
				Add a cutout
			</button>
		</>
	);
}

interface CutoutProps extends Pick<SectionProps, "form" | "edit"> {
	row: CutoutRow;
	place: number;
	pieces: readonly string[];
}

function Cutout({ row, place, pieces, edit }: CutoutProps) {
	const change = (fields: Partial<CutoutRow>) =>
		edit((before) => withRow(before, "cutouts", row.key, fields));
	const field = (name: CutoutField, label: string) => ({
		id: fieldId(row.key, name),
		label,
		value: row[name],
		onChange: (typed: string) => change({ [name]: typed }),
	});
	const { a = "", b } = shapeNamed(row.shape)?.dimensions ?? {};
	return (
		<fieldset>
			<legend class="unseen">Cutout {place}</legend>
			<div class="columns wide-first">
				<SelectField
					{...field("piece", "In piece")}
					options={pieces.filter((name) => name !== "")}
				/>
				<TextField {...field("count", "Each")} numeric />
			</div>
			<SelectField
				{...field("shape", "Shape")}
				options={CUTOUT_SHAPES.map(({ name }) => name)}
				onChange={(shape) =>
					change(shapeNamed(shape)?.dimensions.b ? { shape } : { shape, b: "" })
				}
			/>
			<div class="columns">
				<TextField {...field("a", `A, ${a}`)} numeric />
				{(b !== undefined || row.b !== "") && (
					<TextField {...field("b", `B, ${b ?? "not used"}`)} numeric />
				)}
			</div>
			<RowMistake id={fieldId(row.key, "row")} />
			<button
				type="button"
				class="quiet"
				onClick={() => {
					edit((before) => withoutRow(before, "cutouts", row.key));
					focusSoon("add-cutout");
				}}
			>
				Remove <span class="unseen">{`cutout ${place}`}</span>
			</button>
		</fieldset>
	);
}
