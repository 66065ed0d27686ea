/** What people note of a load: fresh tests, times, who weighed, lots. */
import { useState } from "preact/hooks";
import { unitName } from "../../job/reading/units";
import type { Fresh, MixerLoad, MixerState } from "../../sheets/messages";
import { TextField } from "../field";
import { numberOrText } from "../typed-number";
import type { Line } from "./line";

const NUMERIC: readonly (keyof Fresh)[] = [
	"spread",
	"mixTemperature",
	"airTemperature",
];

export function Notes({
	state,
	load,
	line,
}: {
	state: MixerState;
	load: MixerLoad;
	line: Line;
}) {
	const labels: Readonly<Record<keyof Fresh, string>> = {
		spread: `Spread, ${unitName("length", state.units)}`,
		mixTemperature: `Mix temperature, ${unitName("temperature", state.units)}`,
		airTemperature: `Air temperature, ${unitName("temperature", state.units)}`,
		waterIn: "Water in, at",
		lastTone: "Last tone placed, at",
		weighedBy: "Weighed by",
		lots: "Lots",
		remarks: "Remarks",
		result: "Result",
	};
	return (
		<details class="notes">
			<summary>Notes for load {load.number}</summary>
			{(Object.keys(labels) as (keyof Fresh)[]).map((name) => (
				<Note
					key={name}
					id={`note-${name}`}
					label={labels[name]}
					held={String(load.fresh[name])}
					keep={(typed) =>
						line.write(
							{ load: load.number, column: name, row: 1 },
							NUMERIC.includes(name) ? numberOrText(typed) : typed.trim(),
						)
					}
				/>
			))}
		</details>
	);
}

interface NoteProps {
	id: string;
	label: string;
	/** What the card holds. */
	held: string;
	keep(typed: string): void;
}

/** Kept when it is left; what somebody types on the card shows here while nobody types. */
function Note({ id, label, held, keep }: NoteProps) {
	const [typed, setTyped] = useState<string>();
	const finish = () => {
		if (typed !== undefined && typed !== held) keep(typed);
		setTyped(undefined);
	};
	return (
		<div onFocusOut={finish}>
			<TextField
				id={id}
				label={label}
				value={typed ?? held}
				onChange={setTyped}
			/>
		</div>
	);
}
