/** The tones folded together: what share of the batch each is, and how much of each pigment it takes. */
import { sameName } from "../../calc/names";
import { sum } from "../../calc/sum";
import { PIGMENT } from "../../job/fields/pigment";
import { TONE } from "../../job/fields/tone";
import { DOSE } from "../../job/jobfile";
import { type StudioFile, studioPigments } from "../../job/studiofile";
import { focusSoon } from "../focus";
import { RowMistake } from "../mistake";
import { gramsShown, percentShown, withUnit } from "../shown";
import { percentOrText } from "../typed-number";
import { Entry, entriesOf } from "./entry";
import {
	blankTone,
	doseField,
	fieldId,
	type JobForm,
	shareLeft,
	type ToneRow,
	withoutRow,
	withRow,
} from "./form";
import type { SectionProps } from "./use-new-job";

export function Tones(props: SectionProps) {
	const { form, start, edit } = props;
	const add = () => {
		const tone = blankTone(shareLeft(form.tones));
		edit((before) => ({ ...before, tones: [...before.tones, tone] }));
		focusSoon(fieldId(tone.key, "name"));
	};
	return (
		<section aria-labelledby="tones-heading">
			<h2 id="tones-heading">Tones</h2>
			<PigmentChoice {...props} />
			<ol class="cards">
				{form.tones.map((row, index) => (
					<li key={row.key} class="card">
						<Tone {...props} row={row} place={index + 1} />
					</li>
				))}
			</ol>
			<button type="button" id="add-tone" onClick={add}>
				Add a tone
			</button>
			<p class="told" role="status">
				{shareSum(form.tones, start.separator)}
			</p>
		</section>
	);
}

/** Which pigments of the Pigments tab the tones have a field for. */
function PigmentChoice({ form, studio, edit }: SectionProps) {
	const own = studioPigments(studio);
	const toggle = (name: string, on: boolean) =>
		edit((before) => ({
			...before,
			pigments: pigmentNames(before, own).filter((other) =>
				other === name ? on : before.pigments.includes(other),
			),
		}));
	return (
		<fieldset>
			<legend>Pigments in this job</legend>
			{own.length === 0 && <p class="hint">The Pigments tab has none yet.</p>}
			{pigmentNames(form, own).map((name) => (
				<label key={name} class="check">
					<input
						type="checkbox"
						checked={form.pigments.includes(name)}
						onChange={(event) => toggle(name, event.currentTarget.checked)}
					/>
					<bdi>{name}</bdi>
					{!own.includes(name) && " (no longer on the Pigments tab)"}
				</label>
			))}
		</fieldset>
	);
}

/** Those of the Pigments tab in their order, then what is in the job and has gone from the tab. */
const pigmentNames = (form: JobForm, own: readonly string[]): string[] => [
	...new Set([...own, ...form.pigments]),
];

interface ToneProps extends SectionProps {
	row: ToneRow;
	place: number;
}

function Tone({ row, place, form, start, studio, figures, edit }: ToneProps) {
	const { key, doses } = row;
	const tone = figures.tones.get(key);
	const change = (typed: Partial<ToneRow>) =>
		edit((before) => withRow(before, "tones", key, typed));
	const entry = entriesOf(TONE, row, change);
	const grams = (pigment: string): string => {
		const given = tone?.grams.get(pigment);
		return given === undefined ? "" : gramsShown(given, start.separator);
	};
	return (
		<fieldset>
			<legend class="unseen">Tone {place}</legend>
			<div class="columns wide-first">
				<Entry {...entry("name")} />
				<Entry {...entry("share")} />
			</div>
			{form.pigments.map((pigment) => (
				<Entry
					key={pigment}
					field={DOSE}
					id={fieldId(key, doseField(pigment))}
					label={`${pigment}, of ${basisOf(studio, pigment)}`}
					value={doses[pigment] ?? ""}
					after={grams(pigment)}
					onChange={(dose) => change({ doses: { ...doses, [pigment]: dose } })}
				/>
			))}
			<RowMistake id={fieldId(key, "row")} />
			{tone && tone.over > 1e-9 && (
				<p class="caution">
					Over the pigment limit by{" "}
					{percentShown(Number(tone.over.toPrecision(3)), start.separator)} of
					cement.
				</p>
			)}
			<div class="foot">
				<span>
					{tone &&
						`${withUnit(tone.mass, "mass", form.units, start.separator)} on the scale`}
				</span>
				<button
					type="button"
					class="quiet"
					onClick={() => {
						edit((before) => withoutRow(before, "tones", key));
						focusSoon("add-tone");
					}}
				>
					Remove{" "}
					<span class="unseen">{row.name.trim() || `tone ${place}`}</span>
				</button>
			</div>
		</fieldset>
	);
}

/** In what the studio states doses of a pigment. */
const basisOf = ({ pigments }: StudioFile, name: string): string =>
	PIGMENT.basis.words?.find(
		(word) =>
			word ===
			pigments.find((row) => sameName(String(row.name ?? ""), name))?.basis,
	) ?? "binder";

/** Said where shares do not add up to 100%: they are taken as parts of their sum. */
function shareSum(tones: readonly ToneRow[], separator: string): string {
	const shares = tones.map(({ share }) => percentOrText(share));
	if (!shares.every((share) => typeof share === "number")) return "";
	const whole = sum(shares);
	return Math.abs(whole - 1) < 1e-9 || whole === 0
		? ""
		: `Shares add up to ${percentShown(whole, separator)}: each is taken as its part of that.`;
}
