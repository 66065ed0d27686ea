/** An impression of a piece: its tones folded, arranged anew on request, and put on the Quote. */
import type { ComponentChildren } from "preact";
import { useMemo, useRef, useState } from "preact/hooks";
import type { JobView } from "../../sheets/messages";
import { SelectField } from "../field";
import { Notice } from "../notice";
import { ended } from "../sentence";
import { drawing } from "./drawing";
import { Impression } from "./impression";
import "./picture.css";
import { pieceNames, pieceRow, type SeenPiece } from "./seen";
import { Stepper } from "./stepper";
import {
	chosenText,
	colorsOf,
	isMirrored,
	placeholderText,
	sharesText,
	type View,
	viewText,
} from "./words";

interface Props {
	job: JobView;
	separator: string;
	/** Puts a PNG (`data:image/png;base64,…`) on the Quote. */
	put(png: string): void;
	/** False while an earlier picture is on its way. */
	ready?: boolean;
	/** What came of putting it. */
	children?: ComponentChildren;
}

/** Finer bands than these are thinner than a pixel. */
const MOST_FOLDS = 7;

const VIEWS: Record<string, View> = {
	"from above": "above",
	"as the mold sees it": "mold",
};

export function Picture(props: Props) {
	const { job, separator, put, ready = true, children } = props;
	const names = pieceNames(job);
	const [chosen, setChosen] = useState("");
	const [viewName, setViewName] = useState("from above");
	const [folds, setFolds] = useState(3);
	const [seed, setSeed] = useState(1);
	const canvas = useRef<HTMLCanvasElement>(null);
	const name = names.includes(chosen) ? chosen : (names[0] ?? "");
	const view = VIEWS[viewName] ?? "above";
	const face = faceOf(job, name);
	const mirrored = isMirrored(view, face);
	const drawn = useMemo(
		() => drawing(job, name, { folds, seed, mirrored }),
		[job, name, folds, seed, mirrored],
	);
	if (names.length === 0)
		return <Notice kind="plain">This job has no piece yet.</Notice>;
	const shares = sharesText(job.tones, separator);
	return (
		<>
			<SelectField
				id="picture-piece"
				label="Piece"
				value={name}
				options={names}
				onChange={setChosen}
			/>
			<SelectField
				id="picture-view"
				label="Seen"
				value={viewName}
				options={Object.keys(VIEWS)}
				onChange={setViewName}
			/>
			{"problem" in drawn ? (
				<Notice kind="warning">{ended(drawn.problem)}</Notice>
			) : (
				<Impression
					seen={drawn.seen}
					colors={colorsOf(job.tones)}
					place={canvas}
					name={name}
					told={toldOf(drawn.piece, { job, view, face })}
					shares={shares}
				/>
			)}
			<Stepper
				id="folds"
				label="Folds"
				value={folds}
				least={0}
				most={MOST_FOLDS}
				onChange={setFolds}
			/>
			<Stepper
				id="arrangement"
				label="Arrangement"
				value={seed}
				least={1}
				onChange={setSeed}
				next="Another arrangement"
			/>
			<button
				type="button"
				class="main"
				aria-disabled={!ready || "problem" in drawn}
				onClick={() =>
					ready && canvas.current && put(canvas.current.toDataURL("image/png"))
				}
			>
				Put it on the Quote
			</button>
			{children}
		</>
	);
}

const faceOf = (job: JobView, name: string): string =>
	(job.faces[pieceRow(job, name)] ?? "").trim().toLowerCase();

/** What is said below the picture, from where it is seen first. */
const toldOf = (
	{ outline: { shape }, cutouts, notchAt }: SeenPiece,
	{ job, view, face }: { job: JobView; view: View; face: string },
): string[] => [
	viewText(view, face, shape),
	...chosenText(shape, cutouts.length, notchAt),
	placeholderText(job.tones),
];
