/** One piece: a line when folded up, its fields when open. */
import { RowMistake } from "../mistake";
import { withUnit } from "../shown";
import { fieldId } from "./form";
import { PieceFields, type PieceFieldsProps } from "./piece-fields";

interface PieceProps extends PieceFieldsProps {
	open: boolean;
	/** A mistake to be seen although the piece is folded up. */
	mistake?: string;
	toggle(): void;
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
				{open && <PieceFields {...props} />}
			</div>
			<RowMistake id={fieldId(row.key, "row")} />
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
