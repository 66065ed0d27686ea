/** A cast as it was measured, the recipe corrected by it, and both kept on Swatches as a chain. */
import { useState } from "preact/hooks";
import { colorDifference } from "../../calc/ciede2000";
import { InputError } from "../../calc/errors";
import { nameKey } from "../../calc/names";
import { lookOf } from "../../job/answers/given";
import { attempt, isKnown, orNull, saying } from "../../job/answers/known";
import {
	dosesIn,
	type RecipeAnswer,
	recipeAfterCast,
} from "../../job/answers/recipes";
import { isBlank } from "../../job/reading/cells";
import type { SwatchInput } from "../../sheets/messages";
import { SelectField, TextField } from "../field";
import { Came, Notice } from "../notice";
import { ended } from "../sentence";
import { numberOrText, percentOrText } from "../typed-number";
import { useDoing } from "../use-doing";
import type { ColorWork } from "./color-work";
import { RecipeCard } from "./recipe-cards";
import { ColorField, colorOrUndefined } from "./wanted-color";

interface Props extends ColorWork {
	/** As typed above. */
	wanted: string;
	first: RecipeAnswer | undefined;
}

/** A correction far from what was expected is a mistake more often than a pigment: common practice, no source. */
const FAR = 10;

type Doses = Readonly<Record<string, string>>;

const asPercent = (dose: number): string =>
	String(Number((100 * dose).toPrecision(4)));

export function CastCorrection({ wanted, first, ...work }: Props) {
	const { state, studio, basis } = work;
	const chains = chainsOf(state.studio.swatches ?? []);
	const [chain, setChain] = useState("");
	const [name, setName] = useState("");
	const [doses, setDoses] = useState<Doses>({});
	const [measured, setMeasured] = useState("");
	const [ageDays, setAge] = useState("28");
	const last = chains.find((one) => one.name === chain)?.last;
	const aim = last?.wanted === undefined ? wanted : String(last.wanted);
	const [aimLab, castLab] = [aim, measured].map(colorOrUndefined);
	const cast = Object.fromEntries(
		studio.names.flatMap((one) => {
			const dose = percentOrText(doses[one] ?? "");
			return typeof dose === "number" && dose > 0 ? [[one, dose] as const] : [];
		}),
	);
	const take = (given: Readonly<Record<string, number>>) =>
		setDoses(
			Object.fromEntries(
				Object.entries(given).map(([one, dose]) => [one, asPercent(dose)]),
			),
		);
	const choose = (chosen: string) => {
		setChain(chosen);
		setName(chosen);
		const row = chains.find((one) => one.name === chosen)?.last;
		if (row)
			take(
				Object.fromEntries(
					Object.entries(row.doses ?? {}).map(([one, dose]) => [
						one,
						Number(dose),
					]),
				),
			);
	};
	const corrected =
		aimLab && castLab && Object.keys(cast).length > 0
			? attempt(() =>
					recipeAfterCast(studio, {
						wanted: aimLab,
						doses: dosesIn(studio, cast),
						measured: castLab,
					}),
				)
			: undefined;
	return (
		<section aria-labelledby="cast-heading">
			<h2 id="cast-heading">Correct by a cast</h2>
			<p class="hint">
				Measure the cast dry, at its age, of the same mix, finish and lots. One
				correction halves the error.
			</p>
			{chains.length > 0 && (
				<SelectField
					id="cast-chain"
					label="A recipe kept on Swatches"
					value={chain}
					options={chains.map((one) => one.name)}
					blank="none: for the color wanted above"
					onChange={choose}
				/>
			)}
			{first && (
				<button
					type="button"
					onClick={() =>
						take(
							Object.fromEntries(
								first.doses.map(({ name: one, dose }) => [one, dose]),
							),
						)
					}
				>
					Take the first recipe above
				</button>
			)}
			<fieldset>
				<legend>Dry pigment in the cast, of binder</legend>
				<div class="columns">
					{studio.names.map((one) => (
						<TextField
							key={one}
							id={`cast-dose-${one}`}
							label={one}
							suffix="%"
							value={doses[one] ?? ""}
							numeric
							onChange={(typed) => setDoses({ ...doses, [one]: typed })}
						/>
					))}
				</div>
			</fieldset>
			<ColorField
				id="cast-measured"
				label="The cast as measured"
				value={measured}
				onChange={setMeasured}
			/>
			<div class="columns">
				<TextField
					id="cast-age"
					label="Its age, days"
					value={ageDays}
					numeric
					onChange={setAge}
				/>
				<TextField
					id="cast-name"
					label="Name of the recipe"
					value={name}
					onChange={setName}
				/>
			</div>
			{Number(numberOrText(ageDays)) < 28 && (
				<p class="hint">
					A cast younger than 28 days still changes: correct by it once it is
					grown.
				</p>
			)}
			{aimLab && castLab && (
				<p>
					The cast is {colorDifference(aimLab, castLab).toFixed(1)} from what is
					wanted.
					{colorDifference(aimLab, castLab) > FAR &&
						" That is far: check the reading and the weights before correcting by it."}
				</p>
			)}
			{corrected && !isKnown(corrected) && (
				<Notice kind="plain">{ended(saying(corrected))}</Notice>
			)}
			{corrected && isKnown(corrected) && aimLab && (
				<>
					<RecipeCard
						id="corrected"
						{...work}
						wanted={aimLab}
						recipe={corrected.is}
						lead="Corrected"
					/>
					<KeepChain
						{...work}
						rows={chainRows({
							kinds: {
								mix: orNull(lookOf(basis.given, "mix")) ?? "",
								finish: orNull(lookOf(basis.given, "finish")) ?? "cast",
								sealed: orNull(lookOf(basis.given, "sealing")) ?? "bare",
								state: orNull(lookOf(basis.given, "state")) ?? "dry",
							},
							recipe: name.trim(),
							wanted: aim.trim(),
							cast,
							measured: measured.trim(),
							ageDays: numberOrText(ageDays),
							corrected: corrected.is,
						})}
						named={name.trim() !== ""}
					/>
				</>
			)}
		</section>
	);
}

