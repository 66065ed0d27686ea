/** The pieces to cast, typed or pasted, and what is cut out of them. */
import { useState } from "preact/hooks";
import { PIECE } from "../../job/fields/piece";
import { focusSoon } from "../focus";
import { ended } from "../sentence";
import type { MarksShown } from "../use-marks";
import { Cutouts } from "./cutouts";
import { blankPiece, fieldId, type PieceRow, pieceIsBlank } from "./form";
import { pastedPieces } from "./paste";
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
		const { pieces, unused, mistake } = pastedPieces(text);
		if (mistake) return { told: sentence(mistake), taken: false };
		edit((before) => ({
			...before,
			pieces: [...before.pieces.filter((row) => !pieceIsBlank(row)), ...pieces],
		}));
		marks.leftAll(pieces.flatMap(idsOf));
		setOpen(undefined);
		focusSoon(foldId(pieces[0]?.key));
		return { told: takenText(pieces.length, unused), taken: true };
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

function takenText(count: number, unused: readonly string[]): string {
	const pieces = count === 1 ? "1 piece" : `${count} pieces`;
	return unused.length === 0
		? `${pieces} added.`
		: `${pieces} added; not used: ${unused.join(", ")}.`;
}

const idsOf = (row: PieceRow): string[] =>
	Object.keys(PIECE).map((field) => fieldId(row.key, field));

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
					<p>or any columns under a header row.</p>
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
