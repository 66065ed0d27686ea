/** The fields of one piece: those its shape has, and any other that holds something. */
import { unitName } from "../../job/reading/units";
import { SelectField, TextField } from "../field";
import { focusSoon } from "../focus";
import { DropEdge, hasDrop } from "./drop-edge";
import { withoutRow, withPieceName, withRow } from "./edits";
import { FACES, type PieceField, type PieceRow, type Units } from "./form";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { type Dimension, SHAPES, shapeNamed } from "./shapes";

export interface PieceFieldsProps extends SectionProps {
	row: PieceRow;
	/** Its place in the list, from 1. */
	place: number;
	/** True when what is pasted was rows and has been taken. */
	paste(text: string): boolean;
}

export function PieceFields({
	row,
	place,
	form,
	edit,
	paste,
}: PieceFieldsProps) {
	const shape = shapeNamed(row.shape);
	const field = (name: PieceField, label: string) => ({
		id: fieldId(row.key, name),
		label,
		value: row[name],
		onChange: (typed: string) =>
			edit((before) => withRow(before, "pieces", row.key, { [name]: typed })),
	});
	const dimensions = shownDimensions(row);
	return (
		<>
			<div class="columns wide-first">
				<TextField
					{...field("name", "Name")}
					onChange={(name) =>
						edit((before) => withPieceName(before, row, name))
					}
					onPaste={paste}
				/>
				<TextField {...field("quantity", "Quantity")} numeric />
			</div>
			<SelectField
				{...field("shape", "Shape")}
				options={SHAPES.map(({ name }) => name)}
				onChange={(name) =>
					edit((before) =>
						withRow(before, "pieces", row.key, inShape(row, name)),
					)
				}
			/>
			<div class="columns">
				{dimensions.map(([name, label]) => (
					<TextField
						key={name}
						{...field(name, dimensionLabel(row.shape, name, label, form.units))}
						numeric
					/>
				))}
				<TextField {...field("thickness", "Thickness")} numeric />
			</div>
			<SelectField
				id={fieldId(row.key, "face")}
				label="Cast"
				value={row.face}
				options={FACES}
				blank="not decided"
				onChange={(face) =>
					edit((before) => withRow(before, "pieces", row.key, { face }))
				}
			/>
			{(shape?.drop || hasDrop(row)) && (
				<DropEdge row={row} edit={edit} field={field} />
			)}
			<button
				type="button"
				class="quiet"
				onClick={() => {
					edit((before) => withoutRow(before, "pieces", row.key));
					focusSoon("add-piece");
				}}
			>
				Remove <span class="unseen">{row.name.trim() || `piece ${place}`}</span>
			</button>
		</>
	);
}

/** The shape's dimensions, and any that holds a value without being one. */
function shownDimensions(row: PieceRow): [Dimension, string][] {
	const used = shapeNamed(row.shape)?.dimensions ?? {};
	return (["a", "b", "c", "d"] as const)
		.filter((name) => used[name] !== undefined || row[name].trim() !== "")
		.map((name) => [name, used[name] ?? "not used"]);
}

const dimensionLabel = (
	shape: string,
	name: Dimension,
	meaning: string,
	units: Units,
): string =>
	shape === "area" && name === "a"
		? `A, ${meaning} (${unitName("area", units)})`
		: `${name.toUpperCase()}, ${meaning}`;

/** The row in another shape, without the dimensions that shape has not. */
function inShape(row: PieceRow, shape: string): Partial<PieceRow> {
	const used = shapeNamed(shape)?.dimensions ?? {};
	const keep = (name: Dimension) => (used[name] === undefined ? "" : row[name]);
	return { shape, a: keep("a"), b: keep("b"), c: keep("c"), d: keep("d") };
}
