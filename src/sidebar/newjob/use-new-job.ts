/** The New job form alive: what is typed, what is wrong, what it takes, and having it written. */
import { useEffect, useMemo, useState } from "preact/hooks";
import { basisOf } from "../../job/answers/basis";
import type { UnitSystem } from "../../job/reading/units";
import type { StudioFile } from "../../job/studiofile";
import type { JobMade, PanelStart } from "../../sheets/messages";
import { type Failure, failureOf } from "../failure";
import { focusSoon } from "../focus";
import type { Ask } from "../script";
import { useMarks } from "../use-marks";
import { draftForm, draftText, useDraft } from "./draft";
import { type Figures, figuresOf } from "./figures";
import { blankForm, fieldId, type JobForm } from "./form";
import { jobOf } from "./form-file";
import { mistakesIn } from "./form-mistakes";

export interface NewJobProps {
	ask: Ask;
	start: PanelStart;
	readAgain(): void;
	/** What was kept of an unfinished form; `""` where there is none. */
	kept: string;
}

/** What every part of the form gets. */
export interface SectionProps {
	form: JobForm;
	start: PanelStart;
	/** In the form's units. */
	studio: StudioFile;
	figures: Figures;
	edit(change: (form: JobForm) => JobForm): void;
}

/** The studio in these units, which a new workbook has still to choose. */
export const studioIn = (
	{ studio, units, inOtherUnits }: PanelStart,
	wanted: UnitSystem,
): StudioFile => (wanted === units ? studio : (inOtherUnits ?? studio));

export function useNewJob({ ask, start, readAgain, kept }: NewJobProps) {
	const [before] = useState(() => draftForm(kept, start));
	const [form, edit] = useState(
		() => before ?? blankForm(start.studio, start.units),
	);
	const [again, setAgain] = useState(before !== undefined);
	const [open, setOpen] = useState(form.pieces[0]?.key);
	const [demo, setDemo] = useState(false);
	const { writing, write, reset } = useWriting();
	const written = writing.state === "made" && !demo;
	const unkept = useDraft(ask, written ? "" : draftText(form), kept);
	const studio = studioIn(start, form.units);
	const basis = useMemo(() => basisOf(studio, jobOf(form)), [studio, form]);
	const figures = useMemo(() => figuresOf(form, basis), [form, basis]);
	const sentences = useMemo(() => mistakesIn(form, basis), [form, basis]);
	const marks = useMarks(sentences);
	useEffect(() => {
		if (start.unitsFixed) edit((before) => ({ ...before, units: start.units }));
	}, [start]);

	/** Opens what is folded up around the first mistake and goes there. */
	const showMistake = () => {
		const [id = ""] = sentences.keys();
		marks.showAll();
		const piece = form.pieces.find(({ key }) =>
			id.startsWith(fieldId(key, "")),
		);
		if (piece) setOpen(piece.key);
		focusSoon(id);
	};
	const writeJob = () => {
		if (sentences.size > 0) return showMistake();
		setDemo(false);
		write(() => ask("createJob", jobOf(form)));
	};
	const writeDemo = () => {
		setDemo(true);
		write(() => ask("createDemoJob", form.units));
	};
	/** Puts another form in the place of this one. */
	const begin = (next: JobForm) => {
		edit(next);
		setOpen(next.pieces[0]?.key);
		marks.clear();
		setAgain(false);
	};
	const startOver = () => begin(blankForm(studio, form.units));
	const goOn = () => {
		if (!demo) startOver();
		readAgain();
		reset();
		focusSoon("client");
	};
	const section: SectionProps = { form, start, studio, figures, edit };
	return {
		section,
		marks,
		sentences,
		showMistake,
		pieces: { open, setOpen },
		writing,
		demo,
		writeJob,
		writeDemo,
		goOn,
		/** Whether the form is one that was kept. */
		again,
		begin,
		startOver,
		unkept,
	};
}

type Writing =
	| { state: "idle" }
	| { state: "busy" }
	| { state: "failed"; failure: Failure }
	| { state: "made"; made: JobMade };

/** Has the script write a job, one at a time, and says what came of it. */
function useWriting() {
	const [writing, setWriting] = useState<Writing>({ state: "idle" });
	return {
		writing,
		write: (work: () => Promise<JobMade>) => {
			if (writing.state === "busy") return;
			setWriting({ state: "busy" });
			work().then(
				(made) => setWriting({ state: "made", made }),
				(error) => setWriting({ state: "failed", failure: failureOf(error) }),
			);
		},
		reset: () => setWriting({ state: "idle" }),
	};
}
