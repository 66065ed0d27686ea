/** Openings cast into the pieces. */
import { CUTOUT } from "../../job/fields/openings";
import { DIMENSIONS } from "../../job/fields/piece";
import { focusSoon } from "../focus";
import { RowMistake } from "../mistake";
import { Entry, entriesOf } from "./entry";
import {
	blankCutout,
	type CutoutRow,
	fieldId,
	filledPieces,
	withoutRow,
	withRow,
} from "./form";
import type { SectionProps } from "./use-new-job";

export function Cutouts({ form, edit }: Pick<SectionProps, "form" | "edit">) {
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
							<Cutout {...{ edit, row, pieces }} place={index + 1} />
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

interface CutoutProps extends Pick<SectionProps, "edit"> {
	row: CutoutRow;
	place: number;
	pieces: readonly string[];
}

type Key = keyof typeof CUTOUT;

const FIRST: readonly Key[] = ["piece", "count", "shape", "a", "b"];
const PLACE: readonly Key[] = ["left", "front"];

/** Whether a cutout has it: a row has a spacing, a rectangle has corners. */
const has: Partial<Record<Key, (row: CutoutRow) => boolean>> = {
	radius: ({ shape }) => shape === "rectangle",
	spacing: ({ count }) => Number(count) > 1,
};

function Cutout({ row, place, pieces, edit }: CutoutProps) {
	const change = (typed: Partial<CutoutRow>) =>
		edit((before) => withRow(before, "cutouts", row.key, typed));
	const entry = entriesOf(CUTOUT, row, change);
	const { a = "", b } = sidesOf(row.shape);
	const others = (Object.keys(CUTOUT) as Key[]).filter(
		(key) =>
			![...FIRST, ...PLACE].includes(key) &&
			(has[key]?.(row) !== false || row[key] !== ""),
	);
	return (
		<fieldset>
			<legend class="unseen">Cutout {place}</legend>
			<div class="columns wide-first">
				<Entry
					{...entry("piece")}
					options={pieces.filter((name) => name !== "")}
				/>
				<Entry {...entry("count")} />
			</div>
			<Entry
				{...entry("shape")}
				onChange={(shape) =>
					change(sidesOf(shape).b ? { shape } : { shape, b: "" })
				}
			/>
			<div class="columns">
				<Entry {...entry("a")} label={`A, ${a}`} />
				{(b !== undefined || row.b !== "") && (
					<Entry {...entry("b")} label={`B, ${b ?? "not used"}`} />
				)}
			</div>
			<div class="columns">
				{PLACE.map((key) => (
					<Entry key={key} {...entry(key)} />
				))}
			</div>
			{others.map((key) => (
				<Entry key={key} {...entry(key)} />
			))}
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

const sidesOf = (shape: string): { a?: string; b?: string } =>
	DIMENSIONS[shape as keyof typeof DIMENSIONS] ?? {};
