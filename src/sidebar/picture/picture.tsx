/** An impression of a piece: its tones folded, arranged anew on request, and put on the Quote. */
import type { ComponentChildren } from "preact";
import { useMemo, useRef, useState } from "preact/hooks";
import { isKnown, orNull, saying } from "../../job/answers/known";
import { wholeOf } from "../../job/answers/whole";
import type { JobState } from "../../sheets/messages";
import { SelectField } from "../field";
import { Notice } from "../notice";
import { ended } from "../sentence";
import {
	type DrawnPiece,
	drawnPiece,
	pieceNames,
	seenPiece,
} from "./drawn-piece";
import { Impression, printedPng } from "./impression";
import "./picture.css";
import {
	chosenText,
	colorsOf,
	isMirrored,
	placeholderText,
	sharesText,
	type View,
	viewText,
} from "./picture-words";
import { Stepper } from "./stepper";

interface Props {
	state: JobState;
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
	const { state, separator, put, ready = true, children } = props;
	const whole = useMemo(() => wholeOf(state.studio, state.job), [state]);
	const names = pieceNames(whole.basis);
	const [chosen, setChosen] = useState("");
	const [viewName, setViewName] = useState("from above");
	const [folds, setFolds] = useState(3);
	const [arrangement, setArrangement] = useState(1);
	const canvas = useRef<HTMLCanvasElement>(null);
	const name = names.includes(chosen) ? chosen : (names[0] ?? "");
	const view = VIEWS[viewName] ?? "above";
	const face = orNull(seenPiece(whole.basis, name))?.face ?? "";
	const mirrored = isMirrored(view, face);
	const drawn = useMemo(
		() => drawnPiece(whole, name, { folds, arrangement }),
		[whole, name, folds, arrangement],
	);
	const paint = isKnown(drawn) && {
		colors: colorsOf(drawn.is.tones),
		mirrored,
	};
	if (names.length === 0)
		return <Notice kind="plain">This job has no piece yet.</Notice>;
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
			{isKnown(drawn) && paint ? (
				<Impression
					drawn={drawn.is}
					paint={paint}
					place={canvas}
					name={name}
					told={toldOf(drawn.is, view)}
					shares={sharesText(drawn.is.tones, separator)}
				/>
			) : (
				<Notice kind={"look" in drawn ? "warning" : "plain"}>
					{ended(saying(drawn).replace(/^Look: /, ""))}
				</Notice>
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
				value={arrangement}
				least={1}
				onChange={setArrangement}
				next="Another arrangement"
			/>
			<button
				type="button"
				class="main"
				aria-disabled={!ready || !isKnown(drawn)}
				onClick={() =>
					ready && isKnown(drawn) && paint && put(printedPng(drawn.is, paint))
				}
			>
				Put it on the Quote
			</button>
			{children}
		</>
	);
}

/** What is said below the picture, from where it is seen first. */
const toldOf = ({ piece, tones }: DrawnPiece, view: View): string[] => [
	viewText(view, piece.face, piece.outline.shape),
	...chosenText(piece),
	placeholderText(tones),
];
