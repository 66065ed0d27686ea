/** The first step of a load: how warm its material is, how cold the water must be, and whether ice is needed. */
import { isKnown, type Known, saying } from "../../job/answers/known";
import { fromSi, unitName } from "../../job/reading/units";
import type { JobState } from "../../sheets/messages";
import { ended } from "../sentence";
import type { Line } from "./line";
import type { MixerLoad } from "./mixer-loads";
import { NoteField } from "./pour-notes";

interface Props {
	state: JobState;
	load: MixerLoad;
	line: Line;
	done(): void;
}

export function Temperatures({ state: { job }, load, line, done }: Props) {
	const { water } = load.card;
	const { units } = job;
	const degrees = (celsius: number) =>
		`${Number(fromSi(celsius, "temperature", units).toFixed(1))} ${unitName("temperature", units)}`;
	const said = (label: string, known: Known<number | undefined>) => {
		if (!isKnown(known)) return `${label}: ${ended(saying(known))}`;
		return known.is === undefined ? "" : `${label}: ${degrees(known.is)}`;
	};
	const lines = [
		said("Water to be at", water.waterC),
		said("The mix will be at", water.mixC),
		water.warmth.state === "look" ? ended(water.warmth.say) : "",
	].filter((text) => text !== "");
	return (
		<div class="step temperatures">
			<p class="does">Before weighing</p>
			<p class="what">Temperatures and ice</p>
			{(["dryTemperature", "waterTemperature", "ice"] as const).map((note) => (
				<NoteField
					key={note}
					{...{ note, job, line }}
					load={load.card.load}
					id={`first-${note}`}
				/>
			))}
			<p
				class={water.warmth.state === "look" ? "caution lines" : "hint lines"}
				role="status"
			>
				{lines.join("\n")}
			</p>
			<button type="button" class="main" onClick={done}>
				Go on to weighing
			</button>
		</div>
	);
}
