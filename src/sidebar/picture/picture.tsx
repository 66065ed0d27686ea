/** An impression of a piece: its tones folded, arranged anew on request, and put on the Quote. */
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { InputError } from "../../calc/errors";
import { type Veins, veins } from "../../calc/veins";
import type { JobView } from "../../sheets/messages";
import { SelectField } from "../field";
import { Notice } from "../notice";
import { paint } from "./paint";
import "./picture.css";
import { pieceNames, pieceRow, type SeenPiece, seenPiece } from "./seen";
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

/** Two pixels of the picture a pixel of the panel: fine on sharp screens and in print. */
const WIDTH_PX = 560;
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
				<Notice kind="warning">{drawn.problem}</Notice>
			) : (
				<Canvas
					{...drawn}
					colors={colorsOf(job.tones)}
					place={canvas}
					name={name}
					told={[
						viewText(view, face, drawn.piece.outline.shape),
						...chosenText(
							drawn.piece.outline.shape,
							drawn.piece.cutouts.length,
							drawn.piece.notchAt,
						),
						placeholderText(job.tones),
					]}
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

interface Drawn {
	piece: SeenPiece;
	seen: Veins;
}

/** The piece and its pixels, or what a person must correct first. */
function drawing(
	job: JobView,
	name: string,
	how: { folds: number; seed: number; mirrored: boolean },
): Drawn | { problem: string } {
	try {
		const piece = seenPiece(job, name);
		const shares = job.tones.map(({ share }) => share);
		return {
			piece,
			seen: veins({ ...piece, ...how, shares, widthPx: WIDTH_PX }),
		};
	} catch (error) {
		if (error instanceof InputError) return { problem: error.message };
		throw error;
	}
}

interface CanvasProps extends Drawn {
	colors: readonly string[];
	place: { current: HTMLCanvasElement | null };
	name: string;
	told: readonly string[];
	shares: readonly string[];
}

function Canvas({ seen, colors, place, name, told, shares }: CanvasProps) {
	const painted = colors.join();
	// with its caption, not a moment later: what is put on the Quote is what is told
	useLayoutEffect(() => {
		if (place.current) paint(place.current, seen, painted.split(","));
	}, [seen, painted, place]);
	return (
		<figure>
			<canvas
				ref={place}
				role="img"
				aria-label={`${name}. ${told[0]} Tones: ${shares.join(", ")}.`}
			/>
			<figcaption>
				<ul class="tones-seen">
					{shares.map((share, i) => (
						<li key={share}>
							<span class="chip" style={{ background: colors[i] }} />
							<bdi>{share}</bdi>
						</li>
					))}
				</ul>
				<p>An impression: every pour folds its own way.</p>
				{told.filter(Boolean).map((sentence) => (
					<p class="hint" key={sentence}>
						{sentence}
					</p>
				))}
			</figcaption>
		</figure>
	);
}
