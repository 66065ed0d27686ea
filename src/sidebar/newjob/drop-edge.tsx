/** The drop edge of a piece. */
import { useState } from "preact/hooks";
import { type FieldProps, TextField } from "../field";
import { withRow } from "./edits";
import type { PieceField, PieceRow } from "./form";
import type { SectionProps } from "./section";

type FieldOf = (name: PieceField, label: string) => FieldProps;

interface DropProps extends Pick<SectionProps, "edit"> {
	row: PieceRow;
	field: FieldOf;
}

/** Three more fields once it is said that there is one; saying that there is none clears them. */
export function DropEdge({ row, edit, field }: DropProps) {
	const [wanted, setWanted] = useState(hasDrop(row));
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

export const hasDrop = ({
	dropHeight,
	dropRun,
	dropThickness,
}: PieceRow): boolean =>
	[dropHeight, dropRun, dropThickness].some((typed) => typed.trim() !== "");
