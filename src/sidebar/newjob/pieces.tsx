/** The pieces to cast, typed or pasted, and what is cut out of them. */
import { useState } from "preact/hooks";
import type { Fields } from "../../job/fields/field";
import { CUTOUT } from "../../job/fields/openings";
import { PIECE } from "../../job/fields/piece";
import { focusSoon } from "../focus";
import { ended } from "../sentence";
import type { MarksShown } from "../use-marks";
import { Cutouts } from "./cutouts";
import { blankPiece, fieldId, type PieceRow, pieceIsBlank } from "./form";
import { type PastedRows, pastedRows } from "./paste";
import { foldId, Piece } from "./piece";
import type { SectionProps } from "./use-new-job";

interface PiecesProps extends SectionProps {
	marks: MarksShown;
	/** Key of the piece that is open. */
	open: number | undefined;
	setOpen(key: number | undefined): void;
}

export function Pieces(props: PiecesProps) {
	const { form, edit, marks, open, setOpen } = props;
	const [told, setTold] = useState("");
	const add = () => {
		const piece = blankPiece();
		edit((before) => ({ ...before, pieces: [...before.pieces, piece] }));
		setOpen(piece.key);
		focusSoon(fieldId(piece.key, "name"));
	};
	const take = (text: string): Pasted => {
		const rows = pastedRows(text);
		const { pieces, cutouts, mistake } = rows;
		if (mistake) return { told: sentence(mistake), taken: false };
		edit((before) => ({
			...before,
			pieces:
				pieces.length > 0
					? [...before.pieces.filter((row) => !pieceIsBlank(row)), ...pieces]
					: before.pieces,
			cutouts: [...before.cutouts, ...cutouts],
		}));
		marks.leftAll([
			...pieces.flatMap(idsOf),
			...cutouts.flatMap(({ key }) => idsIn(CUTOUT, key)),
		]);
		setOpen(undefined);
		if (pieces[0]) focusSoon(foldId(pieces[0].key));
		else focusSoon(fieldId(cutouts[0]?.key ?? 0, "piece"));
		return { told: takenText(rows), taken: true };
	};
	return (
		<section aria-labelledby="pieces-heading">
			<h2 id="pieces-heading">Pieces</h2>
			<p class="hint">
				In {form.units === "us" ? "inches" : "mm"}, or as 8' 1/2", 25½" or 2.4
				m.
			</p>
			<ol class="cards">
				{form.pieces.map((row, index) => (
					<Piece
						key={row.key}
						{...props}
						row={row}
						place={index + 1}
						open={open === row.key}
						mistake={firstMistake(row, marks)}
						toggle={() => setOpen(open === row.key ? undefined : row.key)}
						paste={(text) => {
							if (!/[\t\n]/.test(text.trim())) return false;
							const pasted = take(text);
							setTold(pasted.told);
							return pasted.taken;
						}}
					/>
				))}
			</ol>
			<button type="button" id="add-piece" onClick={add}>
				Add a piece
			</button>
			<p class="told" role="status">
				{told}
			</p>
			<PasteBox take={take} />
			<Cutouts {...props} />
		</section>
	);
}

const sentence = (text: string): string =>
	ended(`${text[0]?.toUpperCase()}${text.slice(1)}`);

function takenText({ pieces, cutouts, unused }: PastedRows): string {
	const count = pieces.length + cutouts.length;
	const what = cutouts.length > 0 ? "cutout" : "piece";
	const rows = count === 1 ? `1 ${what}` : `${count} ${what}s`;
	return unused.length === 0
		? `${rows} added.`
		: `${rows} added; not used: ${unused.join(", ")}.`;
}

const idsIn = (fields: Fields, key: number): string[] =>
	Object.keys(fields).map((field) => fieldId(key, field));

const idsOf = (row: PieceRow): string[] => idsIn(PIECE, row.key);

const firstMistake = (row: PieceRow, marks: MarksShown): string | undefined =>
	idsOf(row)
		.map((id) => marks.at(id))
		.find((found) => found !== undefined);

interface Pasted {
	/** What became of the rows, to be told. */
	told: string;
	/** False leaves the text there to be corrected. */
	taken: boolean;
}

/** A place to paste rows from a sheet. */
function PasteBox({ take }: { take: (text: string) => Pasted }) {
	const [text, setText] = useState("");
	const [told, setTold] = useState("");
	const use = () => {
		const pasted = take(text);
		setTold(pasted.told);
		if (pasted.taken) setText("");
	};
	return (
		<details>
			<summary>Paste rows from a sheet</summary>
			<div class="field">
				<label for="pasted-rows">Rows</label>
				<textarea
					id="pasted-rows"
					rows={4}
					value={text}
					spellcheck={false}
					aria-describedby="pasted-order"
					onInput={(event) => setText(event.currentTarget.value)}
				/>
				<div class="hint" id="pasted-order">
					<p>Name, quantity, length, width, thickness;</p>
					<p>or any columns under a header row, of cutouts too.</p>
				</div>
			</div>
			<button type="button" onClick={use} disabled={text.trim() === ""}>
				Use these rows
			</button>
			<p class="told" role="status">
				{told}
			</p>
		</details>
	);
}
