/** Who it is for, what it is, and in which units and mix. */
import { DateField, SelectField, TextField } from "../field";
import type { JobForm, Units } from "./form";
import type { SectionProps } from "./section";

const UNITS: readonly [Units, string][] = [
	["metric", "Metric: mm, kg"],
	["us", "US: in, lb"],
];

export function JobFields({ form, start, edit }: SectionProps) {
	const field = (
		name: "client" | "title" | "pourDate" | "mix",
		label: string,
	) => ({
		id: name,
		label,
		value: form[name],
		onChange: (typed: string) =>
			edit((before) => ({ ...before, [name]: typed })),
	});
	return (
		<section aria-labelledby="job-heading">
			<h2 id="job-heading">Job</h2>
			{!start.unitsFixed && (
				<>
					<p class="hint">The first job also makes the studio's own tabs.</p>
					<UnitsChoice form={form} edit={edit} />
				</>
			)}
			<TextField {...field("client", "Client")} />
			<TextField {...field("title", "Title")} />
			<DateField {...field("pourDate", "Pour date, if known")} />
		</section>
	);
}

export function MixField({
	form,
	start,
	edit,
	readAgain,
}: SectionProps & { readAgain: () => void }) {
	return (
		<section aria-labelledby="mix-heading">
			<h2 id="mix-heading">Mix</h2>
			<SelectField
				id="mix"
				label="From the Mixes tab"
				value={form.mix}
				options={start.mixes.map(({ name }) => name)}
				onChange={(mix) => edit((before) => ({ ...before, mix }))}
			/>
			<button type="button" class="quiet" onClick={readAgain}>
				Read mixes and pigments again
			</button>
		</section>
	);
}

function UnitsChoice({ form, edit }: Pick<SectionProps, "form" | "edit">) {
	const choose = (units: JobForm["units"]) =>
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
