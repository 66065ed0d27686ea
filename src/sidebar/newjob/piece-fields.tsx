/** The fields of one piece. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { DIMENSIONS, type Dimension, PIECE } from "../../job/fields/piece";
import { unitName } from "../../job/reading/units";
import { focusSoon } from "../focus";
import { Entry, entriesOf, keysFor, withoutUnused } from "./entry";
import { type PieceRow, withoutRow, withPieceName, withRow } from "./form";
import type { SectionProps } from "./use-new-job";

export interface PieceFieldsProps extends SectionProps {
	row: PieceRow;
	/** Its place in the list, from 1. */
	place: number;
	/** True when what is pasted was rows and has been taken. */
	paste(text: string): boolean;
}

type Key = keyof typeof PIECE;

const FIRST: readonly Key[] = ["name", "quantity", "shape", "thickness"];
const SIDES = ["a", "b", "c", "d"] as const;
const DROP: readonly Key[] = ["dropHeight", "dropRun", "dropThickness"];
const DROP_AT: readonly Key[] = ["dropOn"];

/** Those that its shape has, and any other that holds something. */
export function PieceFields(props: PieceFieldsProps) {
	const { row, place, form, edit, paste } = props;
	const change = (typed: Partial<PieceRow>) =>
		edit((before) => withRow(before, "pieces", row.key, typed));
	const entry = entriesOf(PIECE, row, change);
	const used = keysFor(PIECE, row.shape);
	const shown = (keys: readonly Key[]) =>
		keys.filter((key) => used.includes(key) || row[key].trim() !== "");
	const others = (Object.keys(PIECE) as Key[]).filter(
		(key) => ![...FIRST, ...SIDES, ...DROP, ...DROP_AT].includes(key),
	);
	return (
		<>
			<div class="columns wide-first">
				<Entry
					{...entry("name")}
					onChange={(name) =>
						edit((before) => withPieceName(before, row, name))
					}
					onPaste={paste}
				/>
				<Entry {...entry("quantity")} />
			</div>
			<Entry
				{...entry("shape")}
				onChange={(shape) => change({ shape, ...withoutUnused(PIECE, shape) })}
			/>
			<div class="columns">
				{SIDES.filter(
					(side) => meaning(row, side) || row[side].trim() !== "",
				).map((side) => (
					<Entry
						key={side}
						{...entry(side)}
						label={sideLabel(row, side, form.units)}
					/>
				))}
				<Entry {...entry("thickness")} />
			</div>
			{shown(others).map((key) => (
				<Entry key={key} {...entry(key)} />
			))}
			{shown(DROP).length > 0 && (
				<DropEdge row={row} clear={change}>
					<div class="columns">
						{DROP.map((key) => (
							<Entry key={key} {...entry(key)} />
						))}
					</div>
					{DROP_AT.map((key) => (
						<Entry key={key} {...entry(key)} />
					))}
				</DropEdge>
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

/** What a side is of the row's shape; nothing where the shape has it not. */
const meaning = ({ shape }: PieceRow, side: Dimension): string | undefined =>
	DIMENSIONS[shape as keyof typeof DIMENSIONS]?.[side];

function sideLabel(
	row: PieceRow,
	side: Dimension,
	units: SectionProps["form"]["units"],
): string {
	const unit =
		row.shape === "area" && side === "a" ? ` (${unitName("area", units)})` : "";
	return `${PIECE[side].label}, ${meaning(row, side) ?? "not used"}${unit}`;
}

interface DropProps {
	row: PieceRow;
	clear(blank: Partial<PieceRow>): void;
	children: ComponentChildren;
}

/** More fields once it is said that there is one; saying that there is none clears them. */
function DropEdge({ row, clear, children }: DropProps) {
	const keys = [...DROP, ...DROP_AT];
	const has = keys.some((key) => row[key].trim() !== "");
	const [wanted, setWanted] = useState(has);
	const want = (on: boolean) => {
		setWanted(on);
		if (!on) clear(Object.fromEntries(keys.map((key) => [key, ""])));
	};
	const shown = wanted || has;
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
			{shown && children}
		</>
	);
}
