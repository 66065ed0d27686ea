/** The tones folded together: what share of the batch each is, and how much of each pigment it takes. */
import { sum } from "../../calc/sum";
import { TextField } from "../field";
import { focusSoon } from "../focus";
import { RowMistake } from "../mistake";
import { percentShown } from "../shown";
import { shareLeft, withoutRow, withRow } from "./edits";
import { blankTone, type ToneRow } from "./form";
import { doseField } from "./mistakes";
import { PigmentChoice } from "./pigment-choice";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { percentOrText } from "./typed";
import { gramsShown, withUnit } from "./units-shown";

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

interface ToneProps extends SectionProps {
	row: ToneRow;
	place: number;
}

function Tone({ row, place, form, start, figures, edit }: ToneProps) {
	const { key, doses } = row;
	const tone = figures.tones.get(key);
	const change = (fields: Partial<ToneRow>) =>
		edit((before) => withRow(before, "tones", key, fields));
	const grams = (pigment: string): string | undefined => {
		const given = tone?.grams.get(pigment);
		return given === undefined ? "" : gramsShown(given, start.separator);
	};
	return (
		<fieldset>
			<legend class="unseen">Tone {place}</legend>
			<div class="columns wide-first">
				<TextField
					id={fieldId(key, "name")}
					label="Tone"
					value={row.name}
					onChange={(name) => change({ name })}
				/>
				<TextField
					id={fieldId(key, "share")}
					label="Share"
					suffix="%"
					value={row.share}
					onChange={(share) => change({ share })}
					numeric
				/>
			</div>
			{form.pigments.map((pigment) => (
				<TextField
					key={pigment}
					id={fieldId(key, doseField(pigment))}
					label={`${pigment}, of binder`}
					suffix="%"
					value={doses[pigment] ?? ""}
					after={grams(pigment)}
					onChange={(dose) => change({ doses: { ...doses, [pigment]: dose } })}
					numeric
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

/** Said where shares do not add up to 100%: they are taken as parts of their sum. */
function shareSum(tones: readonly ToneRow[], separator: string): string {
	const shares = tones.map(({ share }) => percentOrText(share));
	if (!shares.every((share) => typeof share === "number")) return "";
	const whole = sum(shares);
	return Math.abs(whole - 1) < 1e-9 || whole === 0
		? ""
		: `Shares add up to ${percentShown(whole, separator)}: each is taken as its part of that.`;
}
