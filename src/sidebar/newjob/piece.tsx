/** One piece: a line when folded up, its fields when open. */
import { useState } from "preact/hooks";
import { unitName } from "../../functions/units";
import { type FieldProps, Mistake, SelectField, TextField } from "../field";
import { focusSoon } from "../focus";
import {
	type PieceField,
	type PieceRow,
	type Units,
	withoutRow,
	withPieceName,
	withRow,
} from "./form";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { type Dimension, SHAPES, shapeNamed } from "./shapes";
import { withUnit } from "./units-shown";

interface PieceProps extends SectionProps {
	row: PieceRow;
	/** Its place in the list, from 1. */
	place: number;
	open: boolean;
	/** A mistake to be seen although the piece is folded up. */
	mistake?: string;
	toggle(): void;
	paste(text: string): boolean;
}

/** The button that opens a piece. */
export const foldId = (key: number | undefined): string => `fold-${key}`;

export function Piece(props: PieceProps) {
	const { row, place, open, toggle } = props;
	const body = `piece-${row.key}`;
	return (
		<li class="card">
			<button
				type="button"
				id={foldId(row.key)}
				class="fold"
				aria-expanded={open ? "true" : "false"}
				aria-controls={body}
				onClick={toggle}
			>
				<bdi class="name">{row.name.trim() || `Piece ${place}`}</bdi>
				<Line {...props} />
			</button>
			{!open && props.mistake && <p class="mistake">{props.mistake}</p>}
			<div id={body} hidden={!open}>
				{open && <Fields {...props} />}
			</div>
			<Mistake id={fieldId(row.key, "row")} />
		</li>
	);
}

/** `2 × rectangle 2400 × 650 × 40 · 149 kg each` */
function Line({ row, figures, form, start }: PieceProps) {
	const sizes = [row.a, row.b, row.c, row.d, row.thickness]
		.map((size) => size.trim())
		.filter((size) => size !== "");
	const mass = figures.pieceMass.get(row.key);
	return (
		<span class="line">
			{`${row.quantity.trim()} × ${row.shape} ${sizes.join(" × ")} `}
			{mass !== undefined && (
				<span class="mass">
					· {withUnit(mass, "mass", form.units, start.separator)} each
				</span>
			)}
		</span>
	);
}

function Fields({ row, place, form, edit, paste }: PieceProps) {
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

type FieldOf = (name: PieceField, label: string) => FieldProps;

interface DropProps extends Pick<PieceProps, "row" | "edit"> {
	field: FieldOf;
}

/** Three more fields once it is said that there is one; saying that there is none clears them. */
function DropEdge({ row, edit, field }: DropProps) {
	const [wanted, setWanted] = useState(false);
	const shown = wanted || hasDrop(row);
	const want = (on: boolean) => {
		setWanted(on);
		if (!on)
			edit((before) =>
				withRow(before, "pieces", row.key, {
					dropHeight: "",
					dropRun: "",
					dropThickness: "",
				}),
			);
	};
	return (
		<>
			<label class="check">
				<input
					type="checkbox"
					checked={shown}
					onChange={(event) => want(event.currentTarget.checked)}
				/>
				Drop edge
			</label>
			{shown && (
				<div class="columns">
					<TextField {...field("dropHeight", "Drop height")} numeric />
					<TextField {...field("dropRun", "Drop run")} numeric />
					<TextField {...field("dropThickness", "Drop thickness")} numeric />
				</div>
			)}
		</>
	);
}

const hasDrop = ({ dropHeight, dropRun, dropThickness }: PieceRow): boolean =>
	[dropHeight, dropRun, dropThickness].some((typed) => typed.trim() !== "");

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
