/** Who it is for, what it is, and in which units and mix. */
import { JOB } from "../../job/fields/job";
import { LOOK } from "../../job/fields/tone";
import type { UnitSystem } from "../../job/reading/units";
import { mixNames } from "../../job/studiofile";
import { Entry } from "./entry";
import type { SectionProps } from "./use-new-job";

const UNITS: readonly [UnitSystem, string][] = [
	["metric", "Metric: mm, kg"],
	["us", "US: in, lb"],
];

export function JobFields({ form, start, edit }: SectionProps) {
	return (
		<section aria-labelledby="job-heading">
			<h2 id="job-heading">Job</h2>
			{!start.unitsFixed && (
				<>
					<p class="hint">The first job also makes the studio's own tabs.</p>
					<UnitsChoice form={form} edit={edit} />
				</>
			)}
			{(["client", "title", "pourDate"] as const).map((name) => (
				<Entry
					key={name}
					field={JOB[name]}
					id={name}
					value={form[name]}
					onChange={(typed) => edit((before) => ({ ...before, [name]: typed }))}
				/>
			))}
		</section>
	);
}

export function MixField({
	form,
	studio,
	edit,
	readAgain,
}: SectionProps & { readAgain: () => void }) {
	return (
		<section aria-labelledby="mix-heading">
			<h2 id="mix-heading">Mix</h2>
			<Entry
				field={LOOK.mix}
				id="mix"
				label="From the Mixes tab"
				value={form.mix}
				options={mixNames(studio)}
				onChange={(mix) => edit((before) => ({ ...before, mix }))}
			/>
			<button type="button" class="quiet" onClick={readAgain}>
				Read mixes and pigments again
			</button>
		</section>
	);
}

function UnitsChoice({ form, edit }: Pick<SectionProps, "form" | "edit">) {
	const choose = (units: UnitSystem) =>
		edit((before) => ({ ...before, units }));
	return (
		<fieldset class="field">
			<legend>Units of this workbook; they cannot be changed later</legend>
			{UNITS.map(([units, label]) => (
				<label key={units} class="check">
					<input
						type="radio"
						name="units"
						checked={form.units === units}
						onChange={() => choose(units)}
					/>
					{label}
				</label>
			))}
		</fieldset>
	);
}
