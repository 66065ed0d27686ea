/** A new job: typed or pasted, weighed as one types, then written into the workbook. */
import { useEffect, useMemo, useState } from "preact/hooks";
import type { PanelStart } from "../../sheets/messages";
import { MarksContext } from "../field";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import { figuresOf } from "./figures";
import { blankForm, type JobForm } from "./form";
import { JobFields, MixField } from "./job-fields";
import { jobInput } from "./job-input";
import { sentencesOf, useMarks } from "./marks";
import { mistakesIn } from "./mistakes";
import { Busy, Failed, Made } from "./outcome";
import { Pieces } from "./pieces";
import type { SectionProps } from "./section";
import { fieldId } from "./sentences";
import { Tones } from "./tones";
import { Spoken, summaryOf, Totals } from "./totals";
import { useWriting } from "./writing";

interface NewJobProps {
	ask: Ask;
	start: PanelStart;
	readAgain(): void;
}

export function NewJob({ ask, start, readAgain }: NewJobProps) {
	const [form, edit] = useState<JobForm>(() => blankForm(start, start.units));
	const [open, setOpen] = useState<number | undefined>(form.pieces[0]?.key);
	const [demo, setDemo] = useState(false);
	const { writing, write, reset } = useWriting();
	const mistakes = useMemo(() => mistakesIn(form), [form]);
	const figures = useMemo(
		() => figuresOf(form, mistakes, start),
		[form, mistakes, start],
	);
	const marks = useMarks(mistakes);
	const sentences = sentencesOf(mistakes);
	useEffect(() => {
		if (start.unitsFixed) edit((before) => ({ ...before, units: start.units }));
	}, [start]);

	const writeJob = () => {
		const [first] = sentences.keys();
		if (first !== undefined) {
			marks.showAll();
			const piece = form.pieces.find(({ key }) =>
				first.startsWith(fieldId(key, "")),
			);
			if (piece) setOpen(piece.key);
			return focusSoon(first);
		}
		setDemo(false);
		write(() => ask("createJob", jobInput(form)));
	};
	const writeDemo = () => {
		setDemo(true);
		write(() => ask("createDemoJob", form.units));
	};
	const goOn = () => {
		if (!demo) {
			const blank = blankForm(start, form.units);
			edit(blank);
			setOpen(blank.pieces[0]?.key);
			marks.clear();
		}
		readAgain();
		reset();
	};

	const section: SectionProps = { form, start, figures, edit };
	if (writing.state === "made")
		return (
			<Made
				made={writing.made}
				next={demo ? "Back to my job" : "Start another job"}
				goOn={goOn}
			/>
		);
	const busy = writing.state === "busy";
	return (
		<MarksContext.Provider value={marks}>
			<button type="button" onClick={writeDemo} disabled={busy}>
				Show me the demo job
			</button>
			<fieldset class="form" disabled={busy}>
				<legend class="unseen">New job</legend>
				<JobFields {...section} />
				<Pieces {...section} marks={marks} open={open} setOpen={setOpen} />
				<MixField {...section} readAgain={readAgain} />
				<Tones {...section} />
				<Totals {...section} missing={missingText(sentences)} />
			</fieldset>
			<div class="write">
				<p aria-hidden="true">{summaryOf(section)}</p>
				<Spoken text={summaryOf(section)} />
				{busy && <Busy />}
				{writing.state === "failed" && <Failed failure={writing.failure} />}
				<button type="button" class="main" onClick={writeJob} disabled={busy}>
					Write the job
				</button>
			</div>
		</MarksContext.Provider>
	);
}

function missingText(sentences: ReadonlyMap<string, string>): string {
	if (sentences.size === 0) return "";
	const [first] = sentences.values();
	return sentences.size === 1
		? `Still to fill in or correct: ${first}.`
		: `Still to fill in or correct: ${sentences.size} fields, first: ${first}.`;
}
