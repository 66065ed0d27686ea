/** What people note of a load: temperatures, fresh tests, times, who weighed, lots. */
import { useState } from "preact/hooks";
import { labelText } from "../../job/cells/regions";
import type { Field, Typed } from "../../job/fields/field";
import { POUR, type PourRow } from "../../job/fields/pour";
import type { JobFile } from "../../job/jobfile";
import { DateField, SelectField, TextField } from "../field";
import { numberOrText, percentOrText } from "../typed-number";
import type { Line } from "./line";
import { typedAt } from "./weighings";

/** The number of the plan is written with the first weight. */
const NOTES = Object.entries(POUR).filter(([key]) => key !== "planNumber") as [
	keyof PourRow,
	Field,
][];

interface Props {
	job: JobFile;
	load: number;
	line: Line;
}

export const PourNotes = ({ job, load, line }: Props) => (
	<details class="notes">
		<summary>Notes for load {load}</summary>
		{NOTES.map(([note]) => (
			<NoteField
				key={note}
				id={`note-${note}`}
				{...{ note, job, load, line }}
			/>
		))}
	</details>
);

/** One note of a load. */
export function NoteField({
	id,
	note,
	job,
	load,
	line,
}: Props & { id: string; note: keyof PourRow }) {
	const field: Field = POUR[note];
	const place = { load, cell: { note } };
	return (
		<Note
			id={id}
			label={labelText(field.label, job.units)}
			field={field}
			held={shownIn(field, typedAt(job, place))}
			keep={(typed) => line.write(place, typedFor(field, typed))}
		/>
	);
}

const shownIn = ({ kind }: Field, typed: Typed): string =>
	kind === "share" && typeof typed === "number"
		? String(Number((typed * 100).toPrecision(6)))
		: String(typed);

function typedFor({ kind }: Field, text: string): Typed {
	if (kind === "share") return percentOrText(text);
	return kind === "number" || kind === "length"
		? numberOrText(text)
		: text.trim();
}

interface NoteProps {
	id: string;
	label: string;
	field: Field;
	/** What the card holds. */
	held: string;
	keep(typed: string): void;
}

/** Kept when it is left; what somebody types on the card shows here while nobody types. */
function Note({ id, label, field, held, keep }: NoteProps) {
	const [typed, setTyped] = useState<string>();
	const finish = () => {
		if (typed !== undefined && typed !== held) keep(typed);
		setTyped(undefined);
	};
	const props = { id, label, value: typed ?? held, onChange: setTyped };
	return (
		<div onFocusOut={finish}>
			{field.words ? (
				<SelectField {...props} options={field.words} blank="" />
			) : field.kind === "day" ? (
				<DateField {...props} />
			) : (
				<TextField
					{...props}
					suffix={field.kind === "share" ? "%" : undefined}
				/>
			)}
		</div>
	);
}
