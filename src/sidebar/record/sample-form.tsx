/** The fields of a measured sample. */
import { useState } from "preact/hooks";
import { mixNames, studioPigments } from "../../job/studiofile";
import type { JobView } from "../../sheets/messages";
import { DateField, SelectField, TextField } from "../field";
import type { JobViewProps } from "../job-choice";
import { MarksContext } from "../mistake";
import { Came } from "../notice";
import {
	dosesOf,
	FINISHES,
	type Sample,
	SEALS,
	STATES,
	swatchInput,
	swatchText,
} from "./sample";
import { paintOf } from "./seen-color";
import { useSample } from "./use-sample";

interface Props extends JobViewProps {
	view: Pick<JobView, "mix" | "tones">;
}

export function SampleForm({ ask, start, view }: Props) {
	const mixes = mixNames(start.studio);
	const form = useSample(ask, view.mix || (mixes[0] ?? ""));
	const { sample, setSample, marks, mistakes, adding, add } = form;
	const change = (fields: Partial<Sample>) =>
		setSample((before) => ({ ...before, ...fields }));
	const field = (name: Exclude<keyof Sample, "doses">, label: string) => ({
		id: `sample-${name === "ageDays" ? "age" : name}`,
		label,
		value: sample[name],
		onChange: (typed: string) => change({ [name]: typed }),
	});
	return (
		<>
			<MarksContext.Provider value={marks}>
				<SelectField {...field("mix", "Mix")} options={mixes} />
				<Doses
					names={studioPigments(start.studio)}
					tones={view.tones}
					doses={sample.doses}
					change={(doses) => change({ doses })}
				/>
				<div class="with-swatch">
					<TextField
						{...field("color", "Color: #b8a591, or L*, a*, b*")}
						numeric
					/>
					<span
						class="swatch"
						aria-hidden="true"
						style={{ background: paintOf(sample.color) }}
					/>
				</div>
				<div class="columns">
					<SelectField {...field("finish", "Finish")} options={FINISHES} />
					<SelectField {...field("sealed", "Sealed")} options={SEALS} />
					<SelectField {...field("state", "Measured")} options={STATES} />
					<TextField {...field("ageDays", "Age, days")} numeric />
					<TextField {...field("lot", "Lot")} />
					<DateField {...field("date", "Date")} />
				</div>
				<TextField {...field("remark", "Remark")} />
			</MarksContext.Provider>
			{mistakes.size === 0 && (
				<p class="will">
					Will add to Swatches: <bdi>{swatchText(swatchInput(sample))}</bdi>
				</p>
			)}
			<button
				type="button"
				class="main"
				onClick={add}
				aria-disabled={adding.busy}
			>
				{adding.busy ? "Adding…" : "Add to Swatches"}
			</button>
			<Came told={adding.told} />
		</>
	);
}

interface DosesProps {
	names: readonly string[];
	tones: JobView["tones"];
	doses: Sample["doses"];
	change(doses: Sample["doses"]): void;
}

/** Taken from a tone, or typed. */
function Doses({ names, tones, doses, change }: DosesProps) {
	const [tone, setTone] = useState("");
	const choose = (name: string) => {
		const chosen = tones.find((each) => each.name === name);
		setTone(name);
		if (chosen) change(dosesOf(chosen));
	};
	return (
		<>
			{tones.length > 0 && (
				<SelectField
					id="sample-tone"
					label="Doses of the tone"
					value={tone}
					options={tones.map(({ name }) => name)}
					blank="type them below"
					onChange={choose}
				/>
			)}
			<fieldset>
				<legend>Dry pigment, of binder</legend>
				<div class="columns">
					{names.map((name) => (
						<TextField
							key={name}
							id={`sample-dose-${name}`}
							label={name}
							suffix="%"
							value={doses[name] ?? ""}
							numeric
							onChange={(typed) => {
								setTone("");
								change({ ...doses, [name]: typed });
							}}
						/>
					))}
				</div>
			</fieldset>
		</>
	);
}