type Kinds = Pick<SwatchInput, "mix" | "finish" | "sealed" | "state">;

/** The cast and the recipe corrected by it, which is still to be cast. */
function chainRows(given: {
	kinds: Kinds;
	recipe: string;
	wanted: string;
	cast: Record<string, number>;
	measured: string;
	ageDays: number | string;
	corrected: RecipeAnswer;
}): SwatchInput[] {
	const { kinds, recipe, wanted, cast, measured, ageDays, corrected } = given;
	return [
		{
			...kinds,
			recipe,
			wanted,
			doses: cast,
			color: measured,
			...(typeof ageDays === "number" && { ageDays }),
		},
		{
			...kinds,
			recipe,
			wanted,
			doses: Object.fromEntries(
				corrected.doses.map(({ name, dose }) => [
					name,
					Number(dose.toPrecision(4)),
				]),
			),
			remark: "corrected, to be cast",
		},
	];
}

function KeepChain({
	ask,
	job,
	again,
	rows,
	named,
}: ColorWork & { rows: readonly SwatchInput[]; named: boolean }) {
	const keeping = useDoing(job);
	const keep = () =>
		void keeping
			.run(
				async () => {
					if (!named)
						throw new InputError("Name the recipe, so that it is found again.");
					const at: number[] = [];
					for (const row of rows) at.push(await ask("recordSwatch", row));
					return at;
				},
				(at) =>
					`The cast and the corrected recipe are in rows ${at.join(" and ")} of Swatches.`,
				"Look at Swatches before keeping it again.",
			)
			.then(again);
	return (
		<>
			<button
				type="button"
				class="main"
				onClick={keep}
				aria-disabled={keeping.busy}
			>
				{keeping.busy ? "Keeping…" : "Keep both on Swatches"}
			</button>
			<Came told={keeping.told} />
		</>
	);
}

/** Recipes by name, each with the row to go on from: the last. */
function chainsOf(
	swatches: NonNullable<ColorWork["state"]["studio"]["swatches"]>,
) {
	const chains = new Map<
		string,
		{ name: string; last: (typeof swatches)[number] }
	>();
	for (const row of swatches)
		if (!isBlank(row.recipe)) {
			const name = String(row.recipe).trim();
			chains.set(nameKey(name), { name, last: row });
		}
	return [...chains.values()];
}
