/** Which pigments of the Pigments tab the tones have a field for. */
import type { PanelStart } from "../../sheets/messages";
import type { JobForm } from "./form";
import type { SectionProps } from "./section";

export function PigmentChoice({ form, start, edit }: SectionProps) {
	const toggle = (name: string, on: boolean) =>
		edit((before) => ({
			...before,
			pigments: pigmentNames(before, start).filter((other) =>
				other === name ? on : before.pigments.includes(other),
			),
		}));
	return (
		<fieldset>
			<legend>Pigments in this job</legend>
			{start.pigments.length === 0 && (
				<p class="hint">The Pigments tab has none yet.</p>
			)}
			{pigmentNames(form, start).map((name) => (
				<label key={name} class="check">
					<input
						type="checkbox"
						checked={form.pigments.includes(name)}
						onChange={(event) => toggle(name, event.currentTarget.checked)}
					/>
					<bdi>{name}</bdi>
					{!start.pigments.some((pigment) => pigment.name === name) &&
						" (no longer on the Pigments tab)"}
				</label>
			))}
		</fieldset>
	);
}

/** Those of the Pigments tab in their order, then what is in the job and has gone from the tab. */
const pigmentNames = (form: JobForm, start: PanelStart): string[] => [
	...new Set([...start.pigments.map(({ name }) => name), ...form.pigments]),
];
