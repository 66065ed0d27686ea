/** What is done to a tone that came out too strong or too weak: folded in, added or scooped out. */
import { useState } from "preact/hooks";
import { basisOf } from "../../job/answers/basis";
import type { CardTone } from "../../job/answers/card/cardsteps";
import { pourOf } from "../../job/answers/card/loadpour";
import { scalesOf } from "../../job/answers/card/stepline";
import { isKnown, orNull } from "../../job/answers/known";
import { addedText, type CorrectionPart } from "../../job/cells/jobcells";
import type { Typed } from "../../job/fields/field";
import { type CorrectionInput, type JobFile, MOST } from "../../job/jobfile";
import { unitName } from "../../job/reading/units";
import type { JobState } from "../../sheets/messages";
import { SelectField, TextField } from "../field";
import { ended } from "../sentence";
import { numberOrText } from "../typed-number";
import type { Line } from "./line";
import { loadsAtMixer, type MixerLoad } from "./mixer-loads";
import { withWeighing } from "./weighings";

const DONE = ["folded in", "added", "scooped out"] as const;
type Done = (typeof DONE)[number];

interface Props {
	line: Line;
	state: JobState;
	load: MixerLoad;
	/** The tone that was finished last; it is asked about. */
	tone: CardTone;
}

export function Correction({ line, state, load, tone }: Props) {
	const { card } = load;
	const [typed, setTyped] = useState<{
		tone?: string;
		done?: Done;
		pigment?: string;
		amount?: string;
	}>({});
	const [mistake, setMistake] = useState("");
	const { job } = state;
	const mine = pourOf({ job }, card.load).corrections ?? [];
	const tones = orNull(card.tones) ?? [];
	const name = typed.tone ?? tone.name;
	const proposal = tones.find((one) => one.name === name)?.proposal;
	const done = typed.done ?? (proposal?.do === "add" ? "added" : "folded in");
	const pigments = basisOf(state.studio, job).pigments.map((one) => one.name);
	const pigment = typed.pigment ?? proposal?.pigment ?? pigments[0] ?? "";
	const isProposed =
		proposal &&
		(proposal.do === "add"
			? done === "added" && pigment === proposal.pigment
			: done === "folded in");
	const amount = typed.amount ?? (isProposed ? String(proposal.shown) : "");
	const change = (to: typeof typed) => {
		setTyped({ ...typed, amount: undefined, ...to });
		setMistake("");
	};
	const write = () => {
		const value = numberOrText(amount);
		if (!(typeof value === "number" && value > 0))
			return setMistake("Type how much it was.");
		const parts = partsOf({ tone: name, done, pigment, value });
		const number = freePlace(mine);
		if (number > MOST.corrections)
			return setMistake(
				`The card has room for ${MOST.corrections} corrections of a load.`,
			);
		const refused = refusalOf(state, card.load, number, parts);
		if (refused) return setMistake(ended(refused));
		for (const [part, of] of parts)
			line.write({ load: card.load, cell: { correction: number, part } }, of);
		setTyped({});
	};
	return (
		<details class="notes" open={proposal !== undefined || mine.length > 0}>
			<summary>Correct a tone</summary>
			<ul class="corrections">
				{mine.map((one, i) =>
					Object.keys(one).length === 0 ? null : (
						<li key={String(i)}>
							<span>{correctionText(one, job)}</span>
							<button
								type="button"
								onClick={() => {
									for (const part of Object.keys(one))
										line.write(
											{
												load: card.load,
												cell: {
													correction: i + 1,
													part: part as CorrectionPart,
												},
											},
											"",
										);
								}}
							>
								Take back
							</button>
						</li>
					),
				)}
			</ul>
			<SelectField
				id="correct-tone"
				label="Tone"
				value={name}
				options={tones.map((one) => one.name)}
				onChange={(to) => change({ tone: to })}
			/>
			<SelectField
				id="correct-done"
				label="What was done"
				value={done}
				options={DONE}
				onChange={(to) => change({ done: to as Done })}
			/>
			{done === "added" && (
				<SelectField
					id="correct-pigment"
					label="Pigment, as weighed"
					value={pigment}
					options={pigments}
					onChange={(to) => change({ pigment: to })}
				/>
			)}
			<TextField
				id="correct-amount"
				label="How much"
				numeric
				value={amount}
				suffix={unitName(done === "added" ? "pigment" : "mass", job.units)}
				onChange={(to) => {
					setTyped({ ...typed, amount: to });
					setMistake("");
				}}
			/>
			<p class="hint">{reserveText(state, load)}</p>
			{mistake && (
				<p class="mistake" role="alert">
					{mistake}
				</p>
			)}
			<button type="button" class="large" onClick={write}>
				It was {done}
			</button>
		</details>
	);
}

type Parts = readonly (readonly [CorrectionPart, Typed])[];

const partsOf = ({
	tone,
	done,
	pigment,
	value,
}: {
	tone: string;
	done: Done;
	pigment: string;
	value: number;
}): Parts => [
	["tone", tone],
	done === "folded in"
		? ["foldedIn", value]
		: done === "added"
			? ["added", addedText({ [pigment]: value })]
			: ["takenOut", value],
];

/** The first place that holds nothing. */
const freePlace = (corrections: readonly CorrectionInput[]): number => {
	const free = corrections.findIndex((one) => Object.keys(one).length === 0);
	return (free < 0 ? corrections.length : free) + 1;
};

/** Why it cannot have been so. */
function refusalOf(
	state: JobState,
	load: number,
	correction: number,
	parts: Parts,
): string {
	const job = parts.reduce(
		(before, [part, value]) =>
			withWeighing(before, {
				load,
				cell: { correction, part },
				value,
				planNumber: "",
			}),
		state.job,
	);
	const tones = loadsAtMixer({ ...state, job }).find(
		({ card }) => card.load === load,
	)?.card.tones;
	return tones && "look" in tones
		? tones.look.replace(/^correction \d+: /, "")
		: "";
}

function correctionText(one: CorrectionInput, { units }: JobFile): string {
	const mass = unitName("mass", units);
	const done = [
		one.foldedIn === undefined ? "" : `folded in ${one.foldedIn} ${mass}`,
		one.added === undefined ? "" : `added ${addedText(one.added)} g`,
		one.takenOut === undefined ? "" : `scooped out ${one.takenOut} ${mass}`,
	];
	return `${one.tone ?? ""}: ${done.filter((words) => words !== "").join(", ")}`;
}

function reserveText(state: JobState, { card }: MixerLoad): string {
	const scales = orNull(scalesOf(basisOf(state.studio, state.job).given));
	const { reserveLeft } = card;
	if (!isKnown(reserveLeft)) return "";
	const digits = scales && scales.mix < 0.1 ? 2 : 1;
	return `Reserve left: ${Number(reserveLeft.is.toFixed(digits))} ${unitName("mass", state.job.units)}`;
}
