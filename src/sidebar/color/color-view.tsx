/** Colors of a job: recipes for a wanted one, corrected by a cast, and which swatch to cast next. */
import "./color.css";
import { useMemo, useState } from "preact/hooks";
import { basisOf } from "../../job/answers/basis";
import { isKnown, saying } from "../../job/answers/known";
import { recipesOf, studioPalette } from "../../job/answers/recipes";
import type { JobState } from "../../sheets/messages";
import { JobChoice, type JobViewProps } from "../job-choice";
import { Failed, Notice } from "../notice";
import { ended } from "../sentence";
import { useJobState } from "../use-job-state";
import { CastCorrection } from "./cast-correction";
import type { ColorWork } from "./color-work";
import { NextCast } from "./next-cast";
import { PhotoColors } from "./photo-color";
import { PigmentStrips } from "./pigment-strips";
import { RecipeCards } from "./recipe-cards";
import { ToneSteps } from "./tone-steps";
import { colorOrUndefined, WantedColor } from "./wanted-color";

export function ColorView(props: JobViewProps) {
	const { state, failure, busy, again } = useJobState(props);
	return (
		<>
			<JobChoice id="color-job" {...props} />
			{failure && <Failed failure={failure} again={again} />}
			{!state && busy && <Notice kind="plain">Reading the job…</Notice>}
			{state && (
				<ColorWorkbench
					key={state.number}
					{...props}
					state={state}
					again={again}
				/>
			)}
		</>
	);
}

function ColorWorkbench(
	props: JobViewProps & { state: JobState; again(): void },
) {
	const { state } = props;
	const basis = useMemo(() => basisOf(state.studio, state.job), [state]);
	const palette = useMemo(() => studioPalette(basis), [basis]);
	const [wanted, setWanted] = useState(String(state.job.wanted ?? ""));
	const lab = useMemo(() => colorOrUndefined(wanted), [wanted]);
	const recipes = useMemo(
		() => (isKnown(palette) && lab ? recipesOf(basis, palette.is, lab) : []),
		[basis, palette, lab],
	);
	const entry = (
		<WantedColor wanted={wanted} setWanted={setWanted} studio={state.studio} />
	);
	if (!isKnown(palette))
		return (
			<>
				{entry}
				<Notice kind="plain">{ended(saying(palette))}</Notice>
				<PhotoColors {...props} basis={basis} want={setWanted} />
			</>
		);
	const work: ColorWork = { ...props, basis, studio: palette.is };
	return (
		<>
			{entry}
			{lab && <RecipeCards {...work} wanted={lab} recipes={recipes} />}
			{palette.is.left.length > 0 && (
				<p class="hint">Left out: {palette.is.left.join("; ")}.</p>
			)}
			<CastCorrection {...work} wanted={wanted} first={recipes[0]} />
			<PigmentStrips {...work} />
			<ToneSteps {...work} />
			<NextCast {...work} />
			<PhotoColors {...work} want={setWanted} />
		</>
	);
}
