/** A color from a photo of a sample beside a reference card. The photo stays in the page. */
import { useEffect, useMemo, useState } from "preact/hooks";
import { hexOfLab, type Lab } from "../../calc/color";
import { areasBetween, type Corners, type Point } from "../../calc/photoarea";
import {
	comparedInPhoto,
	meanReading,
	type PhotoColor,
	readPhoto,
} from "../../calc/photoread";
import { lookOf } from "../../job/answers/given";
import { attempt, isKnown, orNull, saying } from "../../job/answers/known";
import { cardColors } from "../../job/reading/cardtext";
import { studioPigments } from "../../job/studiofile";
import { SelectField, TextField } from "../field";
import { Came, Notice } from "../notice";
import { ended } from "../sentence";
import { numberOrText, percentOrText } from "../typed-number";
import { useDoing } from "../use-doing";
import type { ColorWork } from "./color-work";
import { decodePhoto, type Mark, type Photo, PhotoMarks } from "./photo-marks";

const CARD = "Card";
const SAMPLES = ["Sample", "Second sample"];

/** Where marks stand before anybody has moved them, as shares of the photo. */
function marksFor({ width, height }: Photo, samples: number): Mark[] {
	const box = (left: number, top: number, right: number, bottom: number) =>
		[
			{ x: left * width, y: top * height },
			{ x: right * width, y: top * height },
			{ x: right * width, y: bottom * height },
			{ x: left * width, y: bottom * height },
		] as const;
	return [
		{ name: CARD, corners: box(0.1, 0.1, 0.9, 0.5) },
		...SAMPLES.slice(0, samples).map((name, i) => ({
			name,
			corners: box(0.1 + 0.45 * i, 0.6, 0.4 + 0.45 * i, 0.9),
		})),
	];
}

type Read =
	| { refused: string }
	| { samples: PhotoColor[]; check: number; leftOut: readonly string[] };

/** What the photo says of the marked samples. */
function readingOf(
	photo: Photo,
	marks: readonly Mark[],
	card: readonly Lab[],
	columns: number,
): Read {
	const rows = card.length / columns;
	if (!Number.isInteger(rows))
		return {
			refused: `${card.length} patches are no whole rows of ${columns}`,
		};
	if (marks.length === 0) return { refused: "nothing is marked" };
	const [own, ...samples] = marks.map(({ corners }, i) =>
		areasBetween(photo, corners, i === 0 ? rows : 1, i === 0 ? columns : 1),
	);
	if (!own || samples.some((areas) => !areas))
		return { refused: "the corners of one mark lie on a line" };
	const read = readPhoto(
		own.flatMap((area, i) => {
			const lab = card[i];
			return lab ? [{ ...area, lab, name: `patch ${i + 1}` }] : [];
		}),
	);
	if ("refused" in read) return read;
	const colors: PhotoColor[] = [];
	for (const areas of samples) {
		const area = areas?.[0];
		const color = area ? read.read(area) : { refused: "no sample is marked" };
		if ("refused" in color) return color;
		colors.push(color);
	}
	return { samples: colors, check: read.check, leftOut: read.leftOut };
}

const labText = ({ l, a, b }: Lab): string =>
	[l, a, b].map((each) => each.toFixed(1)).join(", ");

/** Also before there is any swatch to work recipes out from. */
type PhotoWork = Omit<ColorWork, "studio">;

export function PhotoColors(work: PhotoWork & { want(typed: string): void }) {
	const { settings } = work.state.studio;
	const [typed, setTyped] = useState(String(settings.card_patches ?? ""));
	const [columns, setColumns] = useState(String(settings.card_columns ?? ""));
	const [light, setLight] = useState(String(settings.card_light ?? ""));
	const [photo, setPhoto] = useState<Photo>();
	const [marks, setMarks] = useState<readonly Mark[]>([]);
	const [kept, setKept] = useState<readonly PhotoColor[]>([]);
	const opening = useDoing(work.job);
	const open = (file: File | undefined) =>
		file &&
		void opening.run(
			() => decodePhoto(file),
			(next) => {
				setPhoto(next);
				setMarks(marksFor(next, 1));
				return "Move the corners of the card and of the sample.";
			},
			"",
		);
	const move = (mark: number, corner: number, to: Point) =>
		setMarks((before) =>
			before.map((each, i) =>
				i === mark
					? {
							...each,
							corners: each.corners.map((point, k) =>
								k === corner ? to : point,
							) as unknown as Corners,
						}
					: each,
			),
		);
	const card = useMemo(
		() =>
			light === "D50" || light === "D65"
				? attempt(() => cardColors(typed, light))
				: undefined,
		[typed, light],
	);
	const count = Number(numberOrText(columns));
	const settled = useSettled(marks);
	const read = useMemo(
		() =>
			photo && card && isKnown(card) && card.is.length > 0 && count >= 1
				? readingOf(photo, settled, card.is, count)
				: undefined,
		[photo, settled, card, count],
	);
	return (
		<details>
			<summary>A color from a photo, beside a reference card</summary>
			<p class="hint">
				Card and sample in one plane, in one even light, no flash, no gloss. The
				photo stays in this panel. With 12 patches or more it is read to about
				3, seldom worse than 6; with 6 to about 4; in fluorescent light twice as
				far.
			</p>
			<div class="field">
				<label for="card-patches">The card's patches, row by row</label>
				<textarea
					id="card-patches"
					rows={3}
					dir="ltr"
					spellcheck={false}
					value={typed}
					onInput={(event) => setTyped(event.currentTarget.value)}
				/>
			</div>
			<p class="hint">
				L*, a*, b* or #rrggbb, one to a line. Type them once on the Studio tab,
				and they stand here.
			</p>
			<div class="columns">
				<TextField
					id="card-columns"
					label="Patches in a row"
					value={columns}
					numeric
					onChange={setColumns}
				/>
				<SelectField
					id="card-light"
					label="Its values are for"
					value={light}
					options={["D50", "D65"]}
					blank="as its maker says"
					onChange={setLight}
				/>
			</div>
			{card && !isKnown(card) && typed.trim() !== "" && (
				<p class="mistake">{ended(saying(card))}</p>
			)}
			<div class="field">
				<label for="photo-file">The photo</label>
				<input
					id="photo-file"
					type="file"
					accept="image/*"
					onChange={(event) => open(event.currentTarget.files?.[0])}
				/>
			</div>
			<Came told={opening.told} />
			{photo && (
				<>
					<PhotoMarks photo={photo} marks={marks} move={move} />
					<button
						type="button"
						onClick={() =>
							setMarks((before) =>
								before.length > 2
									? before.slice(0, 2)
									: [...before, ...marksFor(photo, 2).slice(2)],
							)
						}
					>
						{marks.length > 2
							? "Take the second sample away"
							: "Compare a second sample"}
					</button>
					{read ? (
						<Reading
							{...work}
							read={read}
							kept={kept}
							keep={(color) => setKept([...kept, color])}
						/>
					) : (
						<Notice kind="plain">
							Type the card's patches, how many stand in a row, and for which
							light they are.
						</Notice>
					)}
				</>
			)}
		</details>
	);
}

