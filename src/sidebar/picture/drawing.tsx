/** The dimensioned drawing of a piece, finished and in the mold, put on the Mold tab as a picture. */
import { useMemo, useState } from "preact/hooks";
import { basisOf } from "../../job/answers/basis";
import { isKnown, saying } from "../../job/answers/known";
import { pieceDrawings, svgOf } from "../../job/drawing/jobdrawing";
import type { JobState } from "../../sheets/messages";
import { SelectField } from "../field";
import type { JobViewProps } from "../job-choice";
import { Came, Notice } from "../notice";
import { ended } from "../sentence";
import { useDoing } from "../use-doing";
import { pieceNames } from "./drawn-piece";

/** Pixels of the printed drawing: Sheets takes a million. */
const MOST_PX = 980_000;

interface Props {
	state: JobState;
	ask: JobViewProps["ask"];
}

export function Drawing({ state, ask }: Props) {
	const basis = useMemo(() => basisOf(state.studio, state.job), [state]);
	const [chosen, setChosen] = useState("");
	const putting = useDoing(state.number);
	const names = pieceNames(basis);
	const name = names.includes(chosen) ? chosen : (names[0] ?? "");
	const index = basis.pieces.findIndex((piece) => piece.name === name);
	const drawings = pieceDrawings(basis, index);
	if (names.length === 0) return null;
	const { units } = basis.given;
	const drawn = isKnown(drawings) && drawings.is.length > 0 && drawings.is;
	const put = () =>
		drawn &&
		void putting.run(
			async () =>
				ask("putDrawing", state.number, await pngOf(svgOf(drawn, units, true))),
			(tab) => `The drawing is on ${tab}.`,
			"Look at the Mold tab.",
		);
	return (
		<section aria-label="Drawing">
			<h2>Drawing</h2>
			<SelectField
				id="drawing-piece"
				label="Piece to draw"
				value={name}
				options={names}
				onChange={setChosen}
			/>
			{drawn ? (
				<img
					class="drawing"
					src={addressOf(svgOf(drawn, units))}
					alt={`${name}, with its dimensions: finished from above, and in the mold.`}
				/>
			) : (
				<Notice kind="plain">
					{isKnown(drawings)
						? "A piece given by its area is built by its template."
						: ended(saying(drawings).replace(/^Look: /, ""))}
				</Notice>
			)}
			<button
				type="button"
				class="main"
				aria-disabled={!drawn || putting.busy}
				onClick={() => !putting.busy && put()}
			>
				Put it on the Mold tab
			</button>
			<Came told={putting.told} />
		</section>
	);
}

const addressOf = (svg: string): string =>
	`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

/** The drawing on a canvas, as a PNG (`data:image/png;base64,…`). */
async function pngOf(svg: string): Promise<string> {
	const image = new Image();
	image.src = addressOf(svg);
	await image.decode();
	const canvas = document.createElement("canvas");
	const { naturalWidth: width, naturalHeight: height } = image;
	const scale = Math.min(2, Math.sqrt(MOST_PX / (width * height)));
	canvas.width = Math.floor(width * scale);
	canvas.height = Math.floor(height * scale);
	canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
	return canvas.toDataURL("image/png");
}
