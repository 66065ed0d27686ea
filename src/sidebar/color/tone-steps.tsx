/** Tones of a family: one strongest tone, and paler ones toward the bare mix. */
import { useMemo, useState } from "preact/hooks";
import { attempt, isKnown, orNull, saying } from "../../job/answers/known";
import { dosesIn, familyOf } from "../../job/answers/recipes";
import { recipeWords } from "../../job/answers/recipewords";
import { SelectField } from "../field";
import { Notice } from "../notice";
import { ended } from "../sentence";
import type { ColorWork } from "./color-work";
import { IntoTone } from "./recipe-cards";

const COUNTS = ["2", "3", "4", "5", "6"];

export function ToneSteps(work: ColorWork) {
	const { basis, studio } = work;
	const tones = (orNull(basis.tones.dry) ?? []).filter(({ doses }) =>
		doses.some((dose) => dose > 0),
	);
	const [name, setName] = useState("");
	const [count, setCount] = useState("3");
	const tone = tones.find((one) => one.name === name);
	const family = useMemo(
		() => tone && attempt(() => familyBy({ basis, studio }, tone.doses, count)),
		[basis, studio, tone, count],
	);
	return (
		<section aria-labelledby="family-heading">
			<h2 id="family-heading">Tones of a family</h2>
			<p class="hint">
				From one tone to the bare mix in even steps of lightness. One vessel
				makes them all: pull the palest, add pigment, pull the next.
			</p>
			<div class="columns wide-first">
				<SelectField
					id="family-tone"
					label="Strongest tone"
					value={name}
					options={tones.map((one) => one.name)}
					blank="choose one"
					onChange={setName}
				/>
				<SelectField
					id="family-count"
					label="Tones"
					value={count}
					options={COUNTS}
					onChange={setCount}
				/>
			</div>
			{family && !isKnown(family) && (
				<Notice kind="plain">{ended(saying(family))}</Notice>
			)}
			{family &&
				isKnown(family) &&
				family.is.map((recipe, i) => (
					<article
						key={recipeWords(recipe)}
						class="card"
						aria-labelledby={`family-${i}-name`}
					>
						<div class="with-swatch">
							<h3 id={`family-${i}-name`}>
								L* {recipe.lab.l.toFixed(0)}: {recipeWords(recipe)}
							</h3>
							<span
								class="swatch"
								aria-hidden="true"
								style={{ background: recipe.color }}
							/>
						</div>
						{i > 0 && <IntoTone id={`family-${i}`} {...work} recipe={recipe} />}
					</article>
				))}
		</section>
	);
}

/** Of a tone with doses in the order of the job's pigments. */
const familyBy = (
	{ basis, studio }: Pick<ColorWork, "basis" | "studio">,
	doses: readonly number[],
	count: string,
) =>
	familyOf(
		studio,
		dosesIn(
			studio,
			Object.fromEntries(
				basis.pigments.map(({ name }, i) => [name, doses[i] ?? 0]),
			),
		),
		Number(count),
	);
