/** Which swatch to cast next, as a ladder out of one small batch. */
import { useMemo, useState } from "preact/hooks";
import { percent } from "../../calc/errors";
import { nextSwatch } from "../../calc/nextswatch";
import {
	type LadderStep,
	LEAST_STEP_KG,
	ladderBatchKg,
	swatchLadder,
} from "../../calc/swatchladder";
import { attempt, isKnown, orNull, saying } from "../../job/answers/known";
import { dosesIn } from "../../job/answers/recipes";
import { fromSi, toSi, unitName } from "../../job/reading/units";
import { TextField } from "../field";
import { Notice } from "../notice";
import { ended } from "../sentence";
import { numberOrText } from "../typed-number";
import type { ColorWork } from "./color-work";

export function NextCast({ basis, studio }: ColorWork) {
	const { names } = studio;
	const next = useMemo(() => nextOf({ basis, studio }), [basis, studio]);
	return (
		<section aria-labelledby="next-heading">
			<h2 id="next-heading">Next swatch</h2>
			<p>{nextWords(next, names)}</p>
			{(next.what === "middle" || next.what === "strongest") && (
				<Ladder
					key={names[next.column]}
					pigment={names[next.column] ?? ""}
					dose={next.dose}
					binderShare={studio.binderShare}
					units={basis.given.units}
				/>
			)}
		</section>
	);
}

/** By the job's tones. */
function nextOf({ basis, studio }: Pick<ColorWork, "basis" | "studio">) {
	const { palette, cast } = studio;
	const tones = (orNull(basis.tones.dry) ?? []).map(({ name, doses }) => ({
		name,
		doses: dosesIn(
			studio,
			Object.fromEntries(
				basis.pigments.map((pigment, i) => [pigment.name, doses[i] ?? 0]),
			),
		),
	}));
	return nextSwatch(palette, tones, cast);
}

function nextWords(
	next: ReturnType<typeof nextSwatch>,
	names: readonly string[],
): string {
	switch (next.what) {
		case "tone":
			return `${next.tone} mixes several pigments: cast the tone itself, and correct its recipe by the cast. No other swatch takes its place.`;
		case "middle":
			return `${names[next.column]} at ${percent(next.dose, 3)} of binder: nothing is known between undosed and its strongest${next.tone ? `, and ${next.tone} is known least` : ""}.`;
		case "strongest":
			return `${names[next.column]} at ${percent(next.dose, 3)} of binder: ${next.tone} has more of it than any swatch.`;
		case "enough":
			return "Another swatch would not tell much.";
	}
}

interface LadderProps {
	pigment: string;
	dose: number;
	binderShare: number;
	units: "metric" | "us";
}

/** Doses of one pigment out of one bowl: what to add and what to pull. */
function Ladder({ pigment, dose, binderShare, units }: LadderProps) {
	const [typed, setTyped] = useState(
		String(Number((100 * dose).toPrecision(3))),
	);
	const [batch, setBatch] = useState(units === "us" ? "4" : "2");
	const [each, setEach] = useState(units === "us" ? "1" : "0.4");
	const kgOf = (text: string) =>
		toSi(Number(numberOrText(text)), "mass", units);
	const [massKg, swatchKg] = [kgOf(batch), kgOf(each)];
	const doses = typed
		.split(/[;\s]+/)
		.filter(Boolean)
		.map((text) => [Number(numberOrText(text)) / 100]);
	const sound =
		doses.length > 0 &&
		[massKg, swatchKg, ...doses.flat()].every((one) => one > 0);
	const ladder = { massKg, binderShare, swatchKg, doses };
	const steps = sound ? attempt(() => swatchLadder(ladder)) : undefined;
	const unit = unitName("mass", units);
	const shown = (kg: number) =>
		`${fromSi(kg, "mass", units).toFixed(3)} ${unit}`;
	return (
		<>
			<TextField
				id="ladder-doses"
				label={`Doses of ${pigment}, % of binder, rising`}
				help="One or more, with spaces between: 1 2 5"
				value={typed}
				numeric
				onChange={setTyped}
			/>
			<div class="columns">
				<TextField
					id="ladder-batch"
					label="Undosed mix in the bowl"
					suffix={unit}
					value={batch}
					numeric
					onChange={setBatch}
				/>
				<TextField
					id="ladder-each"
					label="Mix in a swatch"
					suffix={unit}
					value={each}
					numeric
					onChange={setEach}
				/>
			</div>
			{!sound && <p class="mistake">Type doses and masses above 0.</p>}
			{steps && !isKnown(steps) && (
				<Notice kind="plain">{ended(saying(steps))}</Notice>
			)}
			{steps && isKnown(steps) && (
				<>
					<LadderSteps steps={steps.is} shown={shown} />
					{steps.is.some(({ addKg }) => (addKg[0] ?? 0) < LEAST_STEP_KG) && (
						<p class="caution">
							Less than 2 g is not dosed well: make{" "}
							{shown(Math.ceil(100 * ladderBatchKg(ladder)) / 100)}.
						</p>
					)}
				</>
			)}
		</>
	);
}

const LadderSteps = ({
	steps,
	shown,
}: {
	steps: readonly LadderStep[];
	shown(kg: number): string;
}) => (
	<ol class="ladder">
		{steps.map(({ doses, addKg, scaleKg, pullKg }) => (
			<li key={doses.join()}>
				Add {(1000 * (addKg[0] ?? 0)).toFixed(1)} g dry, now {shown(scaleKg)};{" "}
				{pullKg === undefined
					? `the rest is the swatch of ${percent(doses[0] ?? 0, 3)}`
					: `pull ${shown(pullKg)} for ${percent(doses[0] ?? 0, 3)}`}
				.
			</li>
		))}
	</ol>
);
