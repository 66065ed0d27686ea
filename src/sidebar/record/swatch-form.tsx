/** A color measured on a sample, into Swatches, from where the next Tones take it. */
import { useMemo, useState } from "preact/hooks";
import { wholeOf } from "../../job/answers/whole";
import { mixNames, studioPigments } from "../../job/studiofile";
import type { JobState } from "../../sheets/messages";
import { DateField, SelectField, TextField } from "../field";
import { focusSoon } from "../focus";
import type { JobViewProps } from "../job-choice";
import { MarksContext } from "../mistake";
import { Came } from "../notice";
import type { Ask } from "../script";
import { useDoing } from "../use-doing";
import { useMarks } from "../use-marks";
import {
	blankSample,
	type DosedTone,
	dosedTones,
	FINISHES,
	paintOf,
	type Sample,
	SEALS,
	STATES,
	sampleMistakes,
	swatchInput,
	swatchText,
	typedDoses,
} from "./sample";

interface Props extends JobViewProps {
	/** Without it, the doses are to be typed. */
	state: JobState | undefined;
}

export function SwatchForm({ ask, start, state }: Props) {
	const mixes = mixNames(start.studio);
	const tones = useMemo(
		() => (state ? dosedTones(wholeOf(state.studio, state.job)) : []),
		[state],
	);
	const form = useSample(ask, String(state?.job.mix || (mixes[0] ?? "")));
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
		<section aria-labelledby="swatch-heading">
			<h2 id="swatch-heading">A measured color</h2>
			<MarksContext.Provider value={marks}>
				<SelectField {...field("mix", "Mix")} options={mixes} />
				<Doses
					names={studioPigments(start.studio)}
					tones={tones}
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
		</section>
	);
}

/** The sample alive: what is typed, what is wrong, and having it added. */
function useSample(ask: Ask, mix: string) {
	const [sample, setSample] = useState<Sample>(() => blankSample(mix));
	const adding = useDoing();
	const mistakes = useMemo(() => sampleMistakes(sample), [sample]);
	const marks = useMarks(mistakes);
	const added = (row: number): string => {
		setSample({ ...sample, color: "", remark: "" });
		marks.clear();
		return `It is in row ${row} of Swatches.`;
	};
	const add = () => {
		if (mistakes.size === 0)
			return void adding.run(
				() => ask("recordSwatch", swatchInput(sample)),
				added,
				"Look at Swatches before adding it again.",
			);
		marks.showAll();
		focusSoon([...mistakes.keys()][0] ?? "");
	};
	return { sample, setSample, marks, mistakes, adding, add };
}

interface DosesProps {
	names: readonly string[];
	tones: readonly DosedTone[];
	doses: Sample["doses"];
	change(doses: Sample["doses"]): void;
}

/** Taken from a tone, or typed. */
function Doses({ names, tones, doses, change }: DosesProps) {
	const [tone, setTone] = useState("");
	const choose = (name: string) => {
		const chosen = tones.find((each) => each.name === name);
		setTone(name);
		if (chosen) change(typedDoses(chosen));
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
