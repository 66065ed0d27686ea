/** Recipes as cards: what each gives beside what is wanted, what may be said of it, what it takes and costs. */
import { useState } from "preact/hooks";
import { hexOfLab, type Lab } from "../../calc/color";
import type { RecipeAnswer } from "../../job/answers/recipes";
import { promiseOf, recipeWords } from "../../job/answers/recipewords";
import { toSi, unitName } from "../../job/reading/units";
import { SelectField } from "../field";
import { Came } from "../notice";
import { ended } from "../sentence";
import { useDoing } from "../use-doing";
import type { ColorWork } from "./color-work";

interface Props extends ColorWork {
	wanted: Lab;
	recipes: readonly RecipeAnswer[];
}

export function RecipeCards({ wanted, recipes, ...work }: Props) {
	return (
		<section aria-labelledby="recipes-heading">
			<h2 id="recipes-heading">Recipes</h2>
			<p class="hint">
				With three swatches a pigment, a cast of one pigment is usually within
				about 1, a first cast of two within 3, of three within 5, after one
				correcting cast within 2; with two swatches it may be twice as far. That
				is simulated: no published table of several pigments in concrete was
				found. Your own casts decide.
			</p>
			{recipes.map((recipe, i) => (
				<RecipeCard
					key={recipeWords(recipe)}
					id={`recipe-${i}`}
					{...work}
					wanted={wanted}
					recipe={recipe}
					lead={i === 0 ? "Begin with" : "Or"}
				/>
			))}
		</section>
	);
}

interface CardProps extends ColorWork {
	id: string;
	wanted: Lab;
	recipe: RecipeAnswer;
	/** Says what the card is to the others. */
	lead: string;
}

export function RecipeCard({ id, wanted, recipe, lead, ...work }: CardProps) {
	const { basis, state } = work;
	const { units } = basis.given;
	// What 100 of the workbook's unit of mass are of 100 kg.
	const part = toSi(1, "mass", units);
	const hundred = `100 ${unitName("mass", units)}`;
	return (
		<article class="card" aria-labelledby={`${id}-name`}>
			<div class="beside" aria-hidden="true">
				<span style={{ background: hexOfLab(wanted) }}>
					<b>wanted</b>
				</span>
				<span style={{ background: recipe.color }}>
					<b>recipe</b>
				</span>
			</div>
			<h3 id={`${id}-name`}>
				{lead}: {recipeWords(recipe)}
			</h3>
			<p class="sentence">{ended(promiseOf(recipe, wanted))}</p>
			<dl>
				{recipe.doses.map(({ name, kgPer100 }) => (
					<div key={name}>
						<dt>
							{name} dry, in {hundred} of mix
						</dt>
						<dd>{(1000 * kgPer100 * part).toFixed(0)} g</dd>
					</div>
				))}
				{recipe.doses.length > 0 && (
					<div>
						<dt>Cost of it</dt>
						<dd>
							{recipe.costPer100 === null
								? "not known yet: a price"
								: `${(recipe.costPer100 * part).toFixed(2)} ${String(state.studio.settings.currency ?? "")}`}
						</dd>
					</div>
				)}
				<div>
					<dt>Below the pigment limit by, of cement</dt>
					<dd>{(100 * recipe.headroom).toFixed(1)}%</dd>
				</div>
				<div>
					<dt>Color</dt>
					<dd>{recipe.color}</dd>
				</div>
			</dl>
			<IntoTone id={id} {...work} recipe={recipe} />
		</article>
	);
}

/** The recipe's doses beside a tone of the job. */
export function IntoTone({
	id,
	ask,
	job,
	state,
	again,
	recipe,
}: ColorWork & { id: string; recipe: RecipeAnswer }) {
	const names = state.job.tones.map(({ name }) => String(name ?? ""));
	const [tone, setTone] = useState("");
	const writing = useDoing(job);
	if (names.length === 0) return null;
	const write = () =>
		void writing
			.run(
				() =>
					ask("putRecipe", {
						job,
						tone,
						doses: Object.fromEntries(
							recipe.doses.map(({ name, typed }) => [
								name,
								// As fine as any scale doses it.
								Number(typed.toPrecision(4)),
							]),
						),
					}),
				() => `${tone} has these doses now.`,
				"Look at the Tones tab.",
			)
			.then(again);
	return (
		<>
			<SelectField
				id={`${id}-tone`}
				label="Into the tone"
				value={tone}
				options={names}
				blank="choose one"
				onChange={setTone}
			/>
			<button
				type="button"
				onClick={write}
				disabled={tone === ""}
				aria-disabled={writing.busy}
			>
				{writing.busy ? "Writing…" : "Write its doses"}
			</button>
			<Came told={writing.told} />
		</>
	);
}