/** The marks once they have stayed for a moment: a reading takes longer than a step. */
function useSettled(marks: readonly Mark[]): readonly Mark[] {
	const [settled, setSettled] = useState(marks);
	useEffect(() => {
		const timer = setTimeout(() => setSettled(marks), SETTLED_MS);
		return () => clearTimeout(timer);
	}, [marks]);
	return settled;
}

const SETTLED_MS = 150;

interface ReadingProps extends PhotoWork {
	read: Read;
	want(typed: string): void;
	/** Readings of the same sample in other photos. */
	kept: readonly PhotoColor[];
	keep(color: PhotoColor): void;
}

function Reading({ read, want, kept, keep, ...work }: ReadingProps) {
	if ("refused" in read)
		return <Notice kind="plain">Not read: {ended(read.refused)}</Notice>;
	const { samples, check, leftOut } = read;
	const [first, second] = samples;
	if (!first) return null;
	const color = meanReading([...kept, first]);
	const compared = second && comparedInPhoto(first, second);
	return (
		<div role="status">
			<div class="with-swatch">
				<p>
					From {kept.length > 0 ? `${kept.length + 1} photos` : "a photo"}: L*,
					a*, b* <strong>{labText(color.lab)}</strong>, about ±{" "}
					{Math.ceil(color.within)}; card check {check.toFixed(1)}.
				</p>
				<span
					class="swatch"
					aria-hidden="true"
					style={{ background: hexOfLab(color.lab) }}
				/>
			</div>
			{leftOut.length > 0 && (
				<p class="hint">Left out: {leftOut.join("; ")}.</p>
			)}
			{compared && (
				<p>
					The two samples differ by {compared.difference.toFixed(1)}, about ±{" "}
					{compared.within}.
				</p>
			)}
			<p class="hint">A photo never decides a match under 3.</p>
			<button type="button" onClick={() => want(labText(color.lab))}>
				Want this color
			</button>{" "}
			<button type="button" onClick={() => keep(first)}>
				Average with another photo
			</button>
			<IntoSwatches {...work} lab={color.lab} />
		</div>
	);
}

/** The sample into Swatches, marked as from a photo. */
function IntoSwatches({
	ask,
	job,
	again,
	state,
	basis,
	lab,
}: PhotoWork & { lab: Lab }) {
	const names = studioPigments(state.studio);
	const [doses, setDoses] = useState<Readonly<Record<string, string>>>({});
	const [ageDays, setAge] = useState("");
	const adding = useDoing(job);
	const typed = Object.fromEntries(
		names.flatMap((name) => {
			const dose = percentOrText(doses[name] ?? "");
			return typeof dose === "number" && dose >= 0 && dose < 1
				? [[name, dose] as const]
				: [];
		}),
	);
	const known = Object.keys(typed).length > 0;
	const add = () =>
		void adding
			.run(
				() =>
					ask("recordSwatch", {
						mix: orNull(lookOf(basis.given, "mix")) ?? "",
						finish: orNull(lookOf(basis.given, "finish")) ?? "cast",
						sealed: orNull(lookOf(basis.given, "sealing")) ?? "bare",
						state: orNull(lookOf(basis.given, "state")) ?? "dry",
						doses: typed,
						color: labText(lab),
						read: "photo",
						...(Number(numberOrText(ageDays)) > 0 && {
							ageDays: Number(numberOrText(ageDays)),
						}),
					}),
				(row) => `It is in row ${row} of Swatches, marked as from a photo.`,
				"Look at Swatches before adding it again.",
			)
			.then(again);
	return (
		<>
			<fieldset>
				<legend>Its dry pigment, of binder; 0 where undosed</legend>
				<div class="columns">
					{names.map((name) => (
						<TextField
							key={name}
							id={`photo-dose-${name}`}
							label={name}
							suffix="%"
							value={doses[name] ?? ""}
							numeric
							onChange={(text) => setDoses({ ...doses, [name]: text })}
						/>
					))}
					<TextField
						id="photo-age"
						label="Its age, days"
						value={ageDays}
						numeric
						onChange={setAge}
					/>
				</div>
			</fieldset>
			<button
				type="button"
				onClick={add}
				disabled={!known}
				aria-disabled={adding.busy}
			>
				{adding.busy ? "Adding…" : "Add to Swatches, from a photo"}
			</button>
			<Came told={adding.told} />
		</>
	);
}
